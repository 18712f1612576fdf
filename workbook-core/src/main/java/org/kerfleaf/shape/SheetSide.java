package org.kerfleaf.shape;

/** The two wide faces of a part: OUTSIDE, or lower, is w = 0; INSIDE, or upper, is w = its thickness. */
public enum SheetSide {
    OUTSIDE,
    INSIDE;

    public SheetSide other() {
        return this == OUTSIDE ? INSIDE : OUTSIDE;
    }
}
