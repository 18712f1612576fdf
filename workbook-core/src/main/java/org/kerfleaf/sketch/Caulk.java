package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.measure.Volume;

/**
 * A caulk or sealant.
 *
 * @param paintAfter how long it sets before it is painted, if said
 * @param cures how long it takes to cure, if said
 * @param notBelow how cold it may be where it is used and until it has dried, if said
 * @group what we buy
 */
public record Caulk(
        Origin origin,
        String name,
        Optional<Volume> pack,
        Optional<Money> price,
        Optional<Duration> paintAfter,
        Optional<Duration> cures,
        Optional<Temperature> notBelow)
        implements Supply {
    /** What one cartridge holds. @example caulk("acrylic latex").cartridge("10.1 fl oz") */
    public Caulk cartridge(String holds) {
        return new Caulk(
                origin,
                name,
                Optional.of(SketchRun.positive("A cartridge that holds", holds, Volume.parse(holds), Volume.ZERO)),
                price,
                paintAfter,
                cures,
                notBelow);
    }

    /** The price of one cartridge. @example caulk("acrylic latex").cartridge("10.1 fl oz").costs("4.30") */
    public Caulk costs(String each) {
        return new Caulk(origin, name, pack, Optional.of(SketchRun.price(each)), paintAfter, cures, notBelow);
    }

    /** How long it sets before it is painted, by its cartridge. @example caulk("acrylic latex").paintAfter("2 h") */
    public Caulk paintAfter(String time) {
        return new Caulk(origin, name, pack, price, Optional.of(Times.of(time)), cures, notBelow);
    }

    /** How long it takes to cure, by its cartridge. @example caulk("acrylic latex").paintAfter("2 h").curesIn("24 h") */
    public Caulk curesIn(String time) {
        return new Caulk(origin, name, pack, price, paintAfter, Optional.of(Times.of(time)), notBelow);
    }

    /** How cold it may be where it is used and until it has set, by its cartridge. @example caulk("acrylic latex").notBelow("40 F") */
    public Caulk notBelow(String temperature) {
        return new Caulk(origin, name, pack, price, paintAfter, cures, Optional.of(Temperature.parse(temperature)));
    }
}
