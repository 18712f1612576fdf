package org.kerfleaf.saw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;
import static org.kerfleaf.testing.Property.forAll;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.saw.SawSetting.Guide;
import org.kerfleaf.saw.SawSetting.NumberedCut;
import org.kerfleaf.saw.SawSetting.Straightedge;
import org.kerfleaf.saw.Straightedges.Base;
import org.kerfleaf.testing.Draw;

class SawSetUpsTest {
    private static final Length SHEET = Length.ofSixtyFourths(46);
    private static final Length WIDE = Length.ofSixtyFourths(96);
    private static final Length TRIM = Length.ofSixtyFourths(48);
    private static final Optional<Length> KERF = Optional.of(Length.ofSixtyFourths(8));
    private static final Base LEFT = new Base("left", Angle.ZERO, Length.ofInches(1.5));
    private static final Base RIGHT = new Base("right", Angle.ZERO, Length.ofInches(5));
    private static final Straightedges SAW = new Straightedges(KERF, List.of(LEFT, RIGHT));
    private static final SawLimits USUAL = new SawLimits(Optional.empty(), Optional.empty());

    /** Base 1 1/2 left and 5 right, kerf 1/8: two numbers on each side of the saw. */
    @Test
    void lines_bothSidesMeasured_addKerfOnTheWasteSide() {
        assertThat(SAW.lines(Angle.ZERO))
                .extracting(Straightedge::where, line -> line.distance().value())
                .containsExactly(
                        tuple("left of the saw, on the keep side", Length.ofInches(1.5)),
                        tuple("left of the saw, on the waste side", Length.ofInches(1.625)),
                        tuple("right of the saw, on the keep side", Length.ofInches(5)),
                        tuple("right of the saw, on the waste side", Length.ofInches(5.125)));
    }

    @Test
    void lines_nothingMeasured_areNone() {
        assertThat(new Straightedges(KERF, List.of()).lines(Angle.ZERO)).isEmpty();
    }

    @Test
    void lines_kerfNotMeasured_areOnTheKeepSideOnly() {
        assertThat(new Straightedges(Optional.empty(), List.of(LEFT)).lines(Angle.ZERO))
                .extracting(Straightedge::where)
                .containsExactly("left of the saw, on the keep side");
    }

    @Test
    void settings_sameSetting_isMadeOnce() {
        List<SawSetting> settings = new SawSetUps(SAW, USUAL)
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

        assertThat(new SawSetUps(SAW, USUAL).add(bevel).add(square).settings())
                .isEqualTo(new SawSetUps(SAW, USUAL).add(square).add(bevel).settings());
    }

    @Test
    void settings_otherThickness_isAnotherBladeDepth() {
        SawCut thin = SawCut.of("P", SawKind.CIRCULAR_SAW, "to size", Length.ofSixtyFourths(8), tilt(0));

        assertThat(new SawSetUps(SAW, USUAL)
                        .add(rip("A", "to size", 0))
                        .add(thin)
                        .settings())
                .extracting(setting -> setting.bladeDepth().orElseThrow().value())
                .containsExactly(Length.ofSixtyFourths(24), Length.ofSixtyFourths(62));
    }

    @Test
    void settings_uprightCircularSaw_hasStraightedges() {
        SawSetting upright = only(rip("A", "to size", 0));

        assertThat(upright.straightedge()).hasSize(4);
        assertThat(upright.faceUp()).isEqualTo("good face down");
        assertThat(upright.notes()).isEmpty();
    }

    @Test
    void settings_tiltedCircularSaw_mustBeMeasuredAgain() {
        SawSetting tilted = only(rip("C", "top edge", 30));

        assertThat(tilted.straightedge()).isEmpty();
        assertThat(tilted.notes())
                .contains("at this tilt is not known", "measure from the straightedge to the near side of the cut");
    }

    /** Measured at 30 degrees, 1 3/4 in; on the waste side the kerf is 1/8 / cos 30° = 0.14434 wide at the base. */
    @Test
    void settings_measuredAtThatTilt_hasStraightedgesOfItsOwn() {
        Base tilted = new Base("left", Angle.ofDegrees(30), Length.ofInches(1.75));
        SawSetUps setUps = new SawSetUps(new Straightedges(KERF, List.of(LEFT, tilted)), USUAL);

        List<Straightedge> lines =
                setUps.add(rip("C", "top edge", 30)).settings().get(0).straightedge();

        assertThat(lines.get(0).distance().value()).isEqualTo(Length.ofInches(1.75));
        assertThat(lines.get(1).distance().value().inInches()).isCloseTo(1.89434, within(1e-5));
    }

    @Test
    void settings_measuredAtAnotherTilt_areNotKnownAtThisOne() {
        Base tilted = new Base("left", Angle.ofDegrees(45), Length.ofInches(1.75));
        SawSetUps setUps = new SawSetUps(new Straightedges(KERF, List.of(LEFT, tilted)), USUAL);

        assertThat(setUps.add(rip("C", "top edge", 30)).settings().get(0).straightedge())
                .isEmpty();
    }

    /** A line 11 in in: 11 - 1 1/2, 11 + 1/8 + 1 1/2 to the left, 11 - 5, 11 + 1/8 + 5 to the right. */
    @Test
    void guides_oneSize_isSetOnceForAllSheets() {
        SawSetUps setUps = new SawSetUps(SAW, USUAL).add(rip("A", "to size", 0));
        setUps.guides().add(SHEET, Length.ofInches(11), new NumberedCut(1, 7));
        setUps.guides().add(SHEET, Length.ofInches(4), new NumberedCut(1, 8));
        setUps.guides().add(SHEET, Length.ofInches(11), new NumberedCut(2, 3));

        List<Guide> guides = setUps.settings().get(0).guides();

        assertThat(guides).extracting(Guide::cutWords).containsExactly("sheet 1: 7; sheet 2: 3", "sheet 1: 8");
        assertThat(guides.get(0).straightedge())
                .extracting(edge -> edge.distance().value().inInches())
                .containsExactly(9.5, 12.625, 6.0, 16.125);
        assertThat(guides.get(1).straightedge())
                .extracting(Straightedge::brief)
                .containsExactly("left, keep", "left, waste", "right, waste");
    }

    /** Second derivation: the saw is pushed along the straightedge, and the kept piece's edge is looked at. */
    @Test
    void guides_random_leaveThePieceAsLongAsSaid() {
        forAll(
                31,
                200,
                random -> List.of(
                        Draw.length(random, Length.ofInches(1L), Length.ofInches(6L)),
                        Draw.length(random, Length.ofMillimetres(1L), Length.ofMillimetres(5L)),
                        Draw.length(random, Length.ofInches(7L), Length.ofInches(48L))),
                drawn -> {
                    Length base = drawn.get(0);
                    Length kerf = drawn.get(1);
                    Straightedges saw =
                            new Straightedges(Optional.of(kerf), List.of(new Base("left", Angle.ZERO, base)));
                    List<Straightedge> lines = saw.fromEdge(drawn.get(2));
                    // On the keep side the blade begins beyond the base; on the waste side it ends before it.
                    Length keep = lines.get(0).distance().value().plus(base);
                    Length waste = lines.get(1).distance().value().minus(base).minus(kerf);
                    assertThat(keep).isEqualTo(drawn.get(2));
                    assertThat(waste).isEqualTo(drawn.get(2));
                });
    }

    /** Second derivation: no half degree is nearer, and the gap is the sine rule's third side within a ten-thousandth. */
    @Test
    void halfDegrees_random_areTheNearest() {
        forAll(32, 200, random -> random.nextDouble(0, 70), degrees -> {
            double nearest =
                    HalfDegrees.nearest(Angle.ofDegrees(degrees)).value().inDegrees();
            assertThat(nearest * 2 % 1).isZero();
            assertThat(Math.abs(nearest - degrees)).isLessThanOrEqualTo(0.25 + 1e-9);
            double error = Math.toRadians(Math.abs(nearest - degrees));
            double cut = 100 / Math.cos(Math.toRadians(degrees));
            double open = cut * Math.sin(error) / Math.cos(error);
            assertThat(HalfDegrees.gap(Angle.ofDegrees(degrees), Length.ofMillimetres(100L), false)
                            .value()
                            .inMillimetres())
                    .isCloseTo(open, within(1e-4));
        });
    }

    @Test
    void settings_beyondTheStop_giveTheComplementAndTheBlock() {
        SawSetting setting = only(mitre("G", "under what it carries", 55));

        assertThat(setting.set())
                .extracting(Reading::what, r -> r.in(MeasureStyle.INCHES))
                .containsExactly(tuple("scale, with the stock turned against a squared block", "35°"));
        assertThat(setting.notes()).contains("clamp a block with a square corner to the fence");
        assertThat(only(mitre("G", "end", 45)).set()).isEmpty();
    }

    /** 14.931° set as 15° is 0.069° off: over 1 1/2 in that is 1.5 / cos 14.931° · tan 0.069° = 0.00187 in, twice at a corner. */
    @Test
    void settings_betweenHalfDegrees_sayTheGap() {
        SawCut cut = mitre("G", "end", 14.931);

        Length once = (Length) only(cut).set().get(1).value().value();
        Length twice = (Length) only(cut.meetingItsLike()).set().get(1).value().value();

        assertThat(only(cut).set().get(0).value().value()).isEqualTo(Angle.ofDegrees(15));
        assertThat(once.inInches()).isCloseTo(0.00187, within(1e-5));
        assertThat(twice.inInches()).isCloseTo(0.00374, within(1e-5));
        assertThat(only(cut).set().get(1).in(MeasureStyle.INCHES)).isEqualTo("under 1/64 in");
    }

    @Test
    void settings_deeperThanTheBlade_isNoted() {
        SawCut post = SawCut.of("P", SawKind.CIRCULAR_SAW, "to length", Length.ofInches(3.5), tilt(0));
        SawCut joist = SawCut.of("J", SawKind.CIRCULAR_SAW, "end", Length.ofInches(1.5), tilt(45));

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
        return new SawSetUps(SAW, USUAL).add(cut).settings().get(0);
    }

    private static SawCut rip(String letter, String words, double degrees) {
        return SawCut.of(letter, SawKind.CIRCULAR_SAW, words, SHEET, tilt(degrees));
    }

    private static SawCut mitre(String letter, String words, double degrees) {
        return SawCut.of(letter, SawKind.MITRE_SAW, words, TRIM, tilt(0)).scaled(tilt(degrees), WIDE);
    }

    private static Figure<Angle> tilt(double degrees) {
        return Figure.said(Angle.ofDegrees(degrees), "this test");
    }
}
