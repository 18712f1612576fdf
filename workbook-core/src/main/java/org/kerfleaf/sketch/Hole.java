package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * A hole in the ground for a post.
 *
 * @param across its diameter
 * @param deep its depth
 * @param gravel depth of the gravel at its foot
 * @param filledWith what is tamped back, if said
 * @param frost the local frost depth, if said
 * @param post the placing that stands in it, if said
 */
public record Hole(
        Origin origin,
        Length across,
        Length deep,
        Length gravel,
        Optional<Soil> filledWith,
        Optional<Length> frost,
        Optional<Origin> post)
        implements Declaration {
    public Hole gravel(String depth) {
        return new Hole(origin, across, deep, SketchRun.length(depth), filledWith, frost, post);
    }

    public Hole tampedBack(Soil soil) {
        return new Hole(origin, across, deep, gravel, Optional.of(soil), frost, post);
    }

    /** How deep the ground freezes here. */
    public Hole frost(String depth) {
        return new Hole(origin, across, deep, gravel, filledWith, Optional.of(SketchRun.length(depth)), post);
    }

    public Hole forPost(Placing placing) {
        return new Hole(origin, across, deep, gravel, filledWith, frost, Optional.of(placing.origin()));
    }
}
