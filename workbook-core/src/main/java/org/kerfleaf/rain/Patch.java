package org.kerfleaf.rain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** One piece of a face that no other solid lies on, with its sides. Over it water runs one way, or stands. */
final class Patch {
    /** Flatter than one degree water stands, or goes anywhere. {@code Common practice, no source}. */
    static final double LEVEL = StrictMath.sin(StrictMath.toRadians(1));

    /** Corners nearer than this are one, in millimetres. */
    private static final double CORNER = 1e-4;

    private final PlacedSolid solid;
    private final Face face;
    private final Polygon polygon;
    private final Vector down;
    private final List<Side> sides = new ArrayList<>();
    private final Bounds bounds;

    /** @param polygon in the face's frame, in one piece */
    Patch(PlacedSolid solid, Face face, Polygon polygon) {
        this.solid = solid;
        this.face = face;
        this.polygon = polygon;
        Vector n = face.normal();
        Vector steepest = n.times(n.z()).minus(Vector.Z);
        down = steepest.length() < LEVEL ? Vector.ZERO : steepest.normalised();
        ring(polygon.getExteriorRing(), true);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            ring(polygon.getInteriorRingN(i), false);
        }
        bounds = Bounds.of(sides.stream().map(Side::from).toList());
    }

    private void ring(LinearRing ring, boolean left) {
        List<Coordinate> points = new ArrayList<>();
        Coordinate[] all = ring.getCoordinates();
        for (int i = 0; i + 1 < all.length; i++) {
            // Overlays leave corners twice, a rounding apart.
            if (all[i].distance(all[i + 1]) > CORNER) {
                points.add(all[i]);
            }
        }
        if (Orientation.isCCW(ring.getCoordinateSequence()) != left) {
            Collections.reverse(points);
        }
        int first = sides.size();
        for (int i = 0; i < points.size(); i++) {
            int next = (i + 1) % points.size();
            int before = (i + points.size() - 1) % points.size();
            Vector from = world(points.get(i));
            Vector to = world(points.get(next));
            Vector out = to.minus(from).normalised().cross(face.normal());
            sides.add(new Side(this, left, from, to, out, first + before, first + next));
        }
    }

    private Vector world(Coordinate at) {
        return face.frame().toWorld(new Vector(at.x, at.y, 0));
    }

    PlacedSolid solid() {
        return solid;
    }

    Face face() {
        return face;
    }

    Polygon polygon() {
        return polygon;
    }

    Vector normal() {
        return face.normal();
    }

    /** The steepest way down in its plane, one long; zero if it is level. */
    Vector down() {
        return down;
    }

    /** Level in its plane, square to the way down, one long. */
    Vector across() {
        return face.normal().cross(down);
    }

    boolean isLevel() {
        return down.equals(Vector.ZERO);
    }

    /** Whether it is level and water stands on it, rather than hangs from it. */
    boolean holdsWater() {
        return isLevel() && normal().z() > 0;
    }

    List<Side> sides() {
        return sides;
    }

    Bounds bounds() {
        return bounds;
    }

    /** Whether a point of its plane is within it. */
    boolean holds(Vector point) {
        Vector at = face.frame().toLocal(point);
        boolean in = false;
        for (int ring = -1; ring < polygon.getNumInteriorRing(); ring++) {
            Coordinate[] points =
                    (ring < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(ring)).getCoordinates();
            for (int i = 0; i + 1 < points.length; i++) {
                Coordinate p = points[i];
                Coordinate q = points[i + 1];
                if (p.y > at.y() != q.y > at.y() && p.x + (at.y() - p.y) / (q.y - p.y) * (q.x - p.x) > at.x()) {
                    in = !in;
                }
            }
        }
        return in;
    }

    /**
     * A straight side, the patch on its left when looked at from outside.
     *
     * @param isRim whether it is of the outer ring, not of a hole
     * @param out in the plane, away from the patch, one long
     * @param before the number of the side it begins at
     * @param next the number of the side it ends at
     */
    record Side(Patch patch, boolean isRim, Vector from, Vector to, Vector out, int before, int next) {
        /** A point of it, from 0 at its beginning to 1 at its end. */
        Vector at(double share) {
            return from.plus(to.minus(from).times(share));
        }

        Vector along() {
            return to.minus(from).normalised();
        }

        double length() {
            return to.minus(from).length();
        }

        // A side is itself only: the patch it names names it again.
        @Override
        public boolean equals(Object other) {
            return this == other;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(this);
        }
    }
}
