package org.kerfleaf.shape;

import org.kerfleaf.measure.Angle;

/**
 * A plane that a part is sawn off at: it keeps the points with {@code normal · p <= offset}.
 *
 *
 * <p>A part's own cut square to the sheet belongs in its outline, where the edge keeps its name; a plane that a drawing slices at
 * may stand any way.
 *
 * @param name of the face it leaves
 * @param normal one long, out of the part, in the part's frame
 * @param offset in millimetres
 */
public record Cut(String name, Vector normal, double offset) {
    /** The least share of w in the normal: about a fifth of a second of arc. */
    private static final double LEVEL = 1e-6;

    /** @throws IllegalArgumentException if the normal is not one long */
    public Cut {
        if (!(Math.abs(normal.length() - 1) < 1e-9)) {
            throw new IllegalArgumentException("Cut (%s): its normal %s should be one long.".formatted(name, normal));
        }
    }

    /** Whether it stands square to the sheet, so that no w of it can be told from (u, v). */
    boolean isSquare() {
        return Math.abs(normal.z()) < LEVEL;
    }

    /** The blade's tilt from square to the sheet: asin |n.w|. */
    public Angle tilt() {
        return Angle.ofDegrees(StrictMath.toDegrees(StrictMath.asin(Math.min(1, Math.abs(normal.z())))));
    }

    /** The direction square to the cut in the sheet, counter-clockwise from u: atan2(n.v, n.u). */
    public Angle inSheet() {
        return Angle.ofDegrees(StrictMath.toDegrees(StrictMath.atan2(normal.y(), normal.x())));
    }

    /** How far beyond the cut a point is; negative in the part. */
    double beyond(Vector point) {
        return normal.dot(point) - offset;
    }

    /** Where the cut crosses the sheet at that height: keeps the (u, v) for which the half-plane holds. */
    HalfPlane at(double w) {
        return new HalfPlane(normal.x(), normal.y(), offset - normal.z() * w);
    }
}
