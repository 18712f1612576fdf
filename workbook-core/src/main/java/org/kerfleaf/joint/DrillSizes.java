package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * Which bit to drill with for a wood screw.
 *
 * <p>Two sources are in circulation and do not agree, so each figure names its own: the shop table in inch fractions, which
 * the plan prints, and the rule of the NDS with the root diameters of its appendix L.
 */
public final class DrillSizes {
    /** The table the plan uses. */
    public static final String SHOP_TABLE = "the usual shop drill table (two printed charts, common practice)";

    private static final String NDS = "NDS 2018 12.1.5 with root diameters of appendix L, table L3 (from memory)";

    private static final Length SIXTY_FOURTH = Length.ofSixtyFourths(1);

    /** How hard the wood is that the screw holds in. */
    public enum Wood {
        SOFT("soft wood or plywood"),
        HARD("hard wood");

        private final String words;

        Wood(String words) {
            this.words = words;
        }

        /** Denser than 0.6 is drilled as hard wood; what is not known as soft, with the smaller hole. */
        public static Wood of(Optional<Ratio> specificGravity) {
            return specificGravity.filter(g -> g.value() > 0.6).isPresent() ? HARD : SOFT;
        }

        /** The words in a sentence. */
        public String words() {
            return words;
        }
    }

    private record Row(int soft, int hard, int clearance) {}

    /** Bits in sixty-fourths of an inch; where a chart gives a range for hard wood, its larger end. */
    private static final Map<Integer, Row> BITS = Map.of(
            4, new Row(3, 4, 7),
            6, new Row(4, 5, 9),
            8, new Row(5, 7, 11),
            10, new Row(6, 8, 12),
            12, new Row(7, 9, 14),
            14, new Row(7, 10, 16));

    /** Root diameters in thousandths of an inch. */
    private static final Map<Integer, Integer> ROOTS =
            Map.of(6, 113, 7, 122, 8, 131, 9, 142, 10, 152, 12, 171, 14, 196, 16, 209, 18, 232);

    private DrillSizes() {}

    /** The root of a wood screw's thread by appendix L of the NDS, table L3 (from memory); empty for a gauge it lacks. */
    static Optional<Length> root(int gauge) {
        return Optional.ofNullable(ROOTS.get(gauge)).map(mils -> Length.ofInches(mils / 1000.0));
    }

    /** The pilot hole for the thread; empty for a gauge the table lacks. */
    public static Optional<Figure<Length>> pilot(int gauge, Wood wood) {
        return row(gauge, "pilot hole for the thread in " + wood.words, r -> wood == Wood.SOFT ? r.soft : r.hard);
    }

    /** The clearance hole for the shank in the first part; empty for a gauge the table lacks. */
    public static Optional<Figure<Length>> clearance(int gauge) {
        return row(gauge, "clearance hole for the shank in the first part", Row::clearance);
    }

    /** The widest hole that a nail may be driven into: 75 % of it, 90 % in wood over 0.6, to the 1/64 in below. */
    public static Figure<Length> nailHole(Length diameter, Ratio specificGravity) {
        double share = specificGravity.value() > 0.6 ? 0.9 : 0.75;
        return Figure.of(
                diameter.times(share).roundedTo(SIXTY_FOURTH, RoundingMode.DOWN),
                "three quarters of the nail, 0.9 in wood over 0.6, to the 1/64 in below",
                "NDS 2018 12.1.6.3 (from memory)",
                given("D", diameter),
                given("specific gravity", specificGravity));
    }

    private static Optional<Figure<Length>> row(int gauge, String rule, ToIntFunction<Row> column) {
        return Optional.ofNullable(BITS.get(gauge))
                .map(row -> Figure.of(
                        Length.ofSixtyFourths(column.applyAsInt(row)), rule, SHOP_TABLE, given("gauge", gauge)));
    }

    /**
     * The lead hole the NDS asks of a screw loaded in withdrawal, to the nearest 1/64 in: 90 % of the root in wood over 0.6
     * specific gravity, 70 % over 0.5. Empty if none is required or the gauge has no root diameter in the table.
     *
     * @param specificGravity of the wood, oven-dry, from 0.3 to 0.8
     */
    public static Optional<Figure<Length>> leadHole(int gauge, double specificGravity) {
        Optional<Double> share =
                specificGravity > 0.6 ? Optional.of(0.9) : specificGravity > 0.5 ? Optional.of(0.7) : Optional.empty();
        return share.flatMap(part -> root(gauge)
                .map(dr -> Figure.of(
                        dr.times(part).roundedTo(SIXTY_FOURTH, RoundingMode.HALF_UP),
                        "share of the root diameter, to the nearest 1/64 in",
                        NDS,
                        given("root", dr),
                        given("share", Ratio.of(part)),
                        given("specific gravity", Ratio.of(specificGravity)))));
    }
}
