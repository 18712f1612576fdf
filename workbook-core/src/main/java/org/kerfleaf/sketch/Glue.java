package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.measure.Volume;

/**
 * A wood glue.
 *
 * @param covers what {@code per} covers, if said
 * @param per the volume that covers it
 * @param openTime how long it stays open once it is spread, if said
 * @param clamped how long it stays clamped before the work goes on, if said
 * @param cures how long it takes to its full strength, if said
 * @param notBelow how cold it may be where it is used and until it has dried, if said
 * @group what we buy
 */
public record Glue(
        Origin origin,
        String name,
        Optional<Area> covers,
        Optional<Volume> per,
        Optional<Duration> openTime,
        Optional<Volume> pack,
        Optional<Money> price,
        Optional<Duration> clamped,
        Optional<Duration> cures,
        Optional<Temperature> notBelow)
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
        return new Glue(
                origin,
                name,
                covers,
                per,
                openTime,
                Optional.of(SketchRun.positive("A bottle that holds", holds, Volume.parse(holds), Volume.ZERO)),
                price,
                clamped,
                cures,
                notBelow);
    }

    /** How much it covers, as its bottle says. @example woodGlue("exterior PVA").covers("5 m2", perLitre()).bottle("8 fl oz") */
    public Glue covers(String area, Volume with) {
        return new Glue(
                origin,
                name,
                Optional.of(SketchRun.positive("It covers", area, Area.parse(area), Area.ZERO)),
                Optional.of(with),
                openTime,
                pack,
                price,
                clamped,
                cures,
                notBelow);
    }

    /** How long it stays open once it is spread: joints must be closed by then. @example woodGlue("exterior PVA").openFor("10 min") */
    public Glue openFor(String time) {
        return new Glue(origin, name, covers, per, Optional.of(Times.of(time)), pack, price, clamped, cures, notBelow);
    }

    /** The price of one bottle. @example woodGlue("exterior PVA").bottle("8 fl oz").costs("5.60") */
    public Glue costs(String each) {
        return new Glue(
                origin,
                name,
                covers,
                per,
                openTime,
                pack,
                Optional.of(SketchRun.price(each)),
                clamped,
                cures,
                notBelow);
    }

    /** How long it stays clamped before the work goes on, by its bottle. @example woodGlue("exterior PVA").clampedFor("45 min") */
    public Glue clampedFor(String time) {
        return new Glue(origin, name, covers, per, openTime, pack, price, Optional.of(Times.of(time)), cures, notBelow);
    }

    /** How long it takes to its full strength, by its bottle. @example woodGlue("exterior PVA").clampedFor("45 min").curesIn("24 h") */
    public Glue curesIn(String time) {
        return new Glue(
                origin, name, covers, per, openTime, pack, price, clamped, Optional.of(Times.of(time)), notBelow);
    }

    /** How cold it may be where it is used and until it has cured, by its bottle. @example woodGlue("exterior PVA").notBelow("55 F") */
    public Glue notBelow(String temperature) {
        return new Glue(
                origin,
                name,
                covers,
                per,
                openTime,
                pack,
                price,
                clamped,
                cures,
                Optional.of(Temperature.parse(temperature)));
    }
}
