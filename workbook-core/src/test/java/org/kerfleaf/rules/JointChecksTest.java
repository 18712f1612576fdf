package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Metal;

class JointChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;
    private static final Length SHEET = Length.ofSixtyFourths(46);
    private static final Length ONE_AND_FIVE_EIGHTHS = Length.ofSixtyFourths(104);
    private static final WoodScrew SIX = new WoodScrew(6, ONE_AND_FIVE_EIGHTHS);
    private static final WoodScrew EIGHT = new WoodScrew(8, ONE_AND_FIVE_EIGHTHS);

    /** The seed-swap cabinet (NDS 12.1.5.6, from memory): No. 6 reaches 31/32 in, 7.0 D, so 70 % sideways. */
    @Test
    void screwReach_numberSix_holdsReduced() {
        Check check = reach(SIX, Optional.empty());

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .isEqualTo(
                        "Through 23/32 in of side, head 1/16 in down, a No. 6 x 1 5/8 in screw reaches 31/32 in. That is 7"
                                + " diameters; under 10 it holds sideways at 70 % of its full value. Wanted: 53/64 in.");
        assertThat(check.level().getAsDouble()).isCloseTo(0.96875 / (6 * 0.138) - 1, within(1e-9));
        assertThat(check.advice()).isEmpty();
    }

    /** The same with No. 8: 5.9 D, short; the sentence of the look's own example. */
    @Test
    void screwReach_numberEight_isShort() {
        Check check = reach(EIGHT, Optional.empty());

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.name()).isEqualTo("Screw reach: Back to Floor");
        assertThat(check.result())
                .isEqualTo(
                        "Through 23/32 in of side, head 1/16 in down, a No. 8 x 1 5/8 in screw reaches 31/32 in. Wanted:"
                                + " 63/64 in. Short by 1/64 in.");
        assertThat(check.margin()).isEqualTo("short by 1/64 in");
        assertThat(check.advice()).isEqualTo("A 1 3/4 in screw would hold.");
    }

    @Test
    void screwReach_longerWouldPoke_advisesAThinnerOne() {
        assertThat(reach(EIGHT, Optional.of(Length.ofInches(1))).advice())
                .isEqualTo("A No. 6 of this length would hold.");
    }

    @Test
    void screwReach_exactlySixDiameters_holds() {
        Length through = ONE_AND_FIVE_EIGHTHS
                .plus(WoodScrew.COUNTERSINK)
                .minus(SIX.diameter().times(6L));

        assertThat(JointChecks.screwReach("", "side", SIX, through, WoodScrew.COUNTERSINK, Optional.empty(), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(JointChecks.screwReach(
                                "",
                                "side",
                                SIX,
                                through.plus(new Length(1)),
                                WoodScrew.COUNTERSINK,
                                Optional.empty(),
                                INCHES)
                        .margin())
                .isEqualTo("short by less than 1/64 in");
    }

    @Test
    void screwReach_tooShortToGetThere_reachesNothing() {
        Check check = JointChecks.screwReach(
                "", "post", SIX, Length.ofInches(3.5), WoodScrew.COUNTERSINK, Optional.empty(), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result()).contains("reaches 0 in");
        assertThat(check.advice()).doesNotContain("would hold");
    }

    /** Common practice: 1/16 in of wood beyond the tip. */
    @Test
    void screwTip_shelfOfOneInch_staysInside() {
        Check holds = JointChecks.screwTip("", SIX, SHEET, WoodScrew.COUNTERSINK, Length.ofInches(1.03125), INCHES);
        Check pokes = JointChecks.screwTip("", SIX, SHEET, WoodScrew.COUNTERSINK, Length.ofInches(1), INCHES);

        assertThat(holds.margin()).isEqualTo("nothing to spare");
        assertThat(holds.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(pokes.margin()).isEqualTo("over by 1/32 in");
        assertThat(pokes.advice()).startsWith("A 1 1/2 in screw stays inside.");
    }

    /** The seed-swap cabinet (NDS commentary, from memory): t/2 = 0.359 against 2.5 D, 0.345 for No. 6 and 0.410 for No. 8. */
    @Test
    void edgeDistance_inASheetsEdgeNumberSix_holdsAndNumberEightDoesNot() {
        Check six = JointChecks.edgeDistance("Floor", 6, SHEET.half(), INCHES);
        Check eight = JointChecks.edgeDistance("Floor", 8, SHEET.half(), INCHES);

        assertThat(six.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(six.level().getAsDouble()).isCloseTo(0.359375 / 0.345 - 1, within(1e-9));
        assertThat(eight.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(eight.result())
                .isEqualTo("A No. 8 screw is 23/64 in from the edge. Wanted: 13/32 in. Short by 3/64 in.");
        assertThat(eight.advice()).startsWith("A No. 6 would hold.");
    }

    /** NDS commentary, from memory: No. 8, 15 D = 2.46 in not drilled, 10 D = 1.64 in drilled. */
    @Test
    void endDistance_pilotHole_makesTheDifference() {
        Length twoInches = Length.ofInches(2);

        assertThat(JointChecks.endDistance("", 8, twoInches, true, INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        Check plain = JointChecks.endDistance("", 8, twoInches, false, INCHES);
        assertThat(plain.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(plain.advice()).isEqualTo("With a pilot hole it holds.");
        assertThat(JointChecks.endDistance("", 8, Length.ofInches(1.5), true, INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void edgeDistance_atTheLine_holds() {
        assertThat(JointChecks.edgeDistance("", 8, Length.ofInches(0.41), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(JointChecks.edgeDistance("", 8, Length.ofInches(0.409), INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void seamSpacing_sixInches_isTheMost() {
        assertThat(JointChecks.seamSpacing("", Length.ofInches(6), INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(JointChecks.seamSpacing("", Length.ofInches(6.25), INCHES).margin())
                .isEqualTo("over by 1/4 in");
        assertThat(JointChecks.seamSpacing("", Length.ofMillimetres(151), MeasureStyle.MILLIMETRES)
                        .advice())
                .isEqualTo("Every 150 mm at most keeps it tight.");
    }

    @Test
    void countersink_thirdOfThePart_isTheMost() {
        Length sixteenth = Length.ofSixtyFourths(4);

        assertThat(JointChecks.countersink("", sixteenth, Length.ofSixtyFourths(12), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(JointChecks.countersink("", sixteenth, Length.ofSixtyFourths(11), INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    /** IRC R317.3, from memory. */
    @Test
    void metalInWood_treatedWood_asksForZincOrStainless() {
        assertThat(metal(Metal.STAINLESS, true).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(metal(Metal.HOT_DIP_GALVANISED, true).result()).isEqualTo("Hot-dip galvanised in treated wood.");
        assertThat(metal(Metal.PLATED, true).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(metal(Metal.NOT_SAID, true).verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(metal(Metal.PLATED, false).verdict()).isEqualTo(Verdict.HOLDS);
    }

    private static Check metal(Metal metal, boolean treated) {
        return JointChecks.metalInWood("Arm to Post", metal, treated, false, INCHES);
    }

    private static Check reach(WoodScrew screw, Optional<Length> into) {
        return JointChecks.screwReach("Back to Floor", "side", screw, SHEET, WoodScrew.COUNTERSINK, into, INCHES);
    }

    /** Two No. 6 that cross: 0.138 and 1/4 in wanted, 0.388. */
    @Test
    void fastenersMeet_atBothSidesOfTheLine() {
        assertThat(meet(0.389).verdict()).isEqualTo(Verdict.HOLDS);
        Check near = meet(0.387);
        assertThat(near.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(near.name()).isEqualTo("Screws meet: Back to Floor, Side to Floor");
        assertThat(near.result()).contains("25/64 in apart, middle to middle. 2 rows moved");
        assertThat(near.advice()).isNotEmpty();
        // In millimetres the trade says 6 mm: 9.505 mm wanted.
        assertThat(JointChecks.fastenersMeet("", crossing(0), crossing(9.6 / 25.4), 0, MeasureStyle.MILLIMETRES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    private static Check meet(double inches) {
        return JointChecks.fastenersMeet("Back to Floor, Side to Floor", crossing(0), crossing(inches), 2, INCHES);
    }

    /** Along x at the floor, along y above it. */
    private static DrivenFastener crossing(double inches) {
        Vector way = inches == 0 ? Vector.X : Vector.Y;
        Vector middle = new Vector(0, 0, inches * 25.4);
        return new DrivenFastener(
                DrivenFastener.Kind.SCREW,
                middle.minus(way.times(20)),
                middle.plus(way.times(20)),
                Optional.of(SIX.diameter()));
    }
}
