package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class HiddenLinesTest {
    private static final GeometryFactory POINTS = new GeometryFactory();
    private static final Vector AXIS = new Vector(0.3, -0.5, 0.8);
    private static final Angle TURN = Angle.ofDegrees(37);

    private static PlacedSolid box(String name, double x, double y, double z, long wide, long deep, long high) {
        Solid solid = Solid.of(
                Outline.rectangle(Length.ofMillimetres(wide), Length.ofMillimetres(deep)), Length.ofMillimetres(high));
        return new PlacedSolid(name, 1, solid, Pose.HOME.moved(new Vector(x, y, z)));
    }

    private static List<DrawnLine> lines(View view, PlacedSolid... solids) {
        List<Body> bodies =
                List.of(solids).stream().map(s -> Body.of(Shown.plain(s, ""))).toList();
        return HiddenLines.of(new Projection(bodies, view));
    }

    private static double length(List<DrawnLine> lines, boolean hidden) {
        return lines.stream()
                .filter(l -> l.hidden() == hidden)
                .mapToDouble(DrawnLine::length)
                .sum();
    }

    private static Vector turned(Vector direction) {
        return Pose.HOME.turnedAbout(Vector.ZERO, AXIS, TURN).turned(direction);
    }

    private static View turned(View view) {
        return new View("turned", turned(view.right()), turned(view.up()));
    }

    @Test
    void of_boxFromTheFront_isItsRectangleOnce() {
        List<DrawnLine> lines = lines(View.FRONT, box("A", 0, 0, 0, 300, 200, 100));
        assertThat(lines).hasSize(4).noneMatch(DrawnLine::hidden);
        assertThat(length(lines, false)).isCloseTo(800, within(1e-6));
    }

    @Test
    void of_boxInDimetric_hidesThreeEdges() {
        List<DrawnLine> lines = lines(View.DIMETRIC, box("A", 0, 0, 0, 300, 200, 100));
        // Width and height are true, depth is half (ISO 5456-3).
        // An edge counts as hidden from 0.02 mm behind a face on.
        assertThat(length(lines, true)).isCloseTo(300 + 100 + 100, within(0.1));
        assertThat(length(lines, false)).isCloseTo(3 * (300 + 100 + 100), within(0.1));
    }

    @Test
    void of_boxBehindABoard_isHiddenAsFarAsTheBoardReaches() {
        List<DrawnLine> lines =
                lines(View.FRONT, box("Board", 0, 0, 0, 400, 18, 300), box("Box", 300, 50, 100, 200, 100, 100));
        // Two level edges of 200, 100 of each behind the board, and the left edge.
        assertThat(length(lines, true)).isCloseTo(100 + 100 + 100, within(1e-6));
        assertThat(length(lines, false)).isCloseTo(2 * (400 + 300) + 100 + 100 + 100, within(1e-6));
    }

    @Test
    void of_boxBehindGlass_isSeen() {
        Shown pane = Shown.plain(box("Pane", 0, 0, 0, 400, 4, 300), "").asGlass();
        Shown box = Shown.plain(box("Box", 100, 50, 100, 200, 100, 100), "");
        Projection projection = new Projection(List.of(Body.of(pane), Body.of(box)), View.FRONT);
        assertThat(HiddenLines.of(projection)).noneMatch(DrawnLine::hidden);
    }

    @Test
    void of_touchingBoxes_drawTheirCommonEdgeOnce() {
        List<DrawnLine> lines = lines(View.FRONT, box("A", 0, 0, 0, 100, 50, 100), box("B", 100, 0, 0, 100, 50, 100));
        assertThat(length(lines, false)).isCloseTo(2 * 200 + 3 * 100, within(1e-6));
    }

    @Test
    void of_roundHole_isOneLineFromTheFrontAndNoFacetsFromTheSide() {
        Solid solid = Solid.of(
                Outline.rectangle(Length.ofMillimetres(200), Length.ofMillimetres(200))
                        .opening(
                                "hole",
                                Outline.circle(Length.ofMillimetres(50))
                                        .moved(Length.ofMillimetres(100), Length.ofMillimetres(100))),
                Length.ofMillimetres(20));
        PlacedSolid board = new PlacedSolid("Board", 1, solid, Pose.HOME);
        List<DrawnLine> top = lines(View.TOP, board);
        assertThat(top).filteredOn(DrawnLine::arc).hasSize(1);
        DrawnLine rim = top.stream().filter(DrawnLine::arc).findFirst().orElseThrow();
        // The arc is drawn by chords: shorter than the circle by less than a hundredth.
        assertThat(rim.length()).isBetween(0.99 * Math.PI * 50, Math.PI * 50);
        // From the front: the two silhouettes of the hole, and nothing between them.
        assertThat(length(lines(View.FRONT, board), true)).isCloseTo(2 * 20, within(0.01));
    }

    @Test
    void hidden_cabinetInASkewView_agreesWithRays() {
        View skew = turned(View.FRONT);
        List<PlacedSolid> solids = CabinetSolids.all();
        Projection projection = new Projection(
                solids.stream().map(s -> Body.of(Shown.plain(s, ""))).toList(), skew);
        Vector eye = skew.toEye();
        int compared = 0;
        for (Projection.Edge edge : projection.edges()) {
            List<Spans.Span> hidden = HiddenLines.hidden(projection, edge);
            double length = StrictMath.hypot(edge.x2() - edge.x1(), edge.y2() - edge.y1());
            for (double t : new double[] {0.137, 0.411, 0.693, 0.921}) {
                boolean nearEnd = hidden.stream()
                        .anyMatch(s -> Math.min(Math.abs(s.from() - t), Math.abs(s.to() - t)) * length < 0.2);
                if (nearEnd) {
                    continue;
                }
                Vector point = skew.right()
                        .times(edge.x1() + t * (edge.x2() - edge.x1()))
                        .plus(skew.up().times(edge.y1() + t * (edge.y2() - edge.y1())))
                        .plus(eye.times(edge.nearFrom() + t * (edge.nearTo() - edge.nearFrom())));
                boolean isHidden = hidden.stream().anyMatch(s -> s.from() < t && t < s.to());
                assertThat(isHidden)
                        .as("edge %s at %s, met by %s", edge, t, met(solids, point, eye))
                        .isEqualTo(met(solids, point, eye).isPresent());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(1500);
    }

    /** The first face that a ray from a point to the eye meets: plane by plane, with an overlay library's point in polygon. */
    private static Optional<String> met(List<PlacedSolid> solids, Vector point, Vector eye) {
        for (PlacedSolid solid : solids) {
            for (Face face : solid.faces()) {
                double toward = face.normal().dot(eye);
                double away = face.normal().dot(face.frame().origin().minus(point)) / toward;
                if (toward > 1e-6 && away > 0.03) {
                    Vector at = face.frame().toLocal(point.plus(eye.times(away)));
                    if (face.polygon().contains(POINTS.createPoint(new Coordinate(at.x(), at.y())))) {
                        return Optional.of(solid.part() + " " + face.name());
                    }
                }
            }
        }
        return Optional.empty();
    }

    @Test
    void of_buildAndViewTurnedTogether_giveTheSameLines() {
        for (View view : List.of(View.FRONT, View.SIDE, View.TOP, View.DIMETRIC)) {
            List<DrawnLine> straight = lines(view, CabinetSolids.all().toArray(new PlacedSolid[0]));
            List<DrawnLine> turned = lines(
                    turned(view),
                    CabinetSolids.all().stream()
                            .map(s -> s.at(s.pose().turnedAbout(Vector.ZERO, AXIS, TURN)))
                            .toArray(PlacedSolid[]::new));
            assertThat(length(turned, false)).as(view.name()).isCloseTo(length(straight, false), within(0.05));
            assertThat(length(turned, true)).as(view.name()).isCloseTo(length(straight, true), within(0.05));
        }
    }
}
