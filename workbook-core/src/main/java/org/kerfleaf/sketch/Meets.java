package org.kerfleaf.sketch;

import org.kerfleaf.measure.Angle;

/**
 * What the end of a board meets, from which a saw's setting follows.
 *
 * @param one the scale's number, the corner, a slope, or how far a brace rises from level: as the kind asks
 * @param other the other slope of a peak, or how far out the boards of a corner lean from upright; else zero
 * @group shapes
 */
public record Meets(Kind kind, Angle one, Angle other) {
    /** How an end meets its neighbour. */
    public enum Kind {
        /** The scale's number was said outright. */
        SCALE,
        /** Its like, in a corner that was measured. */
        CORNER,
        /** Its like, at a peak between two slopes. */
        PEAK,
        /** Fascia and rake at an eave, by tilt alone. */
        EAVE,
        /** The rake's end where the fascia stands plumb. */
        PLUMB_EAVE,
        /** A brace's end at the post. */
        POST,
        /** A brace's end under what it carries. */
        UNDERSIDE
    }

    static Meets scale(Angle scale) {
        return new Meets(Kind.SCALE, scale, Angle.ZERO);
    }

    /**
     * The boards of the corner lean out so far from upright, as a planter's sides or a crown moulding does: the blade is tilted
     * too.
     *
     * @example board("Crown", strip).cutTo("20 in").mitred(LEFT, corner("90 deg").leaning("38 deg"), BOTTOM).times(4)
     */
    public Meets leaning(String fromUpright) {
        return leaning(Angle.parse(fromUpright));
    }

    /** The boards of the corner lean out so far from upright, as an angle: a slope the reader may change, say. */
    public Meets leaning(Angle fromUpright) {
        if (kind != Kind.CORNER || fromUpright.nanodegrees() < 0 || fromUpright.compareTo(Angle.RIGHT) >= 0) {
            throw new SketchException(
                    "A corner's boards lean %s from upright. A corner(...), and 0° to less than 90°, would be right."
                            .formatted(fromUpright));
        }
        return new Meets(kind, one, fromUpright);
    }
}
