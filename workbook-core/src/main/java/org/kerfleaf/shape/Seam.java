package org.kerfleaf.shape;

/**
 * A straight piece of a line along which two solids meet and air begins.
 *
 * @param air a point in that air, 0.3 mm from the line
 * @param inside whether that air is closed in by the finished build
 */
public record Seam(PlacedSolid a, PlacedSolid b, Vector from, Vector to, Vector air, boolean inside) {
    /** In millimetres. */
    public double length() {
        return to.minus(from).length();
    }
}
