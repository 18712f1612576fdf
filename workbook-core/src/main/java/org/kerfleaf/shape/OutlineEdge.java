package org.kerfleaf.shape;

import org.kerfleaf.measure.Length;

/**
 * One edge of a ring, straight or an arc.
 *
 * @param from its start; the ring runs counter-clockwise
 * @param sweep how far an arc turns on its way, in radians: positive bulges out of the ring, negative in, 0 is straight
 */
public record OutlineEdge(String name, Point from, Point to, double sweep) {
    /** A point of the sheet, exact in nanometres. */
    public record Point(Length u, Length v) {
        double x() {
            return u.inMillimetres();
        }

        double y() {
            return v.inMillimetres();
        }

        Point moved(Length du, Length dv) {
            return new Point(u.plus(du), v.plus(dv));
        }

        /** Rounded to 1 nm. */
        static Point at(double u, double v) {
            return new Point(Length.ofMillimetres(u), Length.ofMillimetres(v));
        }
    }

    public boolean isArc() {
        return sweep != 0;
    }

    /** How long it is, along the arc if it is one. */
    public Length length() {
        return Length.ofMillimetres(isArc() ? radius() * Math.abs(sweep) : chord());
    }

    /** Its radius in millimetres; endless for a straight edge. */
    double radius() {
        return chord() / 2 / StrictMath.sin(Math.abs(sweep) / 2);
    }

    double chord() {
        return StrictMath.hypot(to.x() - from.x(), to.y() - from.y());
    }

    /** The area between arc and chord, positive where it bulges out: r²/2 · (sweep − sin sweep). */
    double segment() {
        return isArc() ? radius() * radius() / 2 * (sweep - StrictMath.sin(sweep)) : 0;
    }

    /** The arc's centre: {x, y} in millimetres. */
    double[] centre() {
        double back = Math.signum(sweep) * radius() * StrictMath.cos(sweep / 2) / chord();
        return new double[] {
            (from.x() + to.x()) / 2 - (to.y() - from.y()) * back, (from.y() + to.y()) / 2 + (to.x() - from.x()) * back
        };
    }

    /** A point on the way, in millimetres: 0 is the start, 1 the end. */
    double[] along(double share) {
        if (!isArc()) {
            return new double[] {
                from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()),
            };
        }
        double[] centre = centre();
        double cos = StrictMath.cos(share * sweep);
        double sin = StrictMath.sin(share * sweep);
        double x = from.x() - centre[0];
        double y = from.y() - centre[1];
        return new double[] {centre[0] + x * cos - y * sin, centre[1] + x * sin + y * cos};
    }

    /** The centroid of the piece between arc and chord, on the bisector 4r sin³(φ/2) / 3(φ − sin φ) from the centre. */
    double[] segmentCentroid() {
        double[] centre = centre();
        double[] middle = along(0.5);
        double angle = Math.abs(sweep);
        double half = StrictMath.sin(angle / 2);
        double out = 4 * half * half * half / (3 * (angle - StrictMath.sin(angle)));
        return new double[] {
            centre[0] + (middle[0] - centre[0]) * out, centre[1] + (middle[1] - centre[1]) * out,
        };
    }

    /** Which way it leaves its start, in radians from u. */
    double leaves() {
        return StrictMath.atan2(to.y() - from.y(), to.x() - from.x()) - sweep / 2;
    }

    /** Which way it comes to its end, in radians from u. */
    double arrives() {
        return leaves() + sweep;
    }
}
