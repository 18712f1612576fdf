package org.kerfleaf.sketch;

/** Sides, edges and faces, said standing before the door. @group sides and ways */
public enum Side {
    /** The left, standing before the door. @example fit(knob()).at(doorIn, LEFT) */
    LEFT,
    /** The right, standing before the door. @example fit(knob()).at(doorIn, RIGHT) */
    RIGHT,
    /** The side with the door. @example place(slat).flat().running(LEFT_TO_RIGHT).onTopOf(floorIn).flushAt(FRONT) */
    FRONT,
    /** The side away from the door. @example place(slat).flat().running(LEFT_TO_RIGHT).onTopOf(floorIn).flushAt(BACK) */
    BACK,
    /**
     * The upper side or edge.
     *
     * @example panel("End", ply).deep("8 in").high("20 in").rabbet(INSIDE, TOP, wide("3/4 in"), deep("3/8 in")).times(1)
     */
    TOP,
    /** The lower side or edge. @example place(slat).standing().rightOf(floorIn).flushAt(BOTTOM) */
    BOTTOM,
    /** The face that looks into the build. @example Length clear = held(INSIDE, "Clear width", "22 in").between(ply, ply) */
    INSIDE,
    /** The face that looks out. @example Length clear = held(OUTSIDE, "Whole width", "24 in").between(ply, ply) */
    OUTSIDE,
    /**
     * The lower edges of a roof.
     *
     * @example panel("Wide roof", ply).overGables(front, back).past(EAVES, length("2 in")).meetsTwin(RIDGE).pair()
     */
    EAVES,
    /**
     * The ends of a roof, over its gables.
     *
     * @example panel("Wide roof", ply).overGables(front, back).past(GABLES, length("2 in")).meetsTwin(RIDGE).pair()
     */
    GABLES,
    /** The line where two roof halves meet. @example panel("Wide roof", ply).overGables(front, back).meetsTwin(RIDGE).pair() */
    RIDGE;

    /** The word in a sentence. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
