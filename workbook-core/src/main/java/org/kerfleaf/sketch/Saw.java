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
 * @group what we buy
 */
public record Saw(Origin origin, Optional<Length> kerf, Optional<Length> left, Optional<Length> right, Length trims)
        implements Declaration {
    /** How wide its cut is. @example circularSaw().kerf("1/8 in") */
    public Saw kerf(String wide) {
        return new Saw(origin, Optional.of(SketchRun.length(wide)), left, right, trims);
    }

    /**
     * From the LEFT or RIGHT edge of its base to the near face of the blade: how far from the line a straightedge is clamped.
     *
     * @example circularSaw().baseToBlade(LEFT, "1 1/2 in").baseToBlade(RIGHT, "5 in")
     */
    public Saw baseToBlade(Side side, String distance) {
        Optional<Length> said = Optional.of(SketchRun.length(distance));
        return switch (side) {
            case LEFT -> new Saw(origin, kerf, said, right, trims);
            case RIGHT -> new Saw(origin, kerf, left, said, trims);
            default -> throw new SketchException("A saw's base has a LEFT and a RIGHT of the blade, not " + side + ".");
        };
    }

    /** How much is trimmed off each edge of a new sheet; nothing unless said. @example circularSaw().trimsSheetBy("1/4 in") */
    public Saw trimsSheetBy(String much) {
        return new Saw(origin, kerf, left, right, SketchRun.length(much));
    }
}
