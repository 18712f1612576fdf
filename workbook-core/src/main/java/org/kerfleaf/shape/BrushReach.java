package org.kerfleaf.shape;

import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * What a brush can still reach of a build as it stands: a place is out of reach once it is closed in but for openings, or once
 * something stands so near before it that no brush goes between.
 */
public final class BrushReach {
    /** A brush goes in where there is this much room before a face. {@code Common practice, no source}. */
    public static final Length ROOM = Length.ofMillimetres(25L);

    private final Sight sight;

    /** @param there every piece that is in place by then; what hangs swings out of the way and is none of them */
    public BrushReach(List<PlacedSolid> there) {
        sight = new Sight(there);
    }

    /** Whether a brush comes to the place. */
    public boolean isReached(OpenFaces.Place place) {
        return sight.clear(place.before(), place.normal()) >= ROOM.inMillimetres()
                && (!sight.isInside(place.before()) || sight.wandersOut(place.before()));
    }
}
