package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Volume;

/**
 * A paint, primer or oil.
 *
 * @param covers the area that {@code per} of it covers in one coat, if said
 * @param per the volume that covers it
 * @param recoat how long one coat dries before the next, or before it is handled, if said
 * @param cures how long it takes to cure hard, if said
 * @group what we buy
 */
public record Paint(
        Origin origin,
        String name,
        Optional<Area> covers,
        Optional<Volume> per,
        Optional<Volume> pack,
        Optional<Money> price,
        Optional<Duration> recoat,
        Optional<Duration> cures)
        implements Supply {
    /** The area that a volume of it covers in one coat. @example paint("exterior latex").covers("350 sq ft", perGallon()) */
    public Paint covers(String area, Volume volume) {
        return new Paint(
                origin,
                name,
                Optional.of(SketchRun.positive("It covers", area, Area.parse(area), Area.ZERO)),
                Optional.of(volume),
                pack,
                price,
                recoat,
                cures);
    }

    /** What one can holds. @example paint("exterior latex").cans("1 qt") */
    public Paint cans(String hold) {
        return new Paint(
                origin,
                name,
                covers,
                per,
                Optional.of(SketchRun.positive("Cans that hold", hold, Volume.parse(hold), Volume.ZERO)),
                price,
                recoat,
                cures);
    }

    /** The price of one can. @example paint("exterior latex").cans("1 qt").costs("18.60") */
    public Paint costs(String each) {
        return new Paint(origin, name, covers, per, pack, Optional.of(SketchRun.price(each)), recoat, cures);
    }

    /** How long one coat dries before the next, or before it is handled, by its can. @example paint("exterior latex").recoatAfter("4 h") */
    public Paint recoatAfter(String time) {
        return new Paint(origin, name, covers, per, pack, price, Optional.of(Times.of(time)), cures);
    }

    /** How long it takes to cure hard, by its can. @example paint("exterior latex").recoatAfter("4 h").curesIn("7 days") */
    public Paint curesIn(String time) {
        return new Paint(origin, name, covers, per, pack, price, recoat, Optional.of(Times.of(time)));
    }
}
