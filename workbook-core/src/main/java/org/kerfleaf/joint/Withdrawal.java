package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;

/**
 * What a fastener holds against being pulled straight out of side grain: the reference design value of the NDS for the length
 * that is in the wood, before any adjustment for load duration or damp. An estimate; wood screws are not to be relied on in
 * end grain.
 */
public final class Withdrawal {
    private static final double LAG_LONGEST_THREAD = 6;
    private static final double WET = 0.7;
    private static final double NAIL_WET = 0.25;
    private static final double END_GRAIN = 0.75;

    private Withdrawal() {}

    /** Wood screw: 2850 G² D pounds for each inch of thread (NDS 2018 12.2-2, seen in a copy). */
    public static Figure<Force> woodScrew(double specificGravity, Length diameter, Length thread) {
        return figure(
                "2850 · G² · D · thread",
                "NDS 2018 eq. 12.2-2 (seen in a copy)",
                2850 * specificGravity * specificGravity * diameter.inInches(),
                specificGravity,
                diameter,
                thread);
    }

    /** Lag screw: 1800 G^(3/2) D^(3/4) pounds for each inch of thread, its tip not counted (NDS 2018 12.2-1, seen in a copy). */
    public static Figure<Force> lagScrew(double specificGravity, Length diameter, Length thread) {
        double perInch = 1800 * StrictMath.pow(specificGravity, 1.5) * StrictMath.pow(diameter.inInches(), 0.75);
        return figure(
                "1800 · G^(3/2) · D^(3/4) · thread",
                "NDS 2018 eq. 12.2-1 (seen in a copy)",
                perInch,
                specificGravity,
                diameter,
                thread);
    }

    /** Smooth nail: 1380 G^(5/2) D pounds for each inch in the wood (NDS 2018 12.2-3, seen in a copy). */
    public static Figure<Force> nail(double specificGravity, Length diameter, Length inWood) {
        double perInch = 1380 * StrictMath.pow(specificGravity, 2.5) * diameter.inInches();
        return figure(
                "1380 · G^(5/2) · D · length in the wood",
                "NDS 2018 eq. 12.2-3 (seen in a copy)",
                perInch,
                specificGravity,
                diameter,
                inWood);
    }

    /** The threaded part of a wood screw: two thirds of its length (NDS appendix L, from memory). */
    public static Length screwThread(Length length) {
        return length.times(2).dividedBy(3);
    }

    /** The threaded part of a lag screw with its tip: half its length and 1/2 in, 6 in at most (NDS appendix L, from memory). */
    public static Length lagThread(Length length) {
        return length.half().plus(Length.ofSixtyFourths(32)).min(Length.ofInches(LAG_LONGEST_THREAD));
    }

    /** What is left of it in wood that stays over 19 % moisture: 0.7 (NDS 2018 table 11.3.3, from memory). */
    public static Figure<Force> damp(Figure<Force> dry) {
        return adjusted(dry, WET, "0.7 in wood over 19 % moisture", "NDS 2018 table 11.3.3 (from memory)");
    }

    /** What is left of a smooth nail's where the wood dries or gets wet after it is driven: 0.25 (the same table, from memory). */
    public static Figure<Force> nailDamp(Figure<Force> dry) {
        return adjusted(dry, NAIL_WET, "0.25 in wood that dries or gets wet", "NDS 2018 table 11.3.3 (from memory)");
    }

    /** What is left of a lag screw's in end grain: 0.75 (NDS 2018 12.5.2, seen in a copy). A wood screw has none there. */
    public static Figure<Force> lagInEndGrain(Figure<Force> side) {
        return adjusted(side, END_GRAIN, "0.75 in end grain", "NDS 2018 12.5.2 (seen in a copy)");
    }

    /** A figure scaled by a factor, with the factor's reason behind its own. */
    static Figure<Force> adjusted(Figure<Force> full, double factor, String why, String source) {
        Given[] given = Stream.concat(full.reason().given().stream(), Stream.of(given("full value", full.value())))
                .toArray(Given[]::new);
        return Figure.of(
                full.value().times(factor),
                full.reason().rule() + " · " + why,
                full.reason().source() + "; " + source,
                given);
    }

    private static Figure<Force> figure(
            String rule, String source, double poundsPerInch, double specificGravity, Length diameter, Length length) {
        Given[] given = {
            given("G", Ratio.of(specificGravity)), given("D", diameter), given("length", length),
        };
        return Figure.of(Force.ofPounds(poundsPerInch * length.inInches()), rule, source, given);
    }
}
