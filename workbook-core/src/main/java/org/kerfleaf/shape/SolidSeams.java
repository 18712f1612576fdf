package org.kerfleaf.shape;

import java.util.Collection;
import java.util.List;
import org.kerfleaf.measure.Length;

/** Where placed solids meet and air begins, inside the finished build and outside; leave out glazing. */
public final class SolidSeams {
    private final List<PlacedSolid> finished;

    /** @param finished every piece of the finished build: only that tells inside from outside */
    public SolidSeams(List<PlacedSolid> finished) {
        this.finished = List.copyOf(finished);
    }

    /** All seams, in the order of the pieces. */
    public List<Seam> seams() {
        throw new UnsupportedOperationException("not built yet for " + finished);
    }

    /** The length of the inside seams. */
    public Length inside() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The length of the inside seams between pieces that are there already. */
    public Length inside(Collection<PlacedSolid> there) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The length of the outside seams. */
    public Length outside() {
        throw new UnsupportedOperationException("not built yet");
    }
}
