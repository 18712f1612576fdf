package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * The maker's jigsaw.
 *
 * @param blade how wide its blade is, front to back, if said
 * @group what we buy
 */
public record Jigsaw(Origin origin, Optional<Length> blade) implements Declaration {
    /** How wide its blade is, front to back; a start hole is 1/8 in (3 mm) wider. @example jigsaw().blade("5/16 in") */
    public Jigsaw blade(String wide) {
        return new Jigsaw(origin, Optional.of(SketchRun.positive("A blade", SketchRun.length(wide))));
    }
}
