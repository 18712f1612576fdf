package org.kerfleaf.shape;

import java.util.Iterator;

/** The smallest box round something, square in its frame, in millimetres. */
public record Bounds(Vector low, Vector high) {
    /** Round all of these points. @throws java.util.NoSuchElementException if there are none */
    public static Bounds of(Iterable<Vector> points) {
        Iterator<Vector> all = points.iterator();
        Vector low = all.next();
        Vector high = low;
        while (all.hasNext()) {
            Vector point = all.next();
            low = low.min(point);
            high = high.max(point);
        }
        return new Bounds(low, high);
    }

    /** Its three sizes. */
    public Vector sizes() {
        return high.minus(low);
    }

    public Vector middle() {
        return low.plus(high).times(0.5);
    }

    /** The smallest box round both. */
    public Bounds and(Bounds other) {
        return new Bounds(low.min(other.low), high.max(other.high));
    }

    /** Whether the two share a point, or come nearer than {@code within} millimetres along every axis. */
    public boolean isNear(Bounds other, double within) {
        return low.x() <= other.high.x() + within
                && other.low.x() <= high.x() + within
                && low.y() <= other.high.y() + within
                && other.low.y() <= high.y() + within
                && low.z() <= other.high.z() + within
                && other.low.z() <= high.z() + within;
    }
}
