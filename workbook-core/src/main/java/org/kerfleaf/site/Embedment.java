package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;
import org.kerfleaf.sketch.Soil;

/**
 * How deep a post must stand so that a sideways push does not turn it over. An estimate.
 *
 * <p>Source: IBC 1807.3.2.1 (not held at grade), d = A/2 · (1 + √(1 + 4.36 h/A)) with A = 2.34 P/(S1 b), S1 the soil's lateral
 * bearing at a third of the depth, which itself depends on d. It is repeated with the geometric mean of the last two depths,
 * since the plain repetition swings to and fro for a push near grade. Presumptive bearing is that of IBC table 1806.2.
 */
public final class Embedment {
    private static final String SOURCE = "IBC 1807.3.2.1 eq. 18-1, lateral bearing of table 1806.2 (seen in copies)";
    private static final double MILLIMETRES_IN_FOOT = 304.8;
    private static final double DEEPEST = 12;
    private static final int ROUNDS = 200;

    private Embedment() {}

    /**
     * The depth below grade; empty beyond 12 ft, where the rule ends.
     *
     * @param push sideways, at allowable stress level
     * @param height of the push above grade
     * @param across diameter of a round post or pier, or the diagonal of a square post
     * @param doubled whether the soil's bearing may be doubled: an isolated pole that may move 1/2 in at grade, 1806.3.4
     */
    public static Optional<Figure<Length>> depth(Force push, Length height, Length across, Soil soil, boolean doubled) {
        double p = push.inPounds();
        double h = height.inMillimetres() / MILLIMETRES_IN_FOOT;
        double b = across.inMillimetres() / MILLIMETRES_IN_FOOT;
        double bearing = poundsPerSquareFootAndFoot(soil) * (doubled ? 2 : 1);
        double depth = 1;
        for (int i = 0; i < ROUNDS; i++) {
            double next = once(p, h, b, bearing * depth / 3);
            depth = StrictMath.sqrt(depth * next);
        }
        if (!(depth <= DEEPEST)) {
            return Optional.empty();
        }
        return Optional.of(Figure.of(
                Length.ofMillimetres(depth * MILLIMETRES_IN_FOOT),
                "d = A/2 · (1 + √(1 + 4.36 h/A)), A = 2.34 P/(S1 b), S1 = bearing · d/3, repeated until it stands still",
                SOURCE,
                givens(push, height, across, soil, doubled)));
    }

    private static Given[] givens(Force push, Length height, Length across, Soil soil, boolean doubled) {
        return new Given[] {
            given("P", push),
            given("h", height),
            given("b", across),
            given(
                    "bearing",
                    (int) poundsPerSquareFootAndFoot(soil) + " lb/ft² for each foot of depth"
                            + (doubled ? ", doubled" : ""))
        };
    }

    /** How hard a soil may be pressed sideways at a third of a depth: so much for each foot of it. */
    static Figure<Pressure> bearing(Soil soil, Length depth) {
        double feet = depth.inMillimetres() / MILLIMETRES_IN_FOOT;
        return Figure.of(
                Pressure.ofPoundsPerSquareFoot(poundsPerSquareFootAndFoot(soil) * feet / 3),
                "lateral bearing for each foot of depth · a third of the depth",
                "IBC 1807.3.2.1, table 1806.2 (seen in copies)",
                given("depth", depth),
                given("for each foot", (int) poundsPerSquareFootAndFoot(soil) + " lb/ft²"));
    }

    /** The depth by one step of the formula, in feet, for a given lateral bearing S1. */
    static double once(double pounds, double heightFeet, double acrossFeet, double s1) {
        double a = 2.34 * pounds / (s1 * acrossFeet);
        return 0.5 * a * (1 + StrictMath.sqrt(1 + 4.36 * heightFeet / a));
    }

    /** Lateral bearing for each foot of depth, IBC table 1806.2 (2012). */
    static double poundsPerSquareFootAndFoot(Soil soil) {
        return switch (soil) {
            case GRAVEL -> 200;
            case SAND -> 150;
            case CLAY -> 100;
        };
    }

    /** The rule of thumb where no wind is said: a third of the post, 24 in at least. */
    public static Figure<Length> byThumb(Length post) {
        return Figure.of(
                post.dividedBy(3).max(Length.ofInches(24)),
                "a third of the post, 24 in at least",
                "common practice, no source",
                given("post", post));
    }
}
