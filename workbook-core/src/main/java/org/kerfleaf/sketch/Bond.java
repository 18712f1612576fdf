package org.kerfleaf.sketch;

/** The bond classes of structural plywood (PS 1-19): how its glue stands the weather. */
public enum Bond {
    /** It may stay out in the weather. */
    EXTERIOR("Exterior"),
    /** It stands a building delay, not the weather. */
    EXPOSURE_1("Exposure 1"),
    /** For indoors only. */
    INTERIOR("Interior");

    private final String words;

    Bond(String words) {
        this.words = words;
    }

    /** Whether it is for what stays out in the weather. */
    public boolean isForWeather() {
        return this == EXTERIOR;
    }

    /** The words on the label. */
    public String words() {
        return words;
    }
}
