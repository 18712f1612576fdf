package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * A wood screw of a gauge and a length, driven with its head sunk.
 *
 * @param gauge its number, from 0 to 24
 * @param length from tip to the widest part of the head
 */
public record WoodScrew(int gauge, Length length) {
    /** How deep a head is sunk under the surface: common practice, no source. */
    public static final Length COUNTERSINK = Length.ofSixtyFourths(4);

    /** Where {@link #diameter(int)} is from. Many construction screws follow no standard; measure those. */
    public static final String DIAMETER_SOURCE = "ASME B18.6.1, basic diameter (seen in a copy)";

    private static final int THICKEST_GAUGE = 24;
    private static final long MIL = 25_400;

    /** Widths of flat heads in thousandths of an inch. */
    private static final Map<Integer, Integer> HEADS = Map.of(4, 225, 6, 279, 8, 332, 10, 385, 12, 438, 14, 507);

    public WoodScrew {
        known(gauge);
        if (!length.isPositive()) {
            throw new IllegalArgumentException("A screw %s long: more than 0 would be right.".formatted(length));
        }
    }

    /** The shank's diameter: 0.060 in + 0.013 in for each gauge. @throws IllegalArgumentException for a gauge outside 0 to 24 */
    public static Figure<Length> diameter(int gauge) {
        return Figure.of(
                new Length((60 + 13L * known(gauge)) * MIL),
                "0.060 in + 0.013 in for each gauge",
                DIAMETER_SOURCE,
                given("gauge", gauge));
    }

    private static int known(int gauge) {
        if (gauge < 0 || gauge > THICKEST_GAUGE) {
            throw new IllegalArgumentException(
                    "Screw gauge (%d): No. 0 to No. %d would be right.".formatted(gauge, THICKEST_GAUGE));
        }
        return gauge;
    }

    /** The shank's diameter. */
    public Length diameter() {
        return diameter(gauge).value();
    }

    /** How far the screw goes into the second part: length - (first part - countersink). Zero or less: it does not get there. */
    public Figure<Length> reach(Length through, Length countersink) {
        return Figure.of(
                length.minus(through.minus(countersink)),
                "length - (first part - countersink)",
                "geometry",
                given("length", length),
                given("first part", through),
                given("countersink", countersink));
    }

    /** How much wood lies beyond the tip: what lies under the first part − reach. Less than zero: the tip comes out. */
    public Figure<Length> tip(Length through, Length countersink, Length wood) {
        Length reach = reach(through, countersink).value();
        return Figure.of(
                wood.minus(reach),
                "wood under the first part − reach",
                "geometry",
                given("wood", wood),
                given("reach", reach));
    }

    /** How much thread is in the second part: two thirds of the screw, or its reach where that is less; nothing of what comes out. */
    public Figure<Length> threadIn(Length through, Length countersink, Length wood) {
        Length reach = reach(through, countersink).value();
        Length thread = Withdrawal.screwThread(length);
        Length out = reach.minus(wood).max(Length.ZERO);
        return Figure.of(
                thread.min(reach).minus(out).max(Length.ZERO),
                "two thirds of the screw, or its reach where that is less",
                "NDS 2018 appendix L (from memory)",
                given("thread", thread),
                given("reach", reach));
    }

    /** How wide its flat head is, and so its countersink; empty for a gauge the table lacks. */
    public Optional<Figure<Length>> headWidth() {
        return Optional.ofNullable(HEADS.get(gauge))
                .map(mils -> Figure.of(
                        new Length(mils * MIL),
                        "largest width of a flat countersunk head",
                        "ASME B18.6.1 (from memory)",
                        given("gauge", gauge)));
    }

    /** A length as a multiple of the shank's diameter, as rules for screws count. */
    public Ratio inDiameters(Length length) {
        return Ratio.of(length.dividedBy(diameter()));
    }

    /** {@code No. 6 x 1 5/8 in}. */
    public String words(MeasureStyle style) {
        return "No. " + gauge + " x " + length.in(style);
    }
}
