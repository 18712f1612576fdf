package org.kerfleaf.shape;

/** The three directions. */
public enum Axis {
    X("left to right"),
    Y("front to back"),
    Z("up and down");

    private final String words;

    Axis(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
