package org.kerfleaf.joint;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Vector;

/**
 * A fastener in its place in the build; x to the right, y to the back, z up, in millimetres.
 *
 * @param head the middle of its hole on the face it is driven from
 * @param tip where it ends: a screw's or nail's point, the far face for a bolt
 * @param diameter of its shank; empty if that is not known, as for a finish nail of which only the length was said
 */
public record DrivenFastener(Kind kind, Vector head, Vector tip, Optional<Length> diameter) {
    /** What is driven. */
    public enum Kind {
        SCREW,
        NAIL,
        BOLT
    }

    /** How much wood is left between two shanks from two directions: 1/4 in (6.35 mm). */
    public static final Length BETWEEN = Length.ofSixtyFourths(16);

    /** Where {@link #BETWEEN} is from. */
    public static final String BETWEEN_SOURCE =
            Reason.GEOMETRY + "; 1/4 in (6 mm) of wood between two shanks is " + Reason.COMMON_PRACTICE;

    /** Directions nearer to one another than this, as the sine between them, are one. */
    private static final double ONE_WAY = 0.02;

    /** From head to tip, one long. */
    public Vector way() {
        return tip.minus(head).normalised();
    }

    /** Whether another comes from another direction: only then can the two meet. Head on is another direction. */
    public boolean isCrossedBy(DrivenFastener other) {
        Vector own = way();
        Vector its = other.way();
        return own.dot(its) < 0 || own.cross(its).length() > ONE_WAY;
    }

    /** How near the middles of both shanks come to each other. */
    public Length between(DrivenFastener other) {
        return Length.ofMillimetres(Segments.distance(head, tip, other.head, other.tip));
    }

    /** Both radii together; a shank of unknown thickness counts as a line. */
    public Length radii(DrivenFastener other) {
        return diameter.orElse(Length.ZERO)
                .plus(other.diameter.orElse(Length.ZERO))
                .half();
    }

    /** How far apart the middles should be: both radii and {@link #BETWEEN}. */
    public Length wanted(DrivenFastener other) {
        return radii(other).plus(BETWEEN);
    }
}
