package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Polygons clipped at a straight line (Sutherland and Hodgman, Communications of the ACM 17, 1974).
 *
 * <p>That method is right for a ring that the line parts in just two; all others, and rings whose openings the line meets, go
 * through the overlay with a rectangle. Corners nearer to the line than a ten-thousandth of a micrometre count as on it, so a
 * cut through an edge leaves no sliver.
 */
final class Clipping {
    private static final double ON = 1e-7;

    private Clipping() {}

    /** What is in the half-plane, in pieces. */
    static List<Polygon> clip(Polygon polygon, HalfPlane keep) {
        List<Coordinate> shell = open(polygon.getExteriorRing());
        double[] beyond = beyond(shell, keep);
        if (!has(beyond, 1)) {
            return List.of(polygon);
        }
        if (!has(beyond, -1)) {
            return List.of();
        }
        List<LinearRing> holes = new ArrayList<>();
        boolean simple = partings(beyond) == 2;
        for (int i = 0; i < polygon.getNumInteriorRing() && simple; i++) {
            LinearRing hole = polygon.getInteriorRingN(i);
            double[] off = beyond(open(hole), keep);
            boolean in = has(off, -1);
            simple = !in || !has(off, 0) && !has(off, 1);
            if (in) {
                holes.add(hole);
            }
        }
        if (!simple) {
            return Flat.pieces(OverlayNGRobust.overlay(polygon, rectangle(polygon, keep), OverlayNG.INTERSECTION));
        }
        Polygon outer = Flat.polygon(clip(shell, beyond));
        return List.of(Flat.FACTORY.createPolygon(outer.getExteriorRing(), holes.toArray(LinearRing[]::new)));
    }

    /** What two convex polygons share: none or one. */
    static List<Polygon> convex(Polygon a, Polygon b) {
        List<Coordinate> left = open(a.getExteriorRing());
        List<Coordinate> ring = Flat.rings(b).get(0);
        for (int i = 0; i < ring.size(); i++) {
            Coordinate p = ring.get(i);
            Coordinate q = ring.get((i + 1) % ring.size());
            double dx = q.x - p.x;
            double dy = q.y - p.y;
            double[] beyond = beyond(left, new HalfPlane(dy, -dx, dy * p.x - dx * p.y));
            if (!has(beyond, -1)) {
                return List.of();
            }
            left = has(beyond, 1) ? clip(left, beyond) : left;
        }
        return left.size() < 3 ? List.of() : List.of(Flat.polygon(left));
    }

    static boolean isConvex(Polygon polygon) {
        if (polygon.getNumInteriorRing() > 0) {
            return false;
        }
        List<Coordinate> ring = Flat.rings(polygon).get(0);
        int count = ring.size();
        for (int i = 0; i < count; i++) {
            Coordinate a = ring.get(i);
            Coordinate b = ring.get((i + 1) % count);
            Coordinate c = ring.get((i + 2) % count);
            if ((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) < -1e-9) {
                return false;
            }
        }
        return true;
    }

    private static List<Coordinate> clip(List<Coordinate> ring, double[] beyond) {
        List<Coordinate> left = new ArrayList<>();
        for (int i = 0; i < beyond.length; i++) {
            int next = (i + 1) % beyond.length;
            if (beyond[i] <= 0) {
                left.add(ring.get(i));
            }
            if (beyond[i] * beyond[next] < 0) {
                double t = beyond[i] / (beyond[i] - beyond[next]);
                Coordinate a = ring.get(i);
                Coordinate b = ring.get(next);
                left.add(new Coordinate(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)));
            }
        }
        return left;
    }

    private static List<Coordinate> open(LinearRing ring) {
        return List.of(ring.getCoordinates()).subList(0, ring.getNumPoints() - 1);
    }

    private static double[] beyond(List<Coordinate> ring, HalfPlane keep) {
        double[] beyond = new double[ring.size()];
        for (int i = 0; i < beyond.length; i++) {
            double distance = keep.beyond(ring.get(i).x, ring.get(i).y);
            beyond[i] = Math.abs(distance) < ON ? 0 : distance;
        }
        return beyond;
    }

    private static boolean has(double[] beyond, int sign) {
        for (double distance : beyond) {
            if (Math.signum(distance) == sign) {
                return true;
            }
        }
        return false;
    }

    /** How often a walk round the ring goes from one side to the other. */
    private static int partings(double[] beyond) {
        double last = 0;
        for (double distance : beyond) {
            last = distance != 0 ? distance : last;
        }
        int partings = 0;
        for (double distance : beyond) {
            if (distance * last < 0) {
                partings++;
            }
            last = distance != 0 ? distance : last;
        }
        return partings;
    }

    /** A rectangle that covers all of the polygon that is in the half-plane. */
    private static Polygon rectangle(Polygon polygon, HalfPlane keep) {
        Envelope box = polygon.getEnvelopeInternal();
        double far = 2 * (box.getWidth() + box.getHeight() + 1);
        double size = StrictMath.hypot(keep.a(), keep.b());
        double a = keep.a() / size;
        double b = keep.b() / size;
        double off = keep.beyond(box.centre().x, box.centre().y);
        double x = box.centre().x - off * a;
        double y = box.centre().y - off * b;
        return Flat.polygon(List.of(
                new Coordinate(x - far * b, y + far * a),
                new Coordinate(x - far * b - 2 * far * a, y + far * a - 2 * far * b),
                new Coordinate(x + far * b - 2 * far * a, y - far * a - 2 * far * b),
                new Coordinate(x + far * b, y - far * a)));
    }
}
