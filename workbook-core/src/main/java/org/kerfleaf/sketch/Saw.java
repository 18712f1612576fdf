package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * The maker's circular saw.
 *
 * @param kerf the width of its cut, if said
 * @param left from the left edge of its base to the near face of the blade, if said
 * @param right from the right edge of its base to the near face of the blade, if said
 * @param trims what is trimmed off each edge of a new sheet; nothing unless said
 */
public record Saw(Origin origin, Optional<Length> kerf, Optional<Length> left, Optional<Length> right, Length trims)
        implements Declaration {
    public Saw kerf(String wide) {
        return new Saw(origin, Optional.of(SketchRun.length(wide)), left, right, trims);
    }

    public Saw baseToBlade(Side side, String distance) {
        Optional<Length> said = Optional.of(SketchRun.length(distance));
        return switch (side) {
            case LEFT -> new Saw(origin, kerf, said, right, trims);
            case RIGHT -> new Saw(origin, kerf, left, said, trims);
            default -> throw new SketchException("A saw's base has a LEFT and a RIGHT of the blade, not " + side + ".");
        };
    }

    public Saw trimsSheetBy(String much) {
        return new Saw(origin, kerf, left, right, SketchRun.length(much));
    }
}
