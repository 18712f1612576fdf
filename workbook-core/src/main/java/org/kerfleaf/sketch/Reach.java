package org.kerfleaf.sketch;

/** Who reaches for it, by the bands of the ADA standards. @group the place */
public enum Reach {
    /** Grown people, standing or in a chair. @example site().reachedBy(ADULT) */
    ADULT("an adult, standing or seated"),
    /** Children of 3 and 4 years. @example site().reachedBy(CHILD_3_TO_4) */
    CHILD_3_TO_4("a child of 3 or 4"),
    /** Children of 5 to 8 years. @example site().reachedBy(ADULT, CHILD_5_TO_8) */
    CHILD_5_TO_8("a child of 5 to 8"),
    /** Children of 9 to 12 years. @example site().reachedBy(CHILD_9_TO_12) */
    CHILD_9_TO_12("a child of 9 to 12");

    private final String words;

    Reach(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }
}
