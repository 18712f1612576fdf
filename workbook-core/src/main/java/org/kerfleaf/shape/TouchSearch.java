package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Places where two solids lie face on face: opposite normals, one plane, and a shared area.
 *
 * <p>Whether two planes are one is measured at the corners of the shared area, for a small tilt over a long edge is a real gap.
 */
final class TouchSearch {
    /** How far normals may be from opposite. */
    static final double OPPOSITE = 1e-5;

    /** Narrower than this is no contact: the tolerance, in millimetres. */
    private static final double NARROW = Touching.TOLERANCE.inMillimetres();

    private TouchSearch() {}

    static List<Touch> between(PlacedSolid a, PlacedSolid b) {
        List<Touch> found = new ArrayList<>();
        for (Face of : near(a, b.bounds())) {
            for (Face on : near(b, of.bounds())) {
                if (areOpposite(of, on)) {
                    between(a, b, of, on, found);
                }
            }
        }
        return found;
    }

    private static List<Face> near(PlacedSolid solid, Bounds bounds) {
        return solid.faces().stream()
                .filter(f -> f.bounds().isNear(bounds, NARROW))
                .toList();
    }

    static boolean areOpposite(Face a, Face b) {
        return a.normal().plus(b.normal()).length() < OPPOSITE;
    }

    private static void between(PlacedSolid a, PlacedSolid b, Face of, Face on, List<Touch> found) {
        // Cheap refusal first: a corner may be a little nearer than the origin, never by this much.
        double size = on.bounds().sizes().length() + of.bounds().sizes().length();
        if (Math.abs(of.inFront(on.corners().get(0))) > NARROW + OPPOSITE * size) {
            return;
        }
        for (Polygon shared : Flat.shared(of.polygon(), Flat.seenFrom(on.polygon(), on.frame(), of.frame()))) {
            touch(a, b, of, on, shared).ifPresent(found::add);
        }
    }

    private static Optional<Touch> touch(PlacedSolid a, PlacedSolid b, Face of, Face on, Polygon shared) {
        double worst = 0;
        for (Coordinate corner : shared.getCoordinates()) {
            Vector point = of.frame().toWorld(new Vector(corner.x, corner.y, 0));
            worst = Math.max(worst, Math.abs(on.inFront(point)));
        }
        return worst > NARROW ? Optional.empty() : touch(a, b, of, on, shared, of.frame(), worst);
    }

    /** The largest piece that both contacts share when one looks along their normal. */
    static Optional<Touch> inLine(Touch one, Touch other) {
        if (one.frame().w().cross(other.frame().w()).length() > OPPOSITE) {
            return Optional.empty();
        }
        Polygon seen = Flat.seenFrom(other.polygon(), other.frame(), one.frame());
        return Flat.shared(one.polygon(), seen).stream()
                .max(Comparator.comparingDouble(Polygon::getArea))
                .flatMap(shared -> touch(
                        one.a(),
                        one.b(),
                        one.faceOfA(),
                        one.faceOfB(),
                        shared,
                        one.frame(),
                        one.worstGap().inMillimetres()));
    }

    private static Optional<Touch> touch(
            PlacedSolid a, PlacedSolid b, Face of, Face on, Polygon shared, Pose plane, double worst) {
        Pose frame = rectangle(shared, plane);
        Polygon polygon = Flat.seenFrom(shared, plane, frame);
        double along = polygon.getEnvelopeInternal().getMaxX();
        double across = polygon.getEnvelopeInternal().getMaxY();
        if (across < NARROW) {
            return Optional.empty();
        }
        Length longer = Length.ofMillimetres(along);
        return Optional.of(new Touch(
                a, b, of, on, frame, polygon, longer, Length.ofMillimetres(across), Length.ofMillimetres(worst)));
    }

    /** A frame in the same plane with its origin at a corner of the smallest rectangle and u along the longer side. */
    private static Pose rectangle(Polygon shared, Pose plane) {
        Coordinate[] corners = fourCorners(shared);
        int start = corners[0].distance(corners[1]) >= corners[1].distance(corners[2]) ? 0 : 1;
        Vector p = plane.toWorld(new Vector(corners[start].x, corners[start].y, 0));
        Vector q = plane.toWorld(new Vector(corners[start + 1].x, corners[start + 1].y, 0));
        Vector r = plane.toWorld(new Vector(corners[start + 2].x, corners[start + 2].y, 0));
        Vector u = forward(q.minus(p).normalised());
        Vector w = plane.w();
        Vector v = w.cross(u).normalised();
        // The corner from which u and v both run into the rectangle.
        double back = Math.min(0, u.dot(q.minus(p)));
        double down = Math.min(0, v.dot(r.minus(q)));
        return new Pose(p.plus(u.times(back)).plus(v.times(down)), v.cross(w), v, w);
    }

    /** The same line whichever part was named first: its larger share points right, back or up. */
    private static Vector forward(Vector direction) {
        double x = Math.abs(direction.x());
        double y = Math.abs(direction.y());
        double z = Math.abs(direction.z());
        double main = x >= y - 1e-9 && x >= z - 1e-9 ? direction.x() : y >= z - 1e-9 ? direction.y() : direction.z();
        return main < 0 ? direction.negated() : direction;
    }

    private static Coordinate[] fourCorners(Polygon shared) {
        Geometry rectangle = MinimumAreaRectangle.getMinimumRectangle(shared);
        if (rectangle instanceof Polygon polygon && polygon.getNumPoints() == 5) {
            return polygon.getCoordinates();
        }
        return shared.getEnvelope().getCoordinates();
    }
}
