package org.kerfleaf.shape;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Length;

/**
 * A box that stands square in the frame.
 *
 * @param low the lower end on each axis
 * @param extent its size on each axis, more than nothing
 */
public record Box(Map<Axis, Length> low, Map<Axis, Length> extent) {
    public Box {
        low = Map.copyOf(low);
        extent = Map.copyOf(extent);
    }

    /** A box of these sizes with its lower corner where the axes meet. */
    public static Box of(Length dx, Length dy, Length dz) {
        return new Box(
                Map.of(Axis.X, Length.ZERO, Axis.Y, Length.ZERO, Axis.Z, Length.ZERO),
                Map.of(Axis.X, dx, Axis.Y, dy, Axis.Z, dz));
    }

    /** The smallest box round all of these. */
    public static Box hull(List<Box> boxes) {
        Map<Axis, Length> low = new EnumMap<>(Axis.class);
        Map<Axis, Length> extent = new EnumMap<>(Axis.class);
        for (Axis axis : Axis.values()) {
            Length least =
                    boxes.stream().map(b -> b.low(axis)).reduce(Length::min).orElseThrow();
            Length most =
                    boxes.stream().map(b -> b.high(axis)).reduce(Length::max).orElseThrow();
            low.put(axis, least);
            extent.put(axis, most.minus(least));
        }
        return new Box(low, extent);
    }

    public Length low(Axis axis) {
        return low.get(axis);
    }

    public Length high(Axis axis) {
        return low.get(axis).plus(extent.get(axis));
    }

    public Length extent(Axis axis) {
        return extent.get(axis);
    }

    /** The middle, rounded to 1 nm. */
    public Length middle(Axis axis) {
        return low.get(axis).plus(extent.get(axis).half());
    }

    /** The same box with its lower end there. */
    public Box lowAt(Axis axis, Length at) {
        Map<Axis, Length> moved = new EnumMap<>(low);
        moved.put(axis, at);
        return new Box(moved, extent);
    }

    /** The same box moved by so much. */
    public Box movedBy(Axis axis, Length by) {
        return lowAt(axis, low(axis).plus(by));
    }

    /** The axis along which it is thinnest; the first of equals. */
    public Axis thinnest() {
        Axis thinnest = Axis.X;
        for (Axis axis : Axis.values()) {
            thinnest = extent(axis).isShorterThan(extent(thinnest)) ? axis : thinnest;
        }
        return thinnest;
    }
}
