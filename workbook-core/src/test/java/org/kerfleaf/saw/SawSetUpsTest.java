package org.kerfleaf.saw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.saw.SawSetting.Straightedge;

class SawSetUpsTest {
    private static final Length SHEET = Length.ofSixtyFourths(46);
    private static final Length TRIM = Length.ofSixtyFourths(48);
    private static final Straightedges SAW = new Straightedges(
            Optional.of(Length.ofSixtyFourths(8)), Optional.of(Length.ofInches(1.5)), Optional.of(Length.ofInches(5)));

    /** Base 1 1/2 left and 5 right, kerf 1/8: two numbers on each side of the saw. */
    @Test
    void lines_bothSidesMeasured_addKerfOnTheWasteSide() {
        assertThat(SAW.lines())
                .extracting(Straightedge::where, line -> line.distance().value())
                .containsExactly(
                        tuple("left of the saw, on the keep side", Length.ofInches(1.5)),
                        tuple("left of the saw, on the waste side", Length.ofInches(1.625)),
                        tuple("right of the saw, on the keep side", Length.ofInches(5)),
                        tuple("right of the saw, on the waste side", Length.ofInches(5.125)));
    }

    @Test
    void lines_nothingMeasured_areNone() {
        assertThat(new Straightedges(Optional.of(Length.ofSixtyFourths(8)), Optional.empty(), Optional.empty()).lines())
                .isEmpty();
    }

    @Test
    void lines_kerfNotMeasured_areOnTheKeepSideOnly() {
        assertThat(new Straightedges(Optional.empty(), Optional.of(Length.ofInches(1.5)), Optional.empty()).lines())
                .extracting(Straightedge::where)
                .containsExactly("left of the saw, on the keep side");
    }

    @Test
    void settings_sameSetting_isMadeOnce() {
        List<SawSetting> settings = new SawSetUps(SAW)
                .add(rip("C", "top edge, long point inside", 30))
                .add(rip("A", "to size", 0))
                .add(mitre("G", "upper end", 30))
                .add(rip("F", "ridge edge", 30))
                .add(rip("B", "to size", 0))
                .add(mitre("G", "upper end", 30))
                .settings();

        assertThat(settings).extracting(SawSetting::saw).containsExactly("circular saw", "circular saw", "mitre saw");
        assertThat(settings)
                .extracting(SawSetting::parts)
                .containsExactly(List.of("A", "B"), List.of("C", "F"), List.of("G"));
        assertThat(settings)
                .extracting(SawSetting::cut)
                .containsExactly("to size", "top edge, long point inside; ridge edge", "upper end");
    }

    @Test
    void settings_orderOfAdding_doesNotOrderTheSettings() {
        SawCut square = rip("A", "to size", 0);
        SawCut bevel = rip("C", "top edge", 30);

        assertThat(new SawSetUps(SAW).add(bevel).add(square).settings())
                .isEqualTo(new SawSetUps(SAW).add(square).add(bevel).settings());
    }

    @Test
    void settings_otherThickness_isAnotherBladeDepth() {
        SawCut thin =
                new SawCut("P", SawKind.CIRCULAR_SAW, "to size", Length.ofSixtyFourths(8), tilt(0), Optional.empty());

        assertThat(new SawSetUps(SAW).add(rip("A", "to size", 0)).add(thin).settings())
                .extracting(setting -> setting.bladeDepth().orElseThrow().value())
                .containsExactly(Length.ofSixtyFourths(24), Length.ofSixtyFourths(62));
    }

    @Test
    void settings_uprightCircularSaw_hasStraightedges() {
        SawSetting upright = only(rip("A", "to size", 0));

        assertThat(upright.straightedge()).hasSize(4);
        assertThat(upright.notes()).isEqualTo("Good face down.");
    }

    @Test
    void settings_tiltedCircularSaw_mustBeMeasuredAgain() {
        SawSetting tilted = only(rip("C", "top edge", 30));

        assertThat(tilted.straightedge()).isEmpty();
        assertThat(tilted.notes()).contains("Measure base edge to blade again at this tilt");
    }

    @Test
    void settings_deeperThanTheBlade_isNoted() {
        SawCut post =
                new SawCut("P", SawKind.CIRCULAR_SAW, "to length", Length.ofInches(3.5), tilt(0), Optional.empty());
        SawCut joist = new SawCut("J", SawKind.CIRCULAR_SAW, "end", Length.ofInches(1.5), tilt(45), Optional.empty());

        assertThat(only(post).notes()).contains("cut from both faces");
        assertThat(only(joist).notes()).doesNotContain("cut from both faces");
    }

    @Test
    void settings_mitreSaw_hasScaleAndNoDepth() {
        SawSetting setting = only(mitre("G", "upper end", 30));

        assertThat(setting.scale().orElseThrow().value()).isEqualTo(Angle.ofDegrees(30));
        assertThat(setting.bladeDepth()).isEmpty();
        assertThat(setting.notes()).contains("reads from square");
    }

    private static SawSetting only(SawCut cut) {
        return new SawSetUps(SAW).add(cut).settings().get(0);
    }

    private static SawCut rip(String letter, String words, double degrees) {
        return new SawCut(letter, SawKind.CIRCULAR_SAW, words, SHEET, tilt(degrees), Optional.empty());
    }

    private static SawCut mitre(String letter, String words, double degrees) {
        return new SawCut(letter, SawKind.MITRE_SAW, words, TRIM, tilt(0), Optional.of(tilt(degrees)));
    }

    private static Figure<Angle> tilt(double degrees) {
        return Figure.said(Angle.ofDegrees(degrees), "this test");
    }
}
