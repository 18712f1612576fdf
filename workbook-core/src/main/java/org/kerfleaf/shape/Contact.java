package org.kerfleaf.shape;

import java.util.Arrays;
import java.util.List;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;

/**
 * The rectangle over which two boxes touch.
 *
 * @param axis across which they touch
 * @param above whether the second lies on the upper side of the first along that axis
 */
public record Contact(Axis axis, boolean above, Box first, Box second) {
    /** The two axes the rectangle lies in. */
    public List<Axis> plane() {
        return Arrays.stream(Axis.values()).filter(a -> a != axis).toList();
    }

    /** Where the shared face is on its axis. */
    public Length at() {
        return above ? first.high(axis) : first.low(axis);
    }

    /** The longer way of the rectangle: what fasteners are spaced along. */
    public Length along() {
        return side(0).max(side(1));
    }

    /** The shorter way of the rectangle: what the fasteners' edge distance is taken from. */
    public Length across() {
        return side(0).min(side(1));
    }

    public Area area() {
        return side(0).by(side(1));
    }

    private Length side(int which) {
        return first.overlap(second, plane().get(which));
    }
}
