package org.kerfleaf.shape;

import java.util.List;

/** How far it is through the air of a build to the next piece. Openings count as closed. */
public final class ClearSpace {
    private final Sight sight;

    /** @param pieces every piece of the build, panes too */
    public ClearSpace(List<PlacedSolid> pieces) {
        this.sight = new Sight(pieces);
    }

    /**
     * From a point in the air, in millimetres; infinite where nothing is met.
     *
     * @param direction one long
     */
    public double from(Vector point, Vector direction) {
        return sight.clear(point, direction);
    }
}
