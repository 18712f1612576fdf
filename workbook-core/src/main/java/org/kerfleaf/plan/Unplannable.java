package org.kerfleaf.plan;

import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Problem;

/** One declaration cannot be followed further; caught where the next one can, and kept as a problem. */
final class Unplannable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    Unplannable(Origin origin, String words) {
        super(words);
        this.problem = new Problem(origin, words);
    }

    Problem problem() {
        return problem;
    }
}
