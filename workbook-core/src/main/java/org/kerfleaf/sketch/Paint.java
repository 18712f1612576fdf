package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Volume;

/**
 * A paint, primer or oil.
 *
 * @param covers the area that {@code per} of it covers in one coat, if said
 * @param per the volume that covers it
 * @group what we buy
 */
public record Paint(
        Origin origin,
        String name,
        Optional<Area> covers,
        Optional<Volume> per,
        Optional<Volume> pack,
        Optional<Money> price)
        implements Supply {
    /** The area that a volume of it covers in one coat. @example paint("exterior latex").covers("350 sq ft", perGallon()) */
    public Paint covers(String area, Volume volume) {
        return new Paint(origin, name, Optional.of(Area.parse(area)), Optional.of(volume), pack, price);
    }

    /** What one can holds. @example paint("exterior latex").cans("1 qt") */
    public Paint cans(String hold) {
        return new Paint(origin, name, covers, per, Optional.of(Volume.parse(hold)), price);
    }

    /** The price of one can. @example paint("exterior latex").cans("1 qt").costs("18.60") */
    public Paint costs(String each) {
        return new Paint(origin, name, covers, per, pack, Optional.of(SketchRun.price(each)));
    }
}
