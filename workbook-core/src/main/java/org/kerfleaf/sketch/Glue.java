package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Volume;

/**
 * A wood glue.
 *
 * @param clamped how long it stays clamped before the work goes on, if said
 * @param cures how long it takes to its full strength, if said
 * @group what we buy
 */
public record Glue(
        Origin origin,
        String name,
        Optional<Volume> pack,
        Optional<Money> price,
        Optional<Duration> clamped,
        Optional<Duration> cures)
        implements Supply {
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
        return new Glue(origin, name, Optional.of(Volume.parse(holds)), price, clamped, cures);
    }

    /** The price of one bottle. @example woodGlue("exterior PVA").bottle("8 fl oz").costs("5.60") */
    public Glue costs(String each) {
        return new Glue(origin, name, pack, Optional.of(SketchRun.price(each)), clamped, cures);
    }

    /** How long it stays clamped before the work goes on, by its bottle. @example woodGlue("exterior PVA").clampedFor("45 min") */
    public Glue clampedFor(String time) {
        return new Glue(origin, name, pack, price, Optional.of(Times.of(time)), cures);
    }

    /** How long it takes to its full strength, by its bottle. @example woodGlue("exterior PVA").clampedFor("45 min").curesIn("24 h") */
    public Glue curesIn(String time) {
        return new Glue(origin, name, pack, price, clamped, Optional.of(Times.of(time)));
    }
}
