package org.kerfleaf.sketch;

/** The bond classes of structural plywood (PS 1-19): how its glue stands the weather. */
public enum Bond {
    EXTERIOR("Exterior"),
    EXPOSURE_1("Exposure 1"),
    INTERIOR("Interior");

    private final String words;

    Bond(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
