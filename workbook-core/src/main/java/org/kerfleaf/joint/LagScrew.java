package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * A lag screw, its head with a washer on the first part.
 *
 * @param diameter of its plain shank, more than zero
 * @param length from under the head to the tip, more than zero
 */
public record LagScrew(Length diameter, Length length) {
    private static final String APPENDIX = "NDS 2018 appendix L, table L2 (from memory)";
    private static final String HOLES =
            "NDS 2018 12.1.4.2: 40 to 70 % of D up to G 0.5, 60 to 75 % up to 0.6, 65 to 85 %"
                    + " above; shank hole D (from memory)";
    private static final Length BIT_STEP = Length.ofSixtyFourths(1);

    /** Length of the tapered tip in sixty-fourths of an inch, by diameter in sixty-fourths. */
    private static final Map<Long, Integer> TIPS =
            Map.of(16L, 10, 20L, 12, 24L, 14, 28L, 18, 32L, 20, 40L, 26, 48L, 32);

    public LagScrew {
        if (!diameter.isPositive() || !length.isPositive()) {
            throw new IllegalArgumentException(
                    "A lag screw %s across and %s long: more than 0 would be right.".formatted(diameter, length));
        }
    }

    /** The tapered tip, which does not count as thread; empty for a diameter that is none of 1/4 to 3/4 in. */
    public Optional<Figure<Length>> tip() {
        long sixtyFourth = Length.ofSixtyFourths(1).nanometres();
        return diameter.nanometres() % sixtyFourth != 0
                ? Optional.empty()
                : Optional.ofNullable(TIPS.get(diameter.nanometres() / sixtyFourth))
                        .map(Length::ofSixtyFourths)
                        .map(tip -> Figure.of(tip, "length of the tapered tip", APPENDIX, given("D", diameter)));
    }

    /** How far it goes into the second part, tip and all: length − first part. */
    public Figure<Length> reach(Length through) {
        return Figure.of(
                length.minus(through),
                "length − first part",
                "geometry",
                given("length", length),
                given("first part", through));
    }

    /**
     * The thread that is in the second part, its tip not counted; empty if the tip's length is not known.
     *
     * @param wood how much wood lies under the first part, if that is known
     */
    public Optional<Figure<Length>> threadIn(Length through, Optional<Length> wood) {
        Length reach = reach(through).value();
        Length out = wood.map(deep -> reach.minus(deep).max(Length.ZERO)).orElse(Length.ZERO);
        return tip().map(tip -> Figure.of(
                Withdrawal.lagThread(length)
                        .min(reach)
                        .minus(tip.value().max(out))
                        .max(Length.ZERO),
                "thread (half the length and 1/2 in, 6 in at most), or as much of it as is in the second part, less the tip",
                APPENDIX,
                given("thread", Withdrawal.lagThread(length)),
                given("reach", reach),
                given("tip", tip.value())));
    }

    /** The hole for the shank, through the first part: as wide as the shank. */
    public Figure<Length> shankHole() {
        return Figure.of(diameter, "as wide as the shank", HOLES, given("D", diameter));
    }

    /** The hole for the thread: the middle of what is allowed for the wood, to the nearest 1/64 in. */
    public Figure<Length> leadHole(Ratio specificGravity) {
        double g = specificGravity.value();
        double least = g > 0.6 ? 0.65 : g > 0.5 ? 0.60 : 0.40;
        double most = g > 0.6 ? 0.85 : g > 0.5 ? 0.75 : 0.70;
        return Figure.of(
                diameter.times((least + most) / 2).roundedTo(BIT_STEP, RoundingMode.HALF_UP),
                "the middle of what is allowed for the wood, to the nearest 1/64 in",
                HOLES,
                given("D", diameter),
                given("G", specificGravity),
                given("least", diameter.times(least)),
                given("most", diameter.times(most)));
    }
}
