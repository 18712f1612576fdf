package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.shape.CabinetSolids.in;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;

/** Closed forms of plane geometry. */
class OutlineTest {
    private static final Outline SQUARE = Outline.rectangle(in(4), in(4));

    @Test
    void gable_peakAndSlopes() {
        // The cabinet's back, from its page of figures.
        Outline gable = Outline.gable(in(23.4375), in(24), Angle.ofDegrees(30));
        assertThat(gable.high().inInches()).isEqualTo(30.76582, within(5e-6));
        assertThat(gable.edge("LEFT_SLOPE").length().inInches()).isEqualTo(13.53165, within(5e-6));
        assertThat(gable.area().inSquareInches()).isEqualTo(641.787, within(5e-4));
        assertThat(gable.centroid().x()).isEqualTo(23.4375 / 2 * 25.4, within(1e-9));
    }

    @Test
    void circle_closedForms() {
        Outline circle = Outline.circle(in(2));
        assertThat(circle.area().inSquareInches()).isEqualTo(StrictMath.PI, within(1e-12));
        assertThat(circle.around().inInches()).isEqualTo(2 * StrictMath.PI, within(1e-6));
        assertThat(circle.wide()).isEqualTo(in(2));
        assertThat(circle.centroid().length()).isEqualTo(0, within(1e-9));
    }

    @Test
    void rounded_cornersTakeFourMinusPi() {
        Outline rounded = SQUARE.rounded(in(1));
        assertThat(rounded.area().inSquareInches()).isEqualTo(16 - (4 - StrictMath.PI), within(1e-9));
        assertThat(rounded.around().inInches()).isEqualTo(8 + 2 * StrictMath.PI, within(1e-6));
        assertThat(rounded.edges())
                .extracting(OutlineEdge::name)
                .containsExactly(
                        "BOTTOM", "BOTTOM_RIGHT", "RIGHT", "RIGHT_TOP", "TOP", "TOP_LEFT", "LEFT", "LEFT_BOTTOM");
        assertThat(SQUARE.rounded(in(2)).area().inSquareInches())
                .as("a disc")
                .isEqualTo(4 * StrictMath.PI, within(1e-9));
        assertThat(SQUARE.roundedAfter("RIGHT", in(1)).area().inSquareInches())
                .isEqualTo(16 - (4 - StrictMath.PI) / 4, within(1e-9));
        assertThatThrownBy(() -> SQUARE.rounded(in(2.1))).hasMessageContaining("has no room on edge");
    }

    @Test
    void centroid_halfDisc_fourThirdsOverPi() {
        Outline half =
                Outline.rectangle(in(4), in(2)).roundedAfter("RIGHT", in(2)).roundedAfter("TOP", in(2));
        assertThat(half.area().inSquareInches()).isEqualTo(2 * StrictMath.PI, within(1e-9));
        assertThat(half.centroid().y() / 25.4).isEqualTo(4 * 2 / (3 * StrictMath.PI), within(1e-7));
    }

    @Test
    void opening_takesAwayItsArea() {
        Outline holed = SQUARE.opening("hole", Outline.circle(in(2)).moved(in(2), in(2)));
        assertThat(holed.area().inSquareInches()).isEqualTo(16 - StrictMath.PI, within(1e-9));
        assertThat(holed.mirrored().area()).isEqualTo(holed.area());
        assertThatThrownBy(() -> SQUARE.opening("hole", Outline.circle(in(2))))
                .hasMessageContaining("does not lie inside");
        assertThatThrownBy(() -> holed.opening("door")).hasMessageContaining("hole");
    }

    @Test
    void mirrored_namesStayWithTheirEdges() {
        Outline slope = Outline.trapezoid(in(4), in(1), in(3)).mirrored();
        assertThat(slope.edge("LEFT").length()).isEqualTo(in(1));
        assertThat(slope.edge("LEFT").from().u()).isEqualTo(in(4));
        assertThat(slope.mirrored()).isEqualTo(Outline.trapezoid(in(4), in(1), in(3)));
    }

    @Test
    void mitred_rakeTrim_longAndShortPoint() {
        // The cabinet's rake trim: long point 15.94662, short point less 1.5 tan 30.
        Outline rake = Outline.rectangle(in(15.94662), in(1.5)).mitred("LEFT", "TOP", Angle.ofDegrees(30));
        assertThat(rake.edge("TOP").length().inInches()).isEqualTo(15.94662, within(1e-6));
        assertThat(rake.edge("BOTTOM").length().inInches()).isEqualTo(15.08059, within(6e-6));
        assertThat(rake.edge("LEFT").length().inInches())
                .isEqualTo(1.5 / StrictMath.cos(StrictMath.PI / 6), within(1e-6));
        assertThatThrownBy(() -> rake.mitred("LEFT", "RIGHT", Angle.ofDegrees(30)))
                .hasMessageContaining("long point");
    }

    @Test
    void sawn_throughAnOpening_isRefused() {
        Outline holed = SQUARE.opening("hole", Outline.circle(in(1)).moved(in(2), in(2)));
        assertThat(holed.sawn("END", 1, 0, 3 * 25.4).area().inSquareInches())
                .isEqualTo(12 - StrictMath.PI / 4, within(1e-9));
        assertThat(holed.sawn("END", 1, 0, 25.4).openings()).isEmpty();
        assertThatThrownBy(() -> holed.sawn("END", 1, 0, 2 * 25.4)).hasMessageContaining("(hole) is in the way");
        assertThatThrownBy(() -> holed.sawn("END", 1, 0, -1)).hasMessageContaining("leaves nothing");
    }

    @Test
    void polygon_badCorners_saySo() {
        Corner a = new Corner("A", in(0), in(0));
        Corner b = new Corner("B", in(1), in(0));
        Corner c = new Corner("C", in(1), in(1));
        assertThatThrownBy(() -> Outline.polygon(List.of(a, c, b))).hasMessageContaining("counter-clockwise");
        assertThatThrownBy(() -> Outline.polygon(List.of(a, b, c, new Corner("A", in(0), in(1)))))
                .hasMessageContaining("Two edges (A)");
        assertThatThrownBy(() -> SQUARE.edge("FOOT")).hasMessageContaining("BOTTOM, RIGHT, TOP, LEFT");
    }
}
