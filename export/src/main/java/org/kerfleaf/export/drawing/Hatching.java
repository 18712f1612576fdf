package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.Arrays;

/**
 * Hatching of a cut face at 45 degrees (ISO 128-3, cuts and sections; formerly ISO 128-50): neighbouring parts differ in direction or
 * in spacing, and one part is hatched alike wherever it is cut.
 *
 * @param rising to the right
 * @param apart between two lines, square to them, in millimetres of paper; 0.7 at least
 */
record Hatching(boolean rising, double apart) {
    private static final double SHORT = 0.2;

    /** In the order in which neighbours take them. */
    private static final Hatching[] KINDS = {
        new Hatching(true, 1.5),
        new Hatching(false, 1.5),
        new Hatching(true, 2.4),
        new Hatching(false, 2.4),
        new Hatching(true, 3.6),
        new Hatching(false, 3.6)
    };

    /** The kind of that number, from 0; past the last they begin again. */
    static Hatching kind(int number) {
        return KINDS[number % KINDS.length];
    }

    static int kinds() {
        return KINDS.length;
    }

    /** The lines inside rings on paper; what is inside is told by the even-odd rule. */
    Path2D within(double[][] rings) {
        double sign = rising ? 1 : -1;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        int corners = 0;
        for (double[] ring : rings) {
            corners += ring.length / 2;
            for (int i = 0; i < ring.length; i += 2) {
                double c = ring[i] * sign + ring[i + 1];
                least = Math.min(least, c);
                most = Math.max(most, c);
            }
        }
        Path2D lines = new Path2D.Double();
        double step = apart * StrictMath.sqrt(2);
        for (double c = (Math.floor(least / step) + 0.5) * step; c < most; c += step) {
            double[] crossings = new double[corners];
            int count = crossings(rings, sign, c, crossings);
            for (int i = 0; i + 1 < count; i += 2) {
                if (crossings[i + 1] - crossings[i] > SHORT) {
                    lines.moveTo(crossings[i], c - sign * crossings[i]);
                    lines.lineTo(crossings[i + 1], c - sign * crossings[i + 1]);
                }
            }
        }
        return lines;
    }

    /** The x at which the line sign · x + y = c crosses the rings, in order. */
    private static int crossings(double[][] rings, double sign, double c, double[] crossings) {
        int count = 0;
        for (double[] ring : rings) {
            double px = ring[ring.length - 2];
            double before = sign * px + ring[ring.length - 1] - c;
            for (int i = 0; i < ring.length; i += 2) {
                double after = sign * ring[i] + ring[i + 1] - c;
                if (before > 0 != after > 0) {
                    crossings[count++] = px + (ring[i] - px) * before / (before - after);
                }
                px = ring[i];
                before = after;
            }
        }
        Arrays.sort(crossings, 0, count);
        return count;
    }
}
