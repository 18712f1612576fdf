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
 */
public record Paint(
        Origin origin,
        String name,
        Optional<Area> covers,
        Optional<Volume> per,
        Optional<Volume> pack,
        Optional<Money> price)
        implements Supply {
    /** What a volume of it covers in one coat: {@code covers("350 sq ft", perGallon())}. */
    public Paint covers(String area, Volume volume) {
        return new Paint(origin, name, Optional.of(Area.parse(area)), Optional.of(volume), pack, price);
    }

    public Paint cans(String hold) {
        return new Paint(origin, name, covers, per, Optional.of(Volume.parse(hold)), price);
    }

    public Paint costs(String each) {
        return new Paint(origin, name, covers, per, pack, Optional.of(SketchRun.price(each)));
    }
}
