package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What one sees of pieces from far away, looking level along an axis: all of it as one shape.
 *
 * <p>Every face that looks towards the eye is laid flat on a wall, and the wall's covered part is measured once, however many
 * faces lie over it. What hides in an opening behind something is covered like the rest.
 *
 * @param squareMillimetres the area covered
 * @param middle its middle: how high, in millimetres from the build's origin
 */
public record Seen(double squareMillimetres, double middle) {
    private static final GeometryFactory FLAT = new GeometryFactory();

    /** Of these pieces, looking along an axis that lies level: X from the side, Y from the front. */
    public static Seen along(Axis axis, List<PlacedSolid> pieces) {
        Vector sideways = axis == Axis.X ? Vector.Y : Vector.X;
        List<Geometry> covered = new ArrayList<>();
        for (PlacedSolid piece : pieces) {
            for (Face face : piece.faces()) {
                if (face.normal().dot(axis.unit()) > 1e-6) {
                    covered.add(onWall(face, sideways));
                }
            }
        }
        Geometry all = OverlayNGRobust.union(FLAT.buildGeometry(uncovered(covered)));
        return all.isEmpty()
                ? new Seen(0, 0)
                : new Seen(all.getArea(), all.getCentroid().getY());
    }

    /** Without those that lie wholly behind a larger one: overlaying takes the longest of all this, and most edges of boards do. */
    private static List<Geometry> uncovered(List<Geometry> all) {
        List<Geometry> kept = new ArrayList<>();
        all.sort(Comparator.comparingDouble(Geometry::getArea).reversed());
        for (Geometry one : all) {
            if (kept.stream().noneMatch(larger -> larger.covers(one))) {
                kept.add(one);
            }
        }
        return kept;
    }

    private static Geometry onWall(Face face, Vector sideways) {
        Geometry wall = face.polygon().copy();
        wall.apply((Coordinate at) -> {
            Vector point = face.frame().toWorld(new Vector(at.x, at.y, 0));
            at.setX(point.dot(sideways));
            at.setY(point.z());
        });
        wall.geometryChanged();
        return wall;
    }
}
