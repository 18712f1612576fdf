package org.kerfleaf.shape;

/**
 * A point or a direction in space, in millimetres.
 *
 * <p>Doubles: sizes are exact in nanometres up to a part's own frame, and a pose turns them into these.
 *
 * @param x to the right, or along a part's u
 * @param y to the back, or along a part's v
 * @param z up, or along a part's w
 */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);
    public static final Vector X = new Vector(1, 0, 0);
    public static final Vector Y = new Vector(0, 1, 0);
    public static final Vector Z = new Vector(0, 0, 1);

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    public Vector negated() {
        return new Vector(-x, -y, -z);
    }

    /** The scalar product. */
    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The vector product: square to both, right-handed. */
    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** Its length, in millimetres. */
    public double length() {
        return StrictMath.sqrt(dot(this));
    }

    /** The same direction, one long. @throws ArithmeticException if this is too short to have a direction */
    public Vector normalised() {
        double length = length();
        if (!(length > 1e-12)) {
            throw new ArithmeticException("A vector of length %s mm has no direction.".formatted(length));
        }
        return times(1 / length);
    }

    /** The smaller of each coordinate. */
    public Vector min(Vector other) {
        return new Vector(Math.min(x, other.x), Math.min(y, other.y), Math.min(z, other.z));
    }

    /** The larger of each coordinate. */
    public Vector max(Vector other) {
        return new Vector(Math.max(x, other.x), Math.max(y, other.y), Math.max(z, other.z));
    }
}
