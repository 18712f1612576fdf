package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;

/** Lines are common practice unless a test names its source; arithmetic is geometry. */
class SawAndPartChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;
    private static final Length SHEET = Length.ofSixtyFourths(46);
    private static final Angle THIRTY = Angle.ofDegrees(30);

    @Test
    void bladeDepth_sheetAtThirty_isEasy() {
        Check check = SawChecks.bladeDepth("Side, top edge", SHEET, THIRTY, Optional.empty(), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .isEqualTo(
                        "Through 23/32 in at 30°, and 1/8 in past it, a 7 1/4 in blade stands out 61/64 in. Allowed: 2 3/8"
                                + " in.");
    }

    @Test
    void bladeDepth_line_isTheSawsOwn() {
        Optional<Length> saw = Optional.of(Length.ofInches(1.625));

        assertThat(SawChecks.bladeDepth("", Length.ofInches(1.5), Angle.ZERO, saw, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(SawChecks.bladeDepth("", Length.ofInches(1.5), Angle.ofDegrees(1), saw, INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(SawChecks.bladeDepth("", Length.ofInches(3.5), Angle.ZERO, Optional.empty(), INCHES)
                        .advice())
                .isEqualTo("Cut from both faces, or on a larger saw.");
    }

    @Test
    void sawStop_pastIt_isTheComplementWithABlock() {
        Angle fifty = Angle.ofDegrees(50);
        Optional<Angle> stop = Optional.of(fifty);
        Check check = SawChecks.sawStop("Brace", Angle.ofDegrees(60), stop, INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result()).isEqualTo("The scale is set to 60°; the saw stops at 50°. Past the stop by 10°.");
        assertThat(check.advice()).isEqualTo("Turn the stock against a squared block and set 30°.");
        assertThat(SawChecks.sawStop("", fifty, stop, INCHES).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(SawChecks.sawStop("", THIRTY, stop, INCHES).margin()).isEqualTo("20° to spare");
    }

    @Test
    void sawStop_notSaid_isKnownToFortyFive() {
        assertThat(SawChecks.sawStop("", Angle.ofDegrees(45), Optional.empty(), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check beyond = SawChecks.sawStop("", Angle.ofDegrees(46), Optional.empty(), INCHES);
        assertThat(beyond.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(beyond.advice()).contains("squared block and set 44°");
    }

    @Test
    void startHole_eighthMoreThanTheBlade_isTheLeast() {
        Optional<Length> blade = Optional.of(Length.ofSixtyFourths(24));

        assertThat(SawChecks.startHole("", Optional.of(Length.ofInches(0.5)), blade, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check falls = SawChecks.startHole("", Optional.of(Length.ofSixtyFourths(31)), blade, INCHES);
        assertThat(falls.margin()).isEqualTo("short by 1/64 in");
        assertThat(falls.advice()).startsWith("Start from a bit of 1/2 in");
        assertThat(SawChecks.startHole("", Optional.of(Length.ofInches(2)), Optional.empty(), INCHES)
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    @Test
    void shortPiece_sixInches_isTheLeast() {
        assertThat(SawChecks.shortPiece("", Length.ofInches(6), INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(SawChecks.shortPiece("", Length.ofInches(5.5), INCHES).verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(SawChecks.shortPiece("", Length.ofMillimetres(149), MeasureStyle.MILLIMETRES)
                        .result())
                .endsWith("Wanted: 150 mm. Short by 1 mm.");
    }

    /** The seed-swap cabinet's door: 23/32 less 3/16 leaves 17/32. */
    @Test
    void rabbetLip_seedSwapCabinet_leavesEnough() {
        Check check = PartChecks.rabbetLip("Door", SHEET, Length.ofSixtyFourths(12), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .isEqualTo("A rabbet 3/16 in deep in 23/32 in leaves a lip of 17/32 in. Wanted: 1/4 in.");
        assertThat(check.margin()).isEqualTo("9/32 in to spare");
    }

    @Test
    void rabbetLip_thickSheet_asksForAThird() {
        Length inchAndAHalf = Length.ofInches(1.5);

        assertThat(PartChecks.rabbetLip("", inchAndAHalf, Length.ofInches(1), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check check = PartChecks.rabbetLip("", inchAndAHalf, Length.ofInches(1.0625), INCHES);
        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.advice()).startsWith("A rabbet 1 in deep would leave enough");
    }

    /** The seed-swap cabinet: 2 1/2 in round the window, 3 in under the doorway. */
    @Test
    void frameLeft_twoInches_isTheLeast() {
        assertThat(PartChecks.frameLeft("window", Length.ofInches(2.5), INCHES).margin())
                .isEqualTo("1/2 in to spare");
        assertThat(PartChecks.frameLeft("", Length.ofInches(2), INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(PartChecks.frameLeft("", Length.ofInches(1.984375), INCHES).margin())
                .isEqualTo("short by 1/64 in");
    }

    /** The seed-swap cabinet: square edges would leave 2 t sin 30° = 23/32 in open, so a leg of 23/64 + 1 1/2. */
    @Test
    void ridge_squareEdges_askForAWiderCap() {
        Check falls = PartChecks.ridge("", SHEET, THIRTY, false, Optional.of(Length.ofInches(1.5)), INCHES);

        assertThat(falls.result()).startsWith("Square edges leave 23/32 in open at the top.");
        assertThat(falls.margin()).isEqualTo("short by 23/64 in");
        assertThat(PartChecks.ridge("", SHEET, THIRTY, true, Optional.of(Length.ofInches(1.5)), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void ridge_capNotSaid_isNotKnown() {
        Check check = PartChecks.ridge("", SHEET, THIRTY, true, Optional.empty(), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check.advice()).contains("1 1/2 in or more");
    }

    /** The seed-swap cabinet: overhang 2, door's face 0.84375 in front: 1.15625 past it. */
    @Test
    void eaveCover_seedSwapCabinet_isJustMoreThanAnInch() {
        Check check = PartChecks.eaveCover(
                "", Length.ofInches(2), "the door's face stands out", Length.ofSixtyFourths(54), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .isEqualTo(
                        "The roof reaches out 2 in, the door's face stands out 27/32 in: 1 5/32 in past it. Wanted: 1 in.");
        assertThat(check.level().getAsDouble()).isCloseTo(0.15625, within(1e-9));
        Check falls = PartChecks.eaveCover(
                "", Length.ofInches(1.75), "the door's face stands out", Length.ofSixtyFourths(54), INCHES);
        assertThat(falls.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(falls.advice()).isEqualTo("An overhang of 1 27/32 in would cover it.");
    }
}
