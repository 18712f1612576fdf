package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * The maker's router.
 *
 * @param cutter how far across its rabbeting cutter is, if said
 * @param bite how deep it cuts in one pass, if said
 * @group what we buy
 */
public record Router(Origin origin, Optional<Length> cutter, Optional<Length> bite) implements Declaration {
    /** How far across its rabbeting cutter is; the bearing on it follows from a rabbet's width. @example router().cutter("1 3/8 in") */
    public Router cutter(String across) {
        return new Router(origin, Optional.of(SketchRun.positive("A cutter", SketchRun.length(across))), bite);
    }

    /** How deep it cuts in one pass; unless said the plan takes 1/8 in (3 mm) at most. @example router().bite("1/8 in") */
    public Router bite(String deep) {
        Length said = SketchRun.length(deep);
        if (!said.isPositive()) {
            throw new SketchException("A router takes a bite of %s. More than nothing would be right.".formatted(deep));
        }
        return new Router(origin, cutter, Optional.of(said));
    }
}
