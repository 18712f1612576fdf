package org.kerfleaf.shape;

/** The three directions. */
public enum Axis {
    X("left to right", Vector.X),
    Y("front to back", Vector.Y),
    Z("up and down", Vector.Z);

    private final String words;
    private final Vector unit;

    Axis(String words, Vector unit) {
        this.words = words;
        this.unit = unit;
    }

    /** Along it, one long. */
    public Vector unit() {
        return unit;
    }

    public String words() {
        return words;
    }
}
