package org.kerfleaf.joint;

/** What of a part a fastener holds in. */
public enum Hold {
    /** A board, across its grain. */
    SIDE_GRAIN("side grain"),
    /** A board's end, along its grain. */
    END_GRAIN("end grain"),
    /** A sheet's wide face. */
    SHEET_FACE("a sheet’s face"),
    /** A sheet's edge, between its plies. */
    SHEET_EDGE("a sheet’s edge"),
    /** Nothing: it goes right through and a nut holds it. */
    NUT("a nut");

    private final String words;

    Hold(String words) {
        this.words = words;
    }

    /** The words in a sentence. */
    public String words() {
        return words;
    }
}
