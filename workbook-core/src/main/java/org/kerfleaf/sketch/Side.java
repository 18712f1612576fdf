package org.kerfleaf.sketch;

/** Sides, edges and faces, said standing before the door. */
public enum Side {
    LEFT,
    RIGHT,
    FRONT,
    BACK,
    TOP,
    BOTTOM,
    INSIDE,
    OUTSIDE,
    EAVES,
    GABLES,
    RIDGE;

    /** The word in a sentence. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
