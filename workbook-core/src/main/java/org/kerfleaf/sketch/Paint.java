package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.measure.Volume;

/**
 * A paint, primer or oil.
 *
 * @param covers the area that {@code per} of it covers in one coat, if said
 * @param per the volume that covers it
 * @param recoat how long one coat dries before the next, or before it is handled, if said
 * @param cures how long it takes to cure hard, if said
 * @param notBelow how cold it may be where it is used and until it has dried, if said
 * @param film what is left of it when it is dry, if said
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
        Optional<Duration> cures,
        Optional<Temperature> notBelow,
        Optional<Film> film)
        implements Supply {
    /**
     * What is left of it when it is dry.
     *
     * @param solids its share by volume that does not dry away
     * @param dry how thick one coat is then
     */
    public record Film(Percent solids, Length dry) {}

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
                cures,
                notBelow,
                film);
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
                cures,
                notBelow,
                film);
    }

    /** The price of one can. @example paint("exterior latex").cans("1 qt").costs("18.60") */
    public Paint costs(String each) {
        return new Paint(
                origin, name, covers, per, pack, Optional.of(SketchRun.price(each)), recoat, cures, notBelow, film);
    }

    /** How long one coat dries before the next, or before it is handled, by its can. @example paint("exterior latex").recoatAfter("4 h") */
    public Paint recoatAfter(String time) {
        return new Paint(origin, name, covers, per, pack, price, Optional.of(Times.of(time)), cures, notBelow, film);
    }

    /** How long it takes to cure hard, by its can. @example paint("exterior latex").recoatAfter("4 h").curesIn("7 days") */
    public Paint curesIn(String time) {
        return new Paint(origin, name, covers, per, pack, price, recoat, Optional.of(Times.of(time)), notBelow, film);
    }

    /** How cold it may be where it is used and until it has dried, by its can. @example paint("exterior latex").notBelow("50 F") */
    public Paint notBelow(String temperature) {
        return new Paint(
                origin,
                name,
                covers,
                per,
                pack,
                price,
                recoat,
                cures,
                Optional.of(Temperature.parse(temperature)),
                film);
    }

    /**
     * Its share of solids by volume, and how thick one dry coat of it is, as its data sheet says; what it covers follows.
     *
     * @example paint("exterior latex").solids("35 %", "0.0015 in").cans("1 gal")
     */
    public Paint solids(String share, String dryCoat) {
        Length dry = SketchRun.length(dryCoat);
        Percent solids = Percent.parse(share);
        if (!dry.isPositive() || solids.number() <= 0 || solids.number() > 100) {
            throw new SketchException(
                    "“%s” of solids, “%s” when dry: up to 100 %%, and a film more than nothing would be right."
                            .formatted(share, dryCoat));
        }
        return new Paint(
                origin,
                name,
                Optional.empty(),
                Optional.empty(),
                pack,
                price,
                recoat,
                cures,
                notBelow,
                Optional.of(new Film(solids, dry)));
    }
}
