package org.kerfleaf.sketch;

/** An edge of a part, by name. */
public record EdgeOf(String part, Edge edge) {
    /** The edges of a roof half. */
    public enum Edge {
        /** Its sloping edge. */
        RAKE,
        /** Its lower edge. */
        EAVE,
        /** Its upper edge. */
        RIDGE
    }
}
