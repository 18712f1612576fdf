package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * Seams that are caulked.
 *
 * @param seams which
 * @param caulk with what, if said
 * @param bead how it lies and how thick it is, if said
 * @group sealing and paint
 */
public record Seal(Origin origin, Seams seams, Optional<Caulk> caulk, Optional<Bead> bead) implements Declaration {
    /** Which seams a set of seams holds. */
    public enum Which {
        /** The inside corners of what is put together by then. */
        INSIDE,
        /** Those of the finished build that rain reaches. */
        WET,
        /** As many as were measured on the work. */
        SAID
    }

    /**
     * A set of seams: the inside corners of what is put together at this step, those that rain reaches, or a length said outright.
     *
     * @param length for {@code SAID}
     * @group sealing and paint
     */
    public record Seams(Which which, Optional<Length> length) {}

    /** With this caulk, in a bead so thick. @example seal(insideSeams()).with(sealer, bead("1/4 in")) */
    public Seal with(Caulk sealer, Bead across) {
        return new Seal(origin, seams, Optional.of(sealer), Optional.of(across));
    }
}
