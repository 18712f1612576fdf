package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.TemperatureChange;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.stock.Expansion;
import org.kerfleaf.stock.GlazingKind;
import org.kerfleaf.stock.PaneSize;

/** Pane arithmetic from sheet makers' guides (seen in copies); other lines are common practice. */
class GlazingAndDoorChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;
    private static final Expansion ACRYLIC = Expansion.ofPerFahrenheit(4.0e-5);
    private static final TemperatureChange SIXTY = new TemperatureChange(60 / 1.8);
    private static final Ratio DAMP = Ratio.of(0.003);
    private static final Length HALF = Length.ofSixtyFourths(32);
    private static final Length SHEET = Length.ofSixtyFourths(46);

    /** The cold frame's pane, 43 7/8 in a pocket of 44: free dry, tight when damp. */
    @Test
    void paneHot_coldFrame_isTightWhenDamp() {
        assertThat(hot(43.875, PaneSize.DRY).verdict()).isEqualTo(Verdict.HOLDS);
        Check damp = hot(43.875, DAMP);
        assertThat(damp.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(damp.result())
                .startsWith("Cut to 43 7/8 in, 60 °F warmer and damp it is 44 7/64 in in a pocket of 44 in.");
        assertThat(damp.advice()).isEqualTo("Cut to 43 3/4 in it would be free.");
        assertThat(hot(43.75, DAMP).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** The cold frame: bite 0.385 and 0.427 dry, 0.322 when cut for damp, so a rabbet of 9/16. */
    @Test
    void paneCold_coldFrame_wantsAWiderRabbetWhenCutForDamp() {
        Check dry = cold(43.875);
        assertThat(dry.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(dry.level().getAsDouble()).isCloseTo(0.38485 / 0.375 - 1, within(1e-4));

        Check damp = cold(43.75);
        assertThat(damp.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(damp.result()).contains("held by 21/64 in on each side. Wanted: 3/8 in. Short by 3/64 in.");
        assertThat(damp.advice()).startsWith("A rabbet 9/16 in wide");
    }

    @Test
    void glassKind_plainWithinReach_falls() {
        assertThat(glass(GlazingKind.GLASS, true, false).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(glass(GlazingKind.GLASS, false, false).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(glass(GlazingKind.TEMPERED_GLASS, true, true).result()).contains("never cut");
        assertThat(glass(GlazingKind.TEMPERED_GLASS, true, false).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(glass(GlazingKind.ACRYLIC, true, true).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(GlazingChecks.glassKind("", Optional.empty(), true, true, INCHES)
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** The seed-swap cabinet: 3/16 squeezed to 1/8 is 33 %. */
    @Test
    void stripSqueeze_seedSwapCabinet_isAThird() {
        Check check = strip(12, 8);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .isEqualTo("A strip of 3/16 in squeezed to 1/8 in is squeezed by 33 %. Wanted: 25 to 50 %.");
        assertThat(check.margin()).isEqualTo("8 % to spare");
    }

    @Test
    void stripSqueeze_eitherSide_saysWhatGoesWrong() {
        assertThat(strip(16, 12).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(strip(16, 8).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(strip(16, 7).advice()).startsWith("It will not latch.");
        assertThat(strip(16, 13).advice()).startsWith("It will leak.");
        assertThat(strip(16, 13).result()).endsWith("Off by 6 %.");
    }

    /** Planned from 8 mm squeezed by 35 %: a stand-off of 5.2 mm. */
    @Test
    void stripSqueeze_metric_holds() {
        Check check = DoorChecks.stripSqueeze(
                "", Length.ofMillimetres(8), Length.ofMillimetres(5.2), MeasureStyle.MILLIMETRES);

        assertThat(check.result()).startsWith("A strip of 8 mm squeezed to 5.2 mm is squeezed by 35 %.");
        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void hingeScrews_sixteenthInside_isTheMost() {
        assertThat(DoorChecks.hingeScrews("", Length.ofSixtyFourths(42), SHEET, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check check = DoorChecks.hingeScrews("", Length.ofInches(0.75), SHEET, INCHES);
        assertThat(check.margin()).isEqualTo("over by 3/32 in");
        assertThat(check.advice()).isEqualTo("A 5/8 in screw would stay inside.");
    }

    @Test
    void hinges_above40Inches_areThree() {
        assertThat(DoorChecks.hinges("", 2, Length.ofInches(40), INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        Check check = DoorChecks.hinges("", 2, Length.ofInches(41), INCHES);
        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.advice()).isEqualTo("3 hinges would carry it.");
    }

    @Test
    void doorGap_filmAndSwelling_areTakenOff() {
        Length film = Length.ofSixtyFourths(2);

        assertThat(DoorChecks.doorGap("", Length.ofSixtyFourths(8), film, film, INCHES)
                        .margin())
                .isEqualTo("nothing to spare");
        assertThat(DoorChecks.doorGap("", Length.ofSixtyFourths(7), film, film, INCHES)
                        .advice())
                .startsWith("A gap of 1/8 in would leave enough");
    }

    /** Geometry: 3/4 thick, 16 wide, so 0.0176 in. */
    @Test
    void backEdge_door_needsAHair() {
        Length thick = Length.ofInches(0.75);
        Length wide = Length.ofInches(16);

        assertThat(DoorChecks.backEdge("", Length.ofInches(0.0176), thick, wide, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(DoorChecks.backEdge("", Length.ofInches(0.0175), thick, wide, INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    private static Check hot(double cut, Ratio damp) {
        return GlazingChecks.paneHot("Pane", Length.ofInches(cut), Length.ofInches(44), ACRYLIC, SIXTY, damp, INCHES);
    }

    private static Check cold(double cut) {
        return GlazingChecks.paneCold("Pane", Length.ofInches(cut), Length.ofInches(43), HALF, ACRYLIC, SIXTY, INCHES);
    }

    private static Check glass(GlazingKind kind, boolean withinReach, boolean cutHere) {
        return GlazingChecks.glassKind("Pane", Optional.of(kind), withinReach, cutHere, INCHES);
    }

    private static Check strip(long thick, long standOff) {
        return DoorChecks.stripSqueeze("", Length.ofSixtyFourths(thick), Length.ofSixtyFourths(standOff), INCHES);
    }

    /** Common practice: a pin finds 1/4 in of wood past the pane, or 1/8 in beside the bead in its rabbet. */
    @Test
    void beads_onTheFace_reachWoodPastThePane() {
        Length half = Length.ofInches(0.5);
        assertThat(GlazingChecks.beads("Pane", Optional.of(Length.ofInches(0.125)), Optional.empty(), half, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Optional<Length> none = Optional.of(Length.ZERO);
        assertThat(GlazingChecks.beads("Pane", none, Optional.of(Length.ofInches(0.25)), half, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check narrow = GlazingChecks.beads("Pane", none, Optional.of(Length.ofInches(-0.125)), half, INCHES);
        assertThat(narrow.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(narrow.advice())
                .isEqualTo("Beads 3/4 in wide reach the wood; or rout the rabbet 1/8 in deeper, and they lie in it.");
        assertThat(GlazingChecks.beads("Pane", none, Optional.empty(), half, INCHES)
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
        assertThat(GlazingChecks.beads("Pane", Optional.empty(), Optional.empty(), half, INCHES)
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }
}
