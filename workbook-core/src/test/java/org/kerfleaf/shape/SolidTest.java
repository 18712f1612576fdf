package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.shape.CabinetSolids.in;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/** Closed forms worked by hand; the cabinet's sizes. */
class SolidTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Solid BOARD = Solid.of(Outline.rectangle(in(10), in(4)), in(1));

    @Test
    void faces_board_sixNamedAfterItsEdges() {
        assertThat(BOARD.faces())
                .extracting(Face::name)
                .containsExactly("OUTSIDE", "INSIDE", "BOTTOM", "RIGHT", "TOP", "LEFT");
        assertThat(BOARD.face("INSIDE").normal()).isEqualTo(Vector.Z);
        assertThat(BOARD.face("OUTSIDE").normal().z()).isEqualTo(-1);
        assertThat(BOARD.face("RIGHT").normal().x()).isEqualTo(1);
        assertThat(BOARD.area("TOP").inSquareInches()).isEqualTo(10, EXACT);
    }

    @Test
    void volume_sideWithBevelledTop() {
        // 11 · (24 t + t²/2 · tan 30°); the blank is rounded to 1 nm
        assertThat(CabinetSolids.SIDE.volume().inCubicInches()).isEqualTo(191.390430281, within(1e-7));
        assertThat(CabinetSolids.SIDE.faces()).hasSize(6);
    }

    @Test
    void bevelled_side_isShorterOutside() {
        assertThat(CabinetSolids.SIDE.area("OUTSIDE").inSquareInches()).isEqualTo(11 * 24, within(1e-6));
        assertThat(CabinetSolids.SIDE.area("INSIDE").inSquareInches())
                .isEqualTo(11 * (24 + 0.71875 * StrictMath.tan(StrictMath.PI / 6)), within(1e-6));
        assertThat(CabinetSolids.SIDE.area("TOP").inSquareInches()).isEqualTo(9.12935, within(5e-6));
        assertThat(CabinetSolids.SIDE.cuts().get(0).tilt()).isEqualTo(Angle.ofDegrees(30));
    }

    @Test
    void volume_doorWithWindowAndRabbet() {
        // (18 · 20 − 13 · 15) · 23/32 − (14 · 16 − 13 · 15) · 3/16
        assertThat(CabinetSolids.DOOR.volume().inCubicInches()).isEqualTo(113.15625, EXACT);
        assertThat(CabinetSolids.DOOR.area("rabbet FLOOR").inSquareInches()).isEqualTo(29, EXACT);
        assertThat(CabinetSolids.DOOR.area("rabbet LEFT").inSquareInches()).isEqualTo(16 * 0.1875, EXACT);
        assertThat(CabinetSolids.DOOR.area("window LEFT").inSquareInches()).isEqualTo(15 * 0.53125, EXACT);
        assertThat(CabinetSolids.DOOR.faces()).hasSize(15);
    }

    @Test
    void volume_frontWithRoundedDoorway_countsTheArcs() {
        // 641.787 − 288 + (4 − π)/16, figures.md; the arcs by closed form, not by chords
        double gable = 23.4375 * 24 + 11.71875 * 11.71875 * StrictMath.tan(StrictMath.PI / 6);
        double net = gable - 288 + (4 - StrictMath.PI) / 16;
        assertThat(CabinetSolids.FRONT.volume().inCubicInches()).isEqualTo(net * 0.71875, within(1e-6));
        assertThat(CabinetSolids.FRONT.area("INSIDE").inSquareInches()).isEqualTo(net, within(1e-6));
        assertThat(CabinetSolids.FRONT.area("doorway BOTTOM_RIGHT").inSquareInches())
                .isEqualTo(StrictMath.PI / 8 * 0.71875, within(1e-6));
    }

    @Test
    void volume_roundHoles_countInFull() {
        double net = 22 * 11 - 2 * StrictMath.PI * 0.1875 * 0.1875;
        assertThat(CabinetSolids.FLOOR.volume().inCubicInches()).isEqualTo(net * 0.71875, within(1e-9));
        assertThat(CabinetSolids.FLOOR.surface().inSquareInches())
                .isEqualTo(2 * net + 0.71875 * (66 + 2 * StrictMath.PI * 0.375), within(1e-6));
        assertThat(CabinetSolids.FLOOR.centroid().x()).isEqualTo(11 * 25.4, EXACT);
    }

    @Test
    void volume_roundedPocketAndHoleInIt_countTheirArcs() {
        // A recess 4 by 2 with corners of radius 1/2, 1/4 deep, and a 1 in hole through its floor.
        Solid recessed = BOARD.pocket(
                "recess",
                Outline.rectangle(in(4), in(2)).rounded(in(0.5)).moved(in(3), in(1)),
                in(0.25),
                SheetSide.INSIDE);
        Solid drilled = Solid.of(
                        recessed.outline().opening("hole", Outline.circle(in(1)).moved(in(5), in(2))), in(1))
                .pocket("recess", recessed.pockets().get(0).shape(), in(0.25), SheetSide.INSIDE);
        double recess = 8 - (4 - StrictMath.PI) / 4;
        double hole = StrictMath.PI / 4;
        assertThat(recessed.volume().inCubicInches()).isEqualTo(40 - recess / 4, within(1e-8));
        assertThat(drilled.volume().inCubicInches()).isEqualTo(40 - recess / 4 - hole * 0.75, within(1e-8));
        assertThat(drilled.area("recess FLOOR").inSquareInches()).isEqualTo(recess - hole, within(1e-8));
        assertThat(drilled.area("INSIDE").inSquareInches()).isEqualTo(40 - recess, within(1e-8));
        assertThat(drilled.area("hole ROUND").inSquareInches()).isEqualTo(StrictMath.PI * 0.75, within(1e-6));
        assertThat(drilled.unclosed()).isLessThan(1e-6);
    }

    @Test
    void centroid_wedge() {
        // A right triangle of legs 3 along u and 3 along w: a third from the square corner.
        Solid wedge = Solid.of(Outline.rectangle(in(3), in(4)), in(3))
                .bevelled("RIGHT", Angle.ofDegrees(45), SheetSide.OUTSIDE);
        assertThat(wedge.volume().inCubicInches()).isEqualTo(18, within(1e-8));
        assertThat(wedge.centroid().x()).isEqualTo(25.4, within(1e-8));
        assertThat(wedge.centroid().y()).isEqualTo(2 * 25.4, within(1e-8));
        assertThat(wedge.centroid().z()).isEqualTo(25.4, within(1e-8));
    }

    @Test
    void unclosed_everyPartOfTheCabinet_nothing() {
        for (PlacedSolid piece : CabinetSolids.all()) {
            assertThat(piece.solid().unclosed()).as(piece.part()).isLessThan(1e-7);
        }
    }

    @Test
    void groove_rightAcross_dividesTheFaceButKeepsItsName() {
        Solid grooved = BOARD.groove("dado", "LEFT", in(3), in(1), in(0.25), SheetSide.INSIDE);
        assertThat(grooved.faces("INSIDE")).hasSize(2);
        assertThat(grooved.face("INSIDE").squareMillimetres()).isEqualTo(6 * 4 * 25.4 * 25.4, EXACT);
        assertThat(grooved.volume().inCubicInches()).isEqualTo(39, EXACT);
        assertThat(grooved.faces("TOP")).hasSize(1);
        assertThat(grooved.area("TOP").inSquareInches()).isEqualTo(9.75, EXACT);
        assertThat(grooved.area("dado NEAR").inSquareInches()).isEqualTo(1, EXACT);
        assertThat(grooved.face("dado NEAR").normal().x()).isEqualTo(1, EXACT);
    }

    @Test
    void rabbetAlong_onASlopingEdge_reachesItsEnds() {
        Solid rabbeted = Solid.of(Outline.trapezoid(in(10), in(4), in(6)), in(1))
                .rabbetAlong("rabbet", "TOP", in(0.5), in(0.5), SheetSide.INSIDE);
        double slope = StrictMath.hypot(10, 2);
        assertThat(rabbeted.area("rabbet FLOOR").inSquareInches()).isEqualTo(slope * 0.5, within(1e-6));
        assertThat(rabbeted.area("TOP").inSquareInches()).isEqualTo(slope * 0.5, within(1e-6));
        assertThat(rabbeted.unclosed()).isLessThan(1e-7);
    }

    @Test
    void pockets_overlapping_countOnce() {
        Solid both = BOARD.groove("one", "LEFT", in(3), in(2), in(0.25), SheetSide.INSIDE)
                .groove("two", "BOTTOM", in(1), in(1), in(0.5), SheetSide.INSIDE)
                .groove("three", "BOTTOM", in(1), in(2), in(0.5), SheetSide.OUTSIDE);
        // One: 2·4·¼ less where two is deeper; two: 10·1·½; three: 10·2·½; together two and three go right through.
        assertThat(both.volume().inCubicInches()).isEqualTo(40 - (2 * 3 * 0.25) - 5 - 10, within(1e-8));
        assertThat(both.unclosed()).isLessThan(1e-7);
    }

    @Test
    void mirrored_sameSizes_otherHand() {
        Solid left = Solid.of(Outline.trapezoid(in(10), in(4), in(6)), in(1))
                .bevelled("LEFT", Angle.ofDegrees(20), SheetSide.OUTSIDE)
                .groove("dado", "LEFT", in(3), in(1), in(0.25), SheetSide.INSIDE);
        Solid right = left.mirrored();
        assertThat(right.volume().cubicMillimetres()).isEqualTo(left.volume().cubicMillimetres(), within(1e-6));
        assertThat(right.centroid().x()).isEqualTo(254 - left.centroid().x(), within(1e-9));
        assertThat(right.face("LEFT").normal().x())
                .isEqualTo(-left.face("LEFT").normal().x(), EXACT);
        assertThat(right.area("dado NEAR")).isEqualTo(left.area("dado NEAR"));
        assertThat(right.mirrored().volume()).isEqualTo(left.volume());
    }

    @Test
    void hands_cabinetAndColdFrame() {
        assertThat(CabinetSolids.SIDE.hands()).as("the same front to back").isEqualTo(Hands.EQUAL);
        assertThat(CabinetSolids.RAKE.hands()).as("square edges").isEqualTo(Hands.TURNED_OVER);
        Solid sloping = Solid.of(Outline.trapezoid(in(28.5), in(12), in(20)), in(0.75));
        assertThat(sloping.hands()).isEqualTo(Hands.TURNED_OVER);
        assertThat(sloping.rabbetAlong("rabbet", "BOTTOM", in(0.5), in(0.25), SheetSide.INSIDE)
                        .hands())
                .isEqualTo(Hands.LEFT_AND_RIGHT);
        assertThat(CabinetSolids.FRONT.hands()).isEqualTo(Hands.EQUAL);
    }

    @Test
    void holds_onlyWhereWoodIs() {
        Solid door = CabinetSolids.DOOR;
        assertThat(door.holds(CabinetSolids.at(1, 1, 0.3))).isTrue();
        assertThat(door.holds(CabinetSolids.at(9, 10, 0.3))).as("in the window").isFalse();
        assertThat(door.holds(CabinetSolids.at(2.25, 10, 0.3)))
                .as("under the rabbet")
                .isTrue();
        assertThat(door.holds(CabinetSolids.at(2.25, 10, 0.6)))
                .as("in the rabbet")
                .isFalse();
        assertThat(CabinetSolids.SIDE.holds(CabinetSolids.at(5, 24.3, 0.1)))
                .as("off the bevel")
                .isFalse();
        assertThat(CabinetSolids.SIDE.holds(CabinetSolids.at(5, 24.3, 0.7)))
                .as("behind the bevel")
                .isTrue();
    }

    @Test
    void edges_roundHole_chordsInOneGroupAndSmoothBetween() {
        List<Face> facets = CabinetSolids.FLOOR.faces("left weep ROUND");
        assertThat(facets).hasSizeGreaterThan(7).allMatch(Face::isFacet);
        for (Face facet : facets) {
            assertThat(facet.edges()).filteredOn(FaceEdge::smooth).hasSize(2);
            assertThat(facet.edges())
                    .filteredOn(e -> e.group() == facet.group())
                    .hasSize(2);
        }
        assertThat(CabinetSolids.FLOOR.face("INSIDE").edges())
                .filteredOn(e -> e.group() == 0)
                .hasSize(4);
        assertThat(CabinetSolids.FLOOR.faces("BOTTOM").get(0).edges()).noneMatch(FaceEdge::smooth);
    }

    @Test
    void mitredEnd_swungAndTilted_readsBackFromTheCut() {
        Solid end = BOARD.mitredEnd("RIGHT", "TOP", Angle.ofDegrees(31.62), Angle.ofDegrees(33.86), SheetSide.INSIDE);
        Cut cut = end.cuts().get(0);
        assertThat(cut.tilt().inDegrees()).isEqualTo(33.86, within(1e-6));
        assertThat(Math.abs(cut.inSheet().inDegrees())).isEqualTo(31.62, within(1e-6));
        assertThat(end.outline().edge("TOP").length()).isEqualTo(in(10));
        assertThat(end.outline().edge("BOTTOM").length()).isLessThan(in(10));
    }

    @Test
    void face_round_saysSo() {
        assertThatThrownBy(() -> CabinetSolids.FLOOR.face("left weep ROUND")).hasMessageContaining("no one plane");
        assertThatThrownBy(() -> BOARD.face("FRONT")).hasMessageContaining("BOTTOM, RIGHT, TOP, LEFT");
        assertThatThrownBy(() -> BOARD.pocket("deep", Outline.rectangle(in(1), in(1)), in(1), SheetSide.INSIDE))
                .hasMessageContaining("cut an opening instead");
        assertThatThrownBy(() -> Solid.of(Outline.rectangle(in(1), in(1)), Length.ZERO))
                .hasMessageContaining("thicker than nothing");
    }
}
