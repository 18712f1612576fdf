package org.kerfleaf.sketch;

import java.util.Optional;

/**
 * A size the reader may change.
 *
 * @param label its name on the page, which is its identity
 * @param kind what it measures
 * @param value as it holds in this run, in canonical text
 * @param least the smallest allowed, in canonical text, if said
 * @param most the largest allowed
 */
public record Size(Origin origin, String label, Kind kind, String value, Optional<String> least, Optional<String> most)
        implements Declaration {
    /** What a size measures. */
    public enum Kind {
        /** A length. */
        LENGTH,
        /** An angle or slope. */
        ANGLE,
        /** A number of things. */
        COUNT,
        /** One of several words. */
        CHOICE
    }
}
