package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.reason.Figure;

/** How long a bolt must be to go through a stack of parts and still fill its nut. */
public final class BoltLength {
    /** One washer under the head and one under the nut, each this thick: common practice. */
    public static final Length WASHER = Length.ofSixtyFourths(4);

    private static final String SOURCE =
            "geometry; nut height about the bolt's diameter (ASME B18.2.2, ISO 4032, from memory),"
                    + " thread pitch (ASME B1.1, ISO 261, from memory)";

    /** Coarse threads in an inch, by diameter in sixty-fourths of an inch. */
    private static final Map<Long, Double> INCH_THREADS_PER_INCH =
            Map.of(16L, 20.0, 20L, 18.0, 24L, 16.0, 28L, 14.0, 32L, 13.0, 40L, 11.0, 48L, 10.0);

    /** Pitch of coarse threads in millimetres, by diameter in millimetres. */
    private static final Map<Long, Double> METRIC_PITCH =
            Map.of(5L, 0.8, 6L, 1.0, 8L, 1.25, 10L, 1.5, 12L, 1.75, 16L, 2.0, 20L, 2.5);

    private BoltLength() {}

    /**
     * The stack, two washers, the nut and two threads showing.
     *
     * @param stack thicknesses of what the bolt goes through
     * @param diameter of the bolt, 1/4 to 3/4 in or M5 to M20
     * @throws IllegalArgumentException for another diameter
     */
    public static Figure<Length> least(List<Length> stack, Length diameter) {
        Length through = Length.ZERO.plus(stack.toArray(Length[]::new));
        Length threads = twoThreads(diameter);
        return Figure.of(
                through.plus(WASHER, WASHER, diameter, threads),
                "stack + two washers + nut + two threads",
                SOURCE,
                given("stack", through),
                given("washers", WASHER.times(2)),
                given("nut", diameter),
                given("two threads", threads));
    }

    /**
     * The next length sold: bolts in inches come every 1/2 in, metric ones every 10 mm (common practice).
     *
     * @throws IllegalArgumentException for a diameter that is neither 1/4 to 3/4 in nor M5 to M20
     */
    public static Figure<Length> sold(List<Length> stack, Length diameter) {
        Length least = least(stack, diameter).value();
        Length step = isMetric(diameter) ? Length.ofMillimetres(10) : Length.ofSixtyFourths(32);
        return Figure.of(
                least.roundedTo(step, RoundingMode.CEILING),
                "stack + two washers + nut + two threads, then the next length sold",
                SOURCE,
                given("least", least),
                given("sold every", step));
    }

    private static boolean isMetric(Length diameter) {
        return METRIC_PITCH.containsKey(diameter.nanometres() / LengthUnit.MILLIMETRES.nanometres())
                && diameter.nanometres() % LengthUnit.MILLIMETRES.nanometres() == 0;
    }

    private static Length twoThreads(Length diameter) {
        if (isMetric(diameter)) {
            long whole = diameter.nanometres() / LengthUnit.MILLIMETRES.nanometres();
            return Length.ofMillimetres(2 * METRIC_PITCH.get(whole));
        }
        long sixtyFourth = Length.ofSixtyFourths(1).nanometres();
        Double threads = diameter.nanometres() % sixtyFourth == 0
                ? INCH_THREADS_PER_INCH.get(diameter.nanometres() / sixtyFourth)
                : null;
        if (threads == null) {
            throw new IllegalArgumentException(
                    "A bolt of %s: 1/4, 5/16, 3/8, 7/16, 1/2, 5/8 or 3/4 in, or 5 to 20 mm would be right."
                            .formatted(diameter));
        }
        return Length.ofInches(2 / threads);
    }
}
