package org.kerfleaf.sketch;

/** Which way a board runs. @group sides and ways */
public enum Way {
    /** Along the front. @example place(slat).running(LEFT_TO_RIGHT).onTopOf(floorIn) */
    LEFT_TO_RIGHT,
    /** Square to the front. @example place(slat).running(FRONT_TO_BACK).onTopOf(floorIn) */
    FRONT_TO_BACK
}
