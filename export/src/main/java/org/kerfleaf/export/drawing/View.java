package org.kerfleaf.export.drawing;

import org.kerfleaf.shape.Vector;

/**
 * A parallel view of the build: a point stands on paper at {@code (right · p, up · p)}, in millimetres of the build.
 *
 * @param name in words, for captions
 * @param right the row that gives how far to the right
 * @param up the row that gives how far up
 */
public record View(String name, Vector right, Vector up) {
    /** Standing before the door, looking to the back. */
    public static final View FRONT = new View("front", Vector.X, Vector.Z);

    /** From the right side, the back to the right. */
    public static final View SIDE = new View("right side", Vector.Y, Vector.Z);

    /** From above, the back up. */
    public static final View TOP = new View("top", Vector.X, Vector.Y);

    /** Dimetric axonometry, ISO 5456-3: width falls by 7 degrees, depth rises by 42 degrees at half its length. */
    public static final View DIMETRIC = dimetric(StrictMath.toRadians(7), StrictMath.toRadians(42));

    /** The same way from the opposite corner: the back and the left side are seen. */
    static final View BEHIND = new View(
            "dimetric, from behind",
            level(DIMETRIC.right).negated(),
            level(DIMETRIC.up).negated().plus(Vector.Z));

    private static Vector level(Vector vector) {
        return new Vector(vector.x(), vector.y(), 0);
    }

    private static View dimetric(double width, double depth) {
        return new View(
                "dimetric",
                new Vector(StrictMath.cos(width), StrictMath.cos(depth) / 2, 0),
                new Vector(-StrictMath.sin(width), StrictMath.sin(depth) / 2, 1));
    }

    /** The way from the build to the eye, one long: points along it share a place on paper. */
    public Vector toEye() {
        return right.cross(up).normalised();
    }

    /** Whether it looks along an axis, so that sizes can be given. */
    boolean isSquare() {
        Vector eye = toEye();
        return Math.abs(Math.max(Math.abs(eye.x()), Math.max(Math.abs(eye.y()), Math.abs(eye.z()))) - 1) < 1e-9
                && Math.abs(right.length() - 1) < 1e-9
                && Math.abs(up.length() - 1) < 1e-9;
    }

    double x(Vector point) {
        return right.dot(point);
    }

    double y(Vector point) {
        return up.dot(point);
    }
}
