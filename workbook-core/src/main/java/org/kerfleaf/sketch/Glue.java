package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/** A wood glue. */
public record Glue(Origin origin, String name, Optional<Volume> pack, Optional<Money> price) implements Supply {
    public Glue bottle(String holds) {
        return new Glue(origin, name, Optional.of(Volume.parse(holds)), price);
    }

    public Glue costs(String each) {
        return new Glue(origin, name, pack, Optional.of(SketchRun.price(each)));
    }
}
