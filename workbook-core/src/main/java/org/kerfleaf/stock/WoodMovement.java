package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.reason.Figure;

/**
 * How a board's width follows the moisture in it: Wood Handbook FPL-GTR-190, chapters 4 and 13. Along the grain wood does not
 * move to speak of, and is taken not to.
 *
 * @param wood the name under which the tables list it
 * @param rings which way they lie
 * @param coefficient the share of its width for each percent of moisture, between 6 and 14 %
 * @param shrinkage from green to oven-dry; empty where the tables list none
 * @param saturation the moisture above which it moves no more
 */
public record WoodMovement(
        String wood, Rings rings, Figure<Ratio> coefficient, Optional<Figure<Percent>> shrinkage, Percent saturation) {
    /** The coefficients are for moistures from here ... */
    private static final double LEAST = 6;

    /** ... to here. */
    private static final double MOST = 14;

    private static final String CHAPTER_13 = "Wood Handbook FPL-GTR-190, ch. 13";
    private static final String EMC_SOURCE =
            "Wood Handbook FPL-GTR-190, eq. 4-5 (from memory; it gives the numbers of table 4-2); a figure for planning";

    /** Of the wood that a name speaks of; empty if the tables list none such, or the name speaks of several. */
    public static Optional<WoodMovement> named(String wood, Rings rings) {
        return MovingWood.in(Words.of(wood)).map(known -> {
            String way = rings.along() ? "along the rings" : "across the rings";
            return new WoodMovement(
                    known.words(),
                    rings,
                    Figure.of(
                            Ratio.of(known.coefficient(rings.along())),
                            "coefficient of dimensional change, %s; %s".formatted(way, rings.words()),
                            known.source(),
                            given("wood", known.words())),
                    known.shrinkage(rings.along())
                            .map(shrinkage -> Figure.of(
                                    Percent.of(shrinkage),
                                    "shrinkage from green to oven-dry, " + way,
                                    known.source(),
                                    given("wood", known.words()))),
                    Percent.of(known.saturation()));
        });
    }

    /**
     * What a board gets wider, or below zero narrower, as it goes from one moisture to another. Within 6 to 14 % that is
     * {@code width · C · (to − from)}. Beyond it the shrinkage gives {@code width · (to − from) / (100·F/S − F + from)}, F the
     * fibre saturation, above which nothing moves; the two differ by a few hundredths, and the larger counts.
     */
    public Figure<Length> change(Length width, Percent from, Percent to) {
        double first = Math.min(from.number(), saturation.number());
        double last = Math.min(to.number(), saturation.number());
        double each = coefficient.value().value();
        Figure<Length> linear = Figure.of(
                width.times(each * (last - first)),
                "width · coefficient · (moisture then − moisture now)",
                CHAPTER_13,
                given("width", width),
                given("coefficient", coefficient.value()),
                given("now", from),
                given("then", to));
        if (shrinkage.isEmpty() || isWithin(first) && isWithin(last)) {
            return linear;
        }
        double all = 100 * saturation.number() / shrinkage.get().value().number() - saturation.number() + first;
        Figure<Length> wide = Figure.of(
                width.times((last - first) / all),
                "width · (moisture then − moisture now) / (100 · F / shrinkage − F + moisture now); beyond 6 to 14 % the larger"
                        + " of this and what the coefficient gives",
                CHAPTER_13,
                given("width", width),
                given("shrinkage", shrinkage.get().value()),
                given("fibre saturation F", saturation),
                given("now", from),
                given("then", to),
                given("by the coefficient", linear.value()));
        boolean larger = !wide.value().absolute().isShorterThan(linear.value().absolute());
        return larger
                ? wide
                : Figure.of(
                        linear.value(),
                        "width · coefficient · (moisture then − moisture now); beyond 6 to 14 % the larger of this and what"
                                + " the shrinkage gives",
                        CHAPTER_13,
                        given("width", width),
                        given("coefficient", coefficient.value()),
                        given("now", from),
                        given("then", to),
                        given("by the shrinkage", wide.value()));
    }

    private static boolean isWithin(double moisture) {
        return moisture >= LEAST && moisture <= MOST;
    }

    /**
     * The moisture that wood comes to in air of that temperature and humidity, after Hailwood and Horrobin.
     *
     * @param humidity of the air, from 0 to 100 %
     */
    public static Figure<Percent> equilibrium(Temperature warm, Percent humidity) {
        double t = warm.celsius();
        double h = humidity.share();
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 7.36e-4 * t - 2.73e-6 * t * t;
        double k1 = 6.27 - 9.38e-3 * t - 3.03e-4 * t * t;
        double k2 = 1.91 + 4.07e-2 * t - 2.93e-4 * t * t;
        double kh = k * h;
        double both = k1 * k2 * kh * kh;
        return Figure.of(
                Percent.of(1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * both) / (1 + k1 * kh + both))),
                "1800/W · (K·h/(1 − K·h) + (K1·K·h + 2·K1·K2·K²·h²)/(1 + K1·K·h + K1·K2·K²·h²)), W, K, K1 and K2 by the temperature",
                EMC_SOURCE,
                given("temperature", warm),
                given("humidity", humidity));
    }
}
