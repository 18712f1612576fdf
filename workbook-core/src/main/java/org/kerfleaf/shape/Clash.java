package org.kerfleaf.shape;

import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Volume;

/**
 * The space two solids are both in.
 *
 * @param frame the first solid's pose
 * @param bounds the smallest box round the space, square in that frame
 */
public record Clash(Volume volume, Pose frame, Bounds bounds) {
    /** The box's sides along the first solid's u, v and w. */
    public List<Length> sizes() {
        Vector sizes = bounds.sizes();
        return List.of(
                Length.ofMillimetres(sizes.x()), Length.ofMillimetres(sizes.y()), Length.ofMillimetres(sizes.z()));
    }

    /** The middle of the box, in the build. */
    public Vector middle() {
        return frame.toWorld(bounds.middle());
    }
}
