package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/**
 * Which offcuts are worth keeping. Common practice, no source: a strip under a hand's width, or a rectangle smaller
 * than a paperback's two covers, is rarely found again when it is wanted.
 */
final class OffcutRule {
    /** A sheet offcut's shorter side: 100 mm, near enough 4 in. */
    static final Length SHORTEST_SIDE = Length.ofMillimetres(100);

    /** A sheet offcut's area: half a square foot, 72 square inches, in square nanometres. */
    static final double SMALLEST_AREA = 72 * 25.4e6 * 25.4e6;

    private OffcutRule() {}

    static boolean keepsSheet(long length, long width) {
        return Math.min(length, width) >= SHORTEST_SIDE.nanometres() && area(length, width) >= SMALLEST_AREA;
    }

    static double area(long length, long width) {
        return (double) length * width;
    }
}
