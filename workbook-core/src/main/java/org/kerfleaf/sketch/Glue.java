package org.kerfleaf.sketch;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/** A wood glue. @group what we buy */
public record Glue(Origin origin, String name, Optional<Volume> pack, Optional<Money> price) implements Supply {
    private static final List<String> OUTDOORS =
            List.of("exterior", "waterproof", "polyurethane", "epoxy", "resorcinol", "marine");

    /**
     * Whether its name says that it stands the weather: exterior, waterproof, polyurethane, epoxy, resorcinol or marine.
     * {@code Common practice, no source}.
     */
    public boolean standsWater() {
        return OUTDOORS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::contains);
    }

    /** What one bottle holds. @example woodGlue("exterior PVA").bottle("8 fl oz") */
    public Glue bottle(String holds) {
        return new Glue(origin, name, Optional.of(Volume.parse(holds)), price);
    }

    /** The price of one bottle. @example woodGlue("exterior PVA").bottle("8 fl oz").costs("5.60") */
    public Glue costs(String each) {
        return new Glue(origin, name, pack, Optional.of(SketchRun.price(each)));
    }
}
