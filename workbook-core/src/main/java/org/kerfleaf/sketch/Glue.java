package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/** A wood glue. @group what we buy */
public record Glue(Origin origin, String name, Optional<Volume> pack, Optional<Money> price) implements Supply {
    /** What one bottle holds. @example woodGlue("exterior PVA").bottle("8 fl oz") */
    public Glue bottle(String holds) {
        return new Glue(origin, name, Optional.of(Volume.parse(holds)), price);
    }

    /** The price of one bottle. @example woodGlue("exterior PVA").bottle("8 fl oz").costs("5.60") */
    public Glue costs(String each) {
        return new Glue(origin, name, pack, Optional.of(SketchRun.price(each)));
    }
}
