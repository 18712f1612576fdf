package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

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

    /** A length as a multiple of the shank's diameter, as rules for screws count. */
    public Ratio inDiameters(Length length) {
        return Ratio.of(length.dividedBy(diameter()));
    }

    /** {@code No. 6 x 1 5/8 in}. */
    public String words(MeasureStyle style) {
        return "No. " + gauge + " x " + length.in(style);
    }
}
