package org.kerfleaf.shape;

import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;

/**
 * A piece as a ray meets it: its faces without what is cut out of them.
 *
 * <p>Plain numbers instead of vectors and polygons: whether air is closed in takes some ten thousand rays, and each asks every piece.
 */
final class SightBody {
    /** A ray this near past the rim of a face meets it, in millimetres: no ray slips between two faces that share an edge. */
    static final double RIM = 1e-6;

    /** A ray that turns toward a plane by less runs along it. */
    private static final double ALONG = 1e-15;

    private final double[] low;
    private final double[] high;
    private final Wall[] walls;

    SightBody(PlacedSolid solid) {
        Bounds box = solid.bounds();
        low = new double[] {box.low().x() - RIM, box.low().y() - RIM, box.low().z() - RIM};
        high = new double[] {
            box.high().x() + RIM, box.high().y() + RIM, box.high().z() + RIM
        };
        List<Face> faces = solid.faces();
        walls = faces.stream().map(Wall::new).toArray(Wall[]::new);
    }

    /** How many times the way it is to the first face nearer than the limit; endless where none is. */
    double nearest(Vector from, Vector way, double limit) {
        double nearest = Double.POSITIVE_INFINITY;
        if (isMet(from, way, limit)) {
            double within = limit;
            for (Wall wall : walls) {
                double hit = wall.hit(from, way, within);
                if (hit < within) {
                    within = hit;
                    nearest = hit;
                }
            }
        }
        return nearest;
    }

    /** Whether the ray meets any face before the limit. */
    boolean stops(Vector from, Vector way, double limit) {
        if (isMet(from, way, limit)) {
            for (Wall wall : walls) {
                if (wall.hit(from, way, limit) < limit) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether the ray comes through the box round the piece before the limit. */
    private boolean isMet(Vector from, Vector way, double limit) {
        double enter = 0;
        double leave = limit;
        for (int axis = 0; axis < 3; axis++) {
            double start = axis == 0 ? from.x() : axis == 1 ? from.y() : from.z();
            double go = axis == 0 ? way.x() : axis == 1 ? way.y() : way.z();
            double below = low[axis] - start;
            double above = high[axis] - start;
            if (Math.abs(go) < ALONG) {
                if (below > 0 || above < 0) {
                    return false;
                }
            } else {
                double a = below / go;
                double b = above / go;
                enter = Math.max(enter, Math.min(a, b));
                leave = Math.min(leave, Math.max(a, b));
            }
        }
        return enter <= leave;
    }

    /** A ring in a plane, with the rectangle round it: most rays that cross the plane miss that by far. */
    private static final class Wall {
        private final Vector u;
        private final Vector v;
        private final Vector w;
        private final Vector origin;
        private final double[] x;
        private final double[] y;
        private double left = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;
        private double bottom = Double.POSITIVE_INFINITY;
        private double top = Double.NEGATIVE_INFINITY;
        private final boolean isSquare;

        Wall(Face face) {
            u = face.frame().u();
            v = face.frame().v();
            w = face.frame().w();
            origin = face.frame().origin();
            Coordinate[] ring = face.polygon().getExteriorRing().getCoordinates();
            x = new double[ring.length];
            y = new double[ring.length];
            for (int i = 0; i < ring.length; i++) {
                x[i] = ring[i].x;
                y[i] = ring[i].y;
                left = Math.min(left, x[i] - RIM);
                right = Math.max(right, x[i] + RIM);
                bottom = Math.min(bottom, y[i] - RIM);
                top = Math.max(top, y[i] + RIM);
            }
            isSquare = ring.length == 5 && IntStream.range(0, 4).allMatch(i -> x[i] == x[i + 1] || y[i] == y[i + 1]);
        }

        double hit(Vector from, Vector way, double limit) {
            double toward = way.dot(w);
            double dx = from.x() - origin.x();
            double dy = from.y() - origin.y();
            double dz = from.z() - origin.z();
            double t = -(dx * w.x() + dy * w.y() + dz * w.z()) / toward;
            if (Math.abs(toward) < ALONG || !(t > 0) || t >= limit) {
                return Double.POSITIVE_INFINITY;
            }
            dx += way.x() * t;
            dy += way.y() * t;
            dz += way.z() * t;
            double atX = dx * u.x() + dy * u.y() + dz * u.z();
            double atY = dx * v.x() + dy * v.y() + dz * v.z();
            boolean isNear = atX >= left && atX <= right && atY >= bottom && atY <= top;
            return isNear && (isSquare || holds(atX, atY)) ? t : Double.POSITIVE_INFINITY;
        }

        private boolean holds(double px, double py) {
            boolean in = false;
            for (int i = 0; i + 1 < x.length; i++) {
                if (y[i] > py != y[i + 1] > py) {
                    in ^= x[i] + (py - y[i]) / (y[i + 1] - y[i]) * (x[i + 1] - x[i]) > px;
                }
            }
            return in || isOnRim(px, py);
        }

        private boolean isOnRim(double px, double py) {
            for (int i = 0; i + 1 < x.length; i++) {
                if (isOnEdge(px - x[i], py - y[i], x[i + 1] - x[i], y[i + 1] - y[i])) {
                    return true;
                }
            }
            return false;
        }

        private static boolean isOnEdge(double px, double py, double dx, double dy) {
            double square = dx * dx + dy * dy;
            double along = px * dx + py * dy;
            double off = px * dy - py * dx;
            return off * off < RIM * RIM * square && along > -RIM * RIM && along < square + RIM * RIM;
        }
    }
}
