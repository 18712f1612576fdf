package org.kerfleaf.sketch;

import java.util.Optional;

/**
 * One finished build moved onto another.
 *
 * @param what the placing by which the build is held
 * @param onTopOf the placing it comes to stand on, if said
 */
public record Mount(Origin origin, Origin what, Optional<Origin> onTopOf) implements Declaration {
    public Mount onTopOf(Placing other) {
        return new Mount(origin, what, Optional.of(other.origin()));
    }

    /** In the middle of it, left to right and front to back; where nothing else is said it is anyway. */
    public Mount centred() {
        return this;
    }
}
