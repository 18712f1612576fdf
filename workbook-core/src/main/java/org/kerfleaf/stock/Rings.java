package org.kerfleaf.stock;

/** Which way the growth rings lie in a board, seen at its end. */
public enum Rings {
    /** Flat sawn: along its width, so that it moves most. */
    FLAT("flat sawn"),
    /** Quarter sawn: through its thickness. */
    QUARTER("quarter sawn"),
    /** Nobody said; what moves more is reckoned with. */
    NOT_SAID("rings not said, so as flat sawn, which moves more");

    private final String words;

    Rings(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether the width lies along the rings, or may do so. */
    boolean along() {
        return this != QUARTER;
    }
}
