package org.kerfleaf.shape;

/** The (x, y) for which {@code a·x + b·y <= d}, in millimetres; a and b need not be of length one. */
record HalfPlane(double a, double b, double d) {
    /** How far beyond the line, in millimetres; negative inside. */
    double beyond(double x, double y) {
        return (a * x + b * y - d) / StrictMath.hypot(a, b);
    }
}
