package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

class ClearLineTest {
    private static Length mm(double number) {
        return Length.ofMillimetres(number);
    }

    private static PlacedSolid plate(Outline outline, double z) {
        return new PlacedSolid("Plate " + z, 1, Solid.of(outline, mm(10)), Pose.HOME.moved(new Vector(0, 0, z)));
    }

    /** A plate 200 x 100 with a square opening from (80, 40) to (120, 60) and a hole of 20 at (160, 50), lying on another. */
    private static Touch holed() {
        Outline upper = Outline.rectangle(mm(200), mm(100))
                .opening("slot", Outline.rectangle(mm(40), mm(20)).moved(mm(80), mm(40)))
                .opening("hole", Outline.circle(mm(20)).moved(mm(160), mm(50)));
        return Touching.between(plate(upper, 10), plate(Outline.rectangle(mm(200), mm(100)), 0))
                .touches()
                .get(0);
    }

    private static void spans(List<ClearLine.Span> spans, double... ends) {
        assertThat(spans).hasSize(ends.length / 2);
        for (int i = 0; i < spans.size(); i++) {
            // Round holes are polygons a little inside their circle.
            assertThat(spans.get(i).from()).isCloseTo(ends[2 * i], within(0.1));
            assertThat(spans.get(i).to()).isCloseTo(ends[2 * i + 1], within(0.1));
        }
    }

    @Test
    void of_middle_leavesOutOpeningAndHole() {
        spans(ClearLine.of(holed(), 50, 0), 0, 80, 120, 150, 170, 200);
        spans(ClearLine.of(holed(), 50, 5), 5, 75, 125, 145, 175, 195);
    }

    @Test
    void of_lineBesideAnOpening_keepsClearOfItsCorners() {
        // 3 above the opening's upper edge, 5 clear: its corners take √(25 - 9) = 4 more at either end.
        spans(ClearLine.of(holed(), 63, 5), 5, 76, 124, 160 - Math.sqrt(225 - 169), 160 + Math.sqrt(225 - 169), 195);
    }

    /** Every place it gives is as far from the contact's edges as asked, measured by other means; those next to it are not. */
    @Test
    void of_anyLine_agreesWithMeasuredDistances() {
        Touch touch = holed();
        Polygon polygon = touch.polygon();
        for (double across = 1; across < 100; across += 3.7) {
            List<ClearLine.Span> spans = ClearLine.of(touch, across, 6);
            for (double along = 0.25; along < 200; along += 0.5) {
                double at = along;
                Point point = polygon.getFactory().createPoint(new Coordinate(along, across));
                double room = polygon.contains(point) ? polygon.getBoundary().distance(point) : 0;
                boolean free = spans.stream().anyMatch(s -> s.holds(at));
                if (Math.abs(room - 6) > 1e-3) {
                    assertThat(free).as("%s along, %s across", along, across).isEqualTo(room > 6);
                }
            }
        }
    }

    @Test
    void lineThrough_aHoledPlate_isInWoodBeforeAndAfterTheHole() {
        PlacedSolid plate = holed().a();
        List<LineThrough.Stretch> stretches = LineThrough.of(plate, new Vector(-10, 50, 15), Vector.X);
        assertThat(stretches).hasSize(3);
        assertThat(stretches.get(0).enter()).isCloseTo(10, within(1e-9));
        assertThat(stretches.get(0).leave()).isCloseTo(90, within(1e-9));
        assertThat(stretches.get(0).out().name()).isEqualTo("slot LEFT");
        assertThat(stretches.get(2).leave()).isCloseTo(210, within(1e-9));
        assertThat(LineThrough.of(plate, new Vector(100, 50, 0), Vector.Z)).isEmpty();
    }
}
