package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.shape.FaceEdge;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * What a view needs of a piece: flat sides with their rings and edges, in millimetres of the build.
 *
 * @param glass hides nothing
 */
record Body(String part, String letter, Shown.State state, boolean glass, List<Side> sides) {
    /**
     * A flat side.
     *
     * @param normal out of the wood, one long
     * @param rings the outer one first, then those round what is cut out; the last point is not the first again
     */
    record Side(Vector normal, List<List<Vector>> rings, List<FaceEdge> edges) {}

    static Body of(Shown shown) {
        List<Side> sides = new ArrayList<>();
        for (var face : shown.drawn().faces()) {
            sides.add(side(face.frame(), face.polygon(), face.edges()));
        }
        return new Body(shown.solid().part(), shown.letter(), shown.state(), shown.seeThrough(), List.copyOf(sides));
    }

    static Side side(Pose frame, Polygon polygon, List<FaceEdge> edges) {
        List<List<Vector>> rings = new ArrayList<>();
        rings.add(ring(frame, polygon.getExteriorRing()));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(ring(frame, polygon.getInteriorRingN(i)));
        }
        return new Side(frame.w(), List.copyOf(rings), List.copyOf(edges));
    }

    private static List<Vector> ring(Pose frame, LineString ring) {
        List<Vector> points = new ArrayList<>();
        for (int i = 0; i < ring.getNumPoints() - 1; i++) {
            Coordinate c = ring.getCoordinateN(i);
            points.add(frame.toWorld(new Vector(c.x, c.y, 0)));
        }
        return List.copyOf(points);
    }
}
