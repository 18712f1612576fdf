package org.kerfleaf.sketch;

/** Which way a board runs. */
public enum Way {
    LEFT_TO_RIGHT,
    FRONT_TO_BACK
}
