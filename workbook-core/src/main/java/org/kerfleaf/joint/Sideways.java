package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * What a fastener through two parts holds across its own length, sideways: the least of the six ways in which wood is crushed and
 * the fastener bends. A reference value: dry wood, a load of ten years, before any other factor. An estimate.
 *
 * <p>Source: NDS 2018 12.3.1, equations 12.3-1 to 12.3-6, and 12.3.3 for how wood bears (from memory; they reproduce table 12K,
 * lag screws through steel, which was seen in a copy).
 */
public final class Sideways {
    /** Where the rule is from. */
    public static final String SOURCE =
            "NDS 2018 12.3.1, eq. 12.3-1 to 12.3-6 (from memory; reproduces table 12K, seen in a copy)";

    private static final double WET = 0.7;
    private static final double END_GRAIN = 0.67;
    private static final double ROUND = 50;

    /** The six ways, in the order of the equations. */
    private static final String[] WAYS = {
        "the second part is crushed",
        "the first part is crushed",
        "the fastener tilts in both",
        "it bends in the second part",
        "it bends in the first part",
        "it bends in both"
    };

    private Sideways() {}

    /**
     * A part as the fastener meets it.
     *
     * @param gravity specific gravity of its wood
     * @param bears length of the fastener that presses on it, more than zero
     * @param toGrain between the load and its grain, from 0 to 90°; counts for fasteners of 1/4 in or more
     */
    public record Wood(Ratio gravity, Length bears, Angle toGrain) {}

    /** What one holds. */
    public static Figure<Force> holds(Dowel dowel, Wood first, Wood second) {
        double main = crushedAt(dowel, second);
        double side = crushedAt(dowel, first);
        double turned = Math.max(degrees(first.toGrain()), degrees(second.toGrain()));
        double[] ways = ways(
                dowel, main, second.bears().inInches(), side, first.bears().inInches(), dowel.isThick() ? turned : 0);
        int least = 0;
        for (int i = 1; i < ways.length; i++) {
            least = ways[i] < ways[least] ? i : least;
        }
        return Figure.of(
                Force.ofPounds(ways[least]),
                "the least of six ways it can give; here " + WAYS[least],
                SOURCE + "; " + Dowel.SOURCE,
                given("D", dowel.bears()),
                given("bends at", dowel.bendsAt() + " psi"),
                given("G of the first", first.gravity()),
                given("first crushed at", Math.round(side) + " psi"),
                given("in the first", first.bears()),
                given("G of the second", second.gravity()),
                given("second crushed at", Math.round(main) + " psi"),
                given("in the second", second.bears()));
    }

    private static double degrees(Angle angle) {
        return angle.inDegrees();
    }

    /**
     * At which pressure in psi wood is crushed under it: 16600 G^1.84 under thin fasteners; from 1/4 in on 11200 G along the grain and
     * 6100 G^1.45 / √D across it, between them as Hankinson has it. Each to the nearest 50 psi, as the table prints them.
     */
    static double crushedAt(Dowel dowel, Wood wood) {
        double g = wood.gravity().value();
        if (!dowel.isThick()) {
            return fifties(16_600 * StrictMath.pow(g, 1.84));
        }
        double along = fifties(11_200 * g);
        double across = fifties(
                6100 * StrictMath.pow(g, 1.45) / StrictMath.sqrt(dowel.nominal().inInches()));
        double sine = StrictMath.sin(StrictMath.toRadians(degrees(wood.toGrain())));
        return along * across / (along * sine * sine + across * (1 - sine * sine));
    }

    private static double fifties(double psi) {
        return Math.round(psi / ROUND) * ROUND;
    }

    /**
     * The six ways in pounds, each divided by its reduction term.
     *
     * @param main crushing of the second part, psi
     * @param side likewise of the first
     * @param turned the greater angle between load and grain, in degrees; 0 for thin fasteners
     */
    static double[] ways(Dowel dowel, double main, double inMain, double side, double inSide, double turned) {
        double d = dowel.bears().inInches();
        double steel = dowel.bendsAt();
        double re = main / side;
        double rt = inMain / inSide;
        double k1 = (StrictMath.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt))
                / (1 + re);
        double k2 =
                -1 + StrictMath.sqrt(2 * (1 + re) + 2 * steel * (1 + 2 * re) * d * d / (3 * main * inMain * inMain));
        double k3 =
                -1 + StrictMath.sqrt(2 * (1 + re) / re + 2 * steel * (2 + re) * d * d / (3 * main * inSide * inSide));
        double[] reduced = reduced(dowel, turned);
        return new double[] {
            d * inMain * main / reduced[0],
            d * inSide * side / reduced[0],
            k1 * d * inSide * side / reduced[1],
            k2 * d * inMain * main / (1 + 2 * re) / reduced[2],
            k3 * d * inSide * main / (2 + re) / reduced[2],
            d * d * StrictMath.sqrt(2 * main * steel / (3 * (1 + re))) / reduced[2]
        };
    }

    /** NDS 2018 table 12.3.1B: for crushing, for tilting, for bending. */
    private static double[] reduced(Dowel dowel, double turned) {
        double d = dowel.bears().inInches();
        double angle = 1 + 0.25 * turned / 90;
        if (d >= 0.25) {
            return new double[] {4 * angle, 3.6 * angle, 3.2 * angle};
        }
        double thin = (d <= 0.17 ? 2.2 : 10 * d + 0.5) * (dowel.isThick() ? angle : 1);
        return new double[] {thin, thin, thin};
    }

    /** What is left of it where the second part is met in its end: 0.67 (NDS 2018 12.5.2.2, from memory). */
    public static Figure<Force> inEndGrain(Figure<Force> side) {
        return Withdrawal.adjusted(side, END_GRAIN, "0.67 in end grain", "NDS 2018 12.5.2.2 (from memory)");
    }

    /** What is left of it in wood that stays over 19 % moisture: 0.7 (NDS 2018 table 11.3.3, from memory). */
    public static Figure<Force> damp(Figure<Force> dry) {
        return Withdrawal.adjusted(dry, WET, "0.7 in wood over 19 % moisture", "NDS 2018 table 11.3.3 (from memory)");
    }
}
