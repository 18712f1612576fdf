package org.kerfleaf.sketch;

/** An edge of a part, by name. */
public record EdgeOf(String part, Edge edge) {
    /** The edges of a roof half. */
    public enum Edge {
        RAKE,
        EAVE,
        RIDGE
    }
}
