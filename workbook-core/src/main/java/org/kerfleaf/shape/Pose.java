package org.kerfleaf.shape;

import org.kerfleaf.measure.Angle;

/**
 * Where a frame stands in another: its origin and its three axes, square to each other and right-handed.
 *
 * @param origin in millimetres
 * @param u one long
 * @param v one long
 * @param w one long, u × v
 */
public record Pose(Vector origin, Vector u, Vector v, Vector w) {
    /** The frame itself. */
    public static final Pose HOME = new Pose(Vector.ZERO, Vector.X, Vector.Y, Vector.Z);

    private static final double SQUARE = 1e-9;

    /** @throws IllegalArgumentException if the axes are not one long, square to each other and right-handed, to 1e-9 */
    public Pose {
        double off = Math.abs(u.dot(u) - 1)
                + Math.abs(v.dot(v) - 1)
                + Math.abs(u.dot(v))
                + u.cross(v).minus(w).length();
        if (!(off < SQUARE)) {
            throw new IllegalArgumentException(
                    "Axes %s, %s, %s: they would have to be one long, square to each other and right-handed (off by %s)."
                            .formatted(u, v, w, off));
        }
    }

    /** A frame with these two directions; the third follows. */
    public static Pose of(Vector origin, Vector u, Vector v) {
        return new Pose(origin, u, v, u.cross(v));
    }

    /** A frame whose w is this direction; u lies level wherever w is not upright. */
    static Pose facing(Vector origin, Vector w) {
        Vector level = Vector.Z.cross(w);
        Vector u = level.length() > 1e-6 ? level.normalised() : Vector.X;
        Vector v = w.cross(u).normalised();
        return new Pose(origin, v.cross(w), v, w);
    }

    /** A point said in this frame, in the frame around it. */
    public Vector toWorld(Vector point) {
        return origin.plus(turned(point));
    }

    /** A point of the frame around it, in this frame. */
    public Vector toLocal(Vector point) {
        Vector from = point.minus(origin);
        return new Vector(from.dot(u), from.dot(v), from.dot(w));
    }

    /** A direction said in this frame, in the frame around it. */
    public Vector turned(Vector direction) {
        return u.times(direction.x()).plus(v.times(direction.y())).plus(w.times(direction.z()));
    }

    /** The same way up, somewhere else. */
    public Pose moved(Vector by) {
        return new Pose(origin.plus(by), u, v, w);
    }

    /**
     * Turned about a line, counter-clockwise when looked at against the axis.
     *
     * @param point on the line
     * @param axis the line's direction, any length but zero
     */
    public Pose turnedAbout(Vector point, Vector axis, Angle angle) {
        Vector k = axis.normalised();
        Vector newU = rotated(u, k, angle).normalised();
        Vector newV = rotated(v, k, angle);
        newV = newV.minus(newU.times(newU.dot(newV))).normalised();
        Vector newOrigin = point.plus(rotated(origin.minus(point), k, angle));
        return new Pose(newOrigin, newU, newV, newU.cross(newV));
    }

    /** This pose seen from the frame that {@code outer} stands in: first this, then the outer. */
    public Pose then(Pose outer) {
        return new Pose(outer.toWorld(origin), outer.turned(u), outer.turned(v), outer.turned(w));
    }

    /** Rodrigues' rotation formula. */
    private static Vector rotated(Vector p, Vector k, Angle angle) {
        double cos = angle.cos();
        return p.times(cos).plus(k.cross(p).times(angle.sin())).plus(k.times(k.dot(p) * (1 - cos)));
    }
}
