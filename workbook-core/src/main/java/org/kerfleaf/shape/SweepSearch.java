package org.kerfleaf.shape;

import java.util.List;
import java.util.OptionalDouble;
import org.kerfleaf.shape.ConvexPiece.Plane;
import org.kerfleaf.shape.SweepBody.Hulled;

/**
 * When a body that turns about a line first goes into one that stands still.
 *
 * <p>As long as a plane has one of the two behind it and the other in front, they are apart. A plane fixed to either is left by
 * the other's corners at an angle that has a closed form, since a corner's distance from it goes as a + b · cos + c · sin. So the
 * search goes from plane to plane, each as far as it holds, and where none holds there is the contact. Planes are taken from the
 * faces of both, and for convex pieces also from an edge of either, which together are all that two convex bodies need
 * (separating axis theorem). Geometry.
 */
final class SweepSearch {
    /** So far behind a plane a corner still counts as on it, in millimetres. */
    private static final double ON = 1e-5;

    /** The least step, in radians: half a micrometre at the edge of a door. */
    private static final double STEP = 1e-6;

    private static final double ROUND = 2 * StrictMath.PI;
    private static final double SQUARE = 1e-9;

    private SweepSearch() {}

    /** The first contact before {@code upTo}, in radians; empty if there is none. */
    static OptionalDouble meets(SweepBody moving, SweepBody still, double upTo) {
        if (!moving.whole().reach().meets(still.whole().reach())) {
            return OptionalDouble.empty();
        }
        double from = apartUntil(moving.whole(), still.whole(), 0, upTo);
        double first = upTo;
        if (from < upTo) {
            for (Hulled one : moving.pieces()) {
                for (Hulled other : still.pieces()) {
                    if (first > from && one.reach().meets(other.reach())) {
                        first = Math.min(first, apartUntil(one, other, from, first));
                    }
                }
            }
        }
        return first < upTo ? OptionalDouble.of(first) : OptionalDouble.empty();
    }

    /** From an angle on, as far as planes keep them apart, but no further than {@code upTo}. */
    private static double apartUntil(Hulled moving, Hulled still, double from, double upTo) {
        double at = from;
        while (at < upTo) {
            double until = Math.max(
                    byFaces(still.planes(), moving.corners(), 1, at, upTo),
                    byFaces(moving.planes(), still.corners(), -1, at, upTo));
            if (until < 0) {
                until = byEdges(moving, still, at);
            }
            if (until < 0) {
                return at;
            }
            at = Math.max(until, at + STEP);
        }
        return upTo;
    }

    /** How far the best of the planes keeps these corners in front of it while they turn; -1 if none does at all. */
    private static double byFaces(List<Plane> planes, List<Vector> corners, int sense, double at, double enough) {
        double best = -1;
        for (Plane plane : planes) {
            best = Math.max(best, holds(plane, corners, sense, at));
            if (best >= enough) {
                break;
            }
        }
        return best;
    }

    private static double byEdges(Hulled moving, Hulled still, double at) {
        double cos = StrictMath.cos(at);
        double sin = StrictMath.sin(at);
        double best = -1;
        for (Vector edge : moving.edges()) {
            Vector turned = new Vector(cos * edge.x() - sin * edge.y(), sin * edge.x() + cos * edge.y(), edge.z());
            for (Vector other : still.edges()) {
                Vector square = turned.cross(other);
                if (square.length() > SQUARE) {
                    Vector normal = square.normalised();
                    best = Math.max(best, holds(supporting(still, normal), moving.corners(), 1, at));
                    best = Math.max(best, holds(supporting(still, normal.negated()), moving.corners(), 1, at));
                }
            }
        }
        return best;
    }

    private static Plane supporting(Hulled still, Vector normal) {
        double most = Double.NEGATIVE_INFINITY;
        for (Vector corner : still.corners()) {
            most = Math.max(most, normal.dot(corner));
        }
        return new Plane(normal, most);
    }

    /**
     * Up to which angle all corners stay in front of a plane.
     *
     * @param sense 1 if the corners turn, -1 if the plane does
     * @return -1 if they are not in front at the beginning
     */
    private static double holds(Plane plane, List<Vector> corners, int sense, double at) {
        double cos = StrictMath.cos(at);
        double sin = StrictMath.sin(at);
        Vector n = plane.normal();
        for (Vector p : corners) {
            if (level(n, p, plane.offset()) + inPhase(n, p) * cos + sense * across(n, p) * sin < 0) {
                return -1;
            }
        }
        double until = Double.POSITIVE_INFINITY;
        for (Vector p : corners) {
            double b = inPhase(n, p);
            double c = sense * across(n, p);
            until = Math.min(until, at + leaves(level(n, p, plane.offset()), b, c, at));
        }
        return until;
    }

    private static double level(Vector n, Vector p, double offset) {
        return n.z() * p.z() - offset + ON;
    }

    private static double inPhase(Vector n, Vector p) {
        return n.x() * p.x() + n.y() * p.y();
    }

    private static double across(Vector n, Vector p) {
        return n.y() * p.x() - n.x() * p.y();
    }

    /** How much further than {@code at} until a + b · cos + c · sin next falls through zero. */
    private static double leaves(double a, double b, double c, double at) {
        double swing = StrictMath.hypot(b, c);
        if (a >= swing) {
            return Double.POSITIVE_INFINITY;
        }
        double falls = StrictMath.atan2(c, b) + StrictMath.acos(Math.max(-1, -a / swing));
        double more = (falls - at) % ROUND;
        more = more < 0 ? more + ROUND : more;
        // Just past it by rounding, and still in front: it leaves now, not a turn later.
        return more > ROUND - SQUARE ? 0 : more;
    }
}
