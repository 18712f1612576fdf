package org.kerfleaf.rain;

import org.kerfleaf.shape.Vector;

/**
 * A straight piece of water's way, in the middle of a strip of it.
 *
 * @param across from one border of that strip to the other
 */
public record Way(Kind kind, Vector from, Vector to, Vector across) {
    /** How water goes. */
    public enum Kind {
        /** Down the steepest way of a face. */
        OVER_FACE,
        /** Along something that stands in its way. */
        ALONG_DAM,
        /** Through the air. */
        FALLS
    }

    /** In millimetres. */
    public double length() {
        return to.minus(from).length();
    }
}
