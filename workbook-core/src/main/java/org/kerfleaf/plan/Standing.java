package org.kerfleaf.plan;

import org.kerfleaf.shape.Axis;

/** How a part stands, which follows from the sizes that were said. */
enum Standing {
    /** Wide and deep: its faces look up and down. */
    LIES(Axis.X, Axis.Y, Axis.Z),
    /** Wide and high: its faces look to the front and back. */
    FACES_FRONT(Axis.X, Axis.Z, Axis.Y),
    /** Deep and high: its faces look left and right. */
    FACES_SIDE(Axis.Y, Axis.Z, Axis.X),
    /** On a slope: not square in the frame. */
    SLOPES(Axis.Y, Axis.X, Axis.Z),
    /** A board: said where it is placed. */
    AS_PLACED(Axis.X, Axis.Z, Axis.Y);

    private final Axis across;
    private final Axis up;
    private final Axis through;

    Standing(Axis across, Axis up, Axis through) {
        this.across = across;
        this.up = up;
        this.through = through;
    }

    /** The axis its first size runs along. */
    Axis across() {
        return across;
    }

    /** The axis its second size runs along. */
    Axis up() {
        return up;
    }

    /** The axis its thickness runs along. */
    Axis through() {
        return through;
    }
}
