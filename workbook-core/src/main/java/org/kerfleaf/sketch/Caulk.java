package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/**
 * A caulk or sealant.
 *
 * @param paintAfter how long it sets before it is painted, if said
 * @param cures how long it takes to cure, if said
 * @group what we buy
 */
public record Caulk(
        Origin origin,
        String name,
        Optional<Volume> pack,
        Optional<Money> price,
        Optional<Duration> paintAfter,
        Optional<Duration> cures)
        implements Supply {
    /** What one cartridge holds. @example caulk("acrylic latex").cartridge("10.1 fl oz") */
    public Caulk cartridge(String holds) {
        return new Caulk(
                origin,
                name,
                Optional.of(SketchRun.positive("A cartridge that holds", holds, Volume.parse(holds), Volume.ZERO)),
                price,
                paintAfter,
                cures);
    }

    /** The price of one cartridge. @example caulk("acrylic latex").cartridge("10.1 fl oz").costs("4.30") */
    public Caulk costs(String each) {
        return new Caulk(origin, name, pack, Optional.of(SketchRun.price(each)), paintAfter, cures);
    }

    /** How long it sets before it is painted, by its cartridge. @example caulk("acrylic latex").paintAfter("2 h") */
    public Caulk paintAfter(String time) {
        return new Caulk(origin, name, pack, price, Optional.of(Times.of(time)), cures);
    }

    /** How long it takes to cure, by its cartridge. @example caulk("acrylic latex").paintAfter("2 h").curesIn("24 h") */
    public Caulk curesIn(String time) {
        return new Caulk(origin, name, pack, price, paintAfter, Optional.of(Times.of(time)));
    }
}
