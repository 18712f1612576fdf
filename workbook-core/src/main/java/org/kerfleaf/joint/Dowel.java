package org.kerfleaf.joint;

import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * A fastener as the rules for a load across it take it: a round steel rod that presses on wood and bends.
 *
 * <p>Sources: NDS 2018 appendix I, table I1 (bending yield strength) and appendix L (root diameters of lag and wood screws), from
 * memory; both reproduce table 12K, seen in a copy. A screw whose thread reaches the joint counts with the root of its thread
 * (12.3.7).
 *
 * @param nominal diameter of its plain shank
 * @param bears diameter that presses on the wood
 * @param bendsAt bending yield strength in pounds on a square inch
 * @param tip length of its point, which holds nothing
 * @param least how many of its diameters it must be in the second part
 */
public record Dowel(Length nominal, Length bears, int bendsAt, Length tip, int least) {
    /** Where its strengths and root diameters are from. */
    public static final String SOURCE = "NDS 2018 appendices I and L (from memory)";

    private static final int IN_WOOD = 6;
    private static final int LAG_IN_WOOD = 4;
    private static final int SOFT_STEEL = 45_000;

    /** Root diameters of lag screws in thousandths of an inch, by diameter in sixty-fourths. */
    private static final Map<Long, Integer> LAG_ROOTS =
            Map.of(16L, 173, 20L, 227, 24L, 265, 28L, 328, 32L, 371, 40L, 471, 48L, 579);

    /** A smooth round nail, its point two diameters long. */
    public static Dowel nail(Length diameter) {
        return new Dowel(diameter, diameter, wire(diameter), diameter.times(2), IN_WOOD);
    }

    /** A wood screw, its point two diameters long; empty for a gauge whose root is not in the table. */
    public static Optional<Dowel> woodScrew(int gauge) {
        Length shank = WoodScrew.diameter(gauge).value();
        return DrillSizes.root(gauge).map(root -> new Dowel(shank, root, wire(shank), shank.times(2), IN_WOOD));
    }

    /** A lag screw; empty for a diameter that is none of 1/4 to 3/4 in. */
    public static Optional<Dowel> lag(LagScrew lag) {
        long sixtyFourth = Length.ofSixtyFourths(1).nanometres();
        Optional<Integer> root =
                Optional.ofNullable(LAG_ROOTS.get(lag.diameter().nanometres() / sixtyFourth));
        double across = lag.diameter().inInches();
        int steel = across <= 0.25 ? 70_000 : across <= 0.3125 ? 60_000 : SOFT_STEEL;
        return lag.tip()
                .flatMap(tip -> root.map(mils ->
                        new Dowel(lag.diameter(), Length.ofInches(mils / 1000.0), steel, tip.value(), LAG_IN_WOOD)));
    }

    /** A bolt whose thread lies outside the wood. */
    public static Dowel bolt(Length diameter) {
        return new Dowel(diameter, diameter, SOFT_STEEL, Length.ZERO, 0);
    }

    /** Wire is the stronger the thinner it was drawn. */
    private static int wire(Length diameter) {
        double across = diameter.inInches();
        if (across <= 0.142) {
            return 100_000;
        }
        return across <= 0.177 ? 90_000 : across <= 0.236 ? 80_000 : across <= 0.273 ? 70_000 : 60_000;
    }

    /** Whether it is so thick that wood bears it better along its grain than across: 1/4 in or more. */
    boolean isThick() {
        return nominal.inInches() >= 0.25;
    }
}
