package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Side;

/** One piece on its way to its place: where its lower end is on the axes that are fixed so far, and by which word. */
final class Spot {
    private record Fixed(Length low, String word) {}

    private final Placing placing;
    private final Box loose;
    private final MeasureStyle style;
    private final Map<Axis, Fixed> fixed;

    Spot(Placing placing, Box loose, MeasureStyle style) {
        this(placing, loose, style, Map.of());
    }

    private Spot(Placing placing, Box loose, MeasureStyle style, Map<Axis, Fixed> fixed) {
        this.placing = placing;
        this.loose = loose;
        this.style = style;
        this.fixed = fixed;
    }

    Placing placing() {
        return placing;
    }

    /** On that side of the other, with a gap between them. */
    Spot beside(Side side, Box other, Length gap) {
        return switch (side) {
            case LEFT -> highAt(Axis.X, other.low(Axis.X).minus(gap), "on the left");
            case RIGHT -> lowAt(Axis.X, other.high(Axis.X).plus(gap), "on the right");
            case FRONT -> highAt(Axis.Y, other.low(Axis.Y).minus(gap), "in front");
            case BACK -> lowAt(Axis.Y, other.high(Axis.Y).plus(gap), "behind");
            case TOP -> lowAt(Axis.Z, other.high(Axis.Z).plus(gap), "on top");
            case BOTTOM -> highAt(Axis.Z, other.low(Axis.Z).minus(gap), "under");
            default ->
                throw new Unplannable(
                        placing.origin(),
                        "“%s” cannot be placed on the %s of another part.".formatted(placing.part(), side.words()));
        };
    }

    /** Touching a thin part, on the side where the first part named is. */
    Spot against(Box other, Box first) {
        Axis axis = other.thinnest();
        return first.middle(axis).isShorterThan(other.middle(axis))
                ? highAt(axis, other.low(axis), "against")
                : lowAt(axis, other.high(axis), "against");
    }

    Spot flush(Side side, Box with) {
        return switch (side) {
            case LEFT -> lowAt(Axis.X, with.low(Axis.X), "flush at left");
            case RIGHT -> highAt(Axis.X, with.high(Axis.X), "flush at right");
            case FRONT -> lowAt(Axis.Y, with.low(Axis.Y), "flush at front");
            case BACK -> highAt(Axis.Y, with.high(Axis.Y), "flush at back");
            case BOTTOM -> lowAt(Axis.Z, with.low(Axis.Z), "flush at bottom");
            case TOP -> highAt(Axis.Z, with.high(Axis.Z), "flush at top");
            default ->
                throw new Unplannable(
                        placing.origin(),
                        "“%s” cannot be flush at %s. An edge like BOTTOM would do."
                                .formatted(placing.part(), side.words()));
        };
    }

    Spot middle(Axis axis, Length at, String word) {
        return lowAt(axis, at.minus(loose.extent(axis).half()), word);
    }

    /** So many evenly in the space between two boxes that stand apart on one axis. */
    List<Spot> between(Box one, Box other, int pieces) {
        for (Axis axis : Axis.values()) {
            Box near = one.low(axis).isShorterThan(other.low(axis)) ? one : other;
            Length from = near.high(axis);
            Length to = (near == one ? other : one).low(axis);
            if (!to.isShorterThan(from)) {
                return between(axis, from, to, pieces);
            }
        }
        throw new Unplannable(
                placing.origin(),
                "“%s” goes between two parts that leave no space between them.".formatted(placing.part()));
    }

    private List<Spot> between(Axis axis, Length from, Length to, int pieces) {
        Length extent = loose.extent(axis);
        Length free = to.minus(from).minus(extent.times(pieces));
        if (free.isNegative()) {
            throw new Unplannable(
                    placing.origin(),
                    "%d × “%s”, %s %s, do not fit in the %s between. Fewer, or narrower, would do."
                            .formatted(pieces, placing.part(), extent, axis.words(), to.minus(from)));
        }
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            Length gaps = free.times(i + 1L).dividedBy(pieces + 1L);
            spots.add(lowAt(axis, from.plus(gaps, extent.times(i)), "between"));
        }
        return spots;
    }

    /** The box where all words put it; what none fixed is centred on the first part named. */
    Box settled(Optional<Box> first) {
        Box box = loose;
        for (Axis axis : Axis.values()) {
            Fixed at = fixed.get(axis);
            if (at != null) {
                box = box.lowAt(axis, at.low());
            } else if (first.isPresent()) {
                box = box.lowAt(
                        axis, first.get().middle(axis).minus(loose.extent(axis).half()));
            }
        }
        return box;
    }

    private Spot highAt(Axis axis, Length at, String word) {
        return lowAt(axis, at.minus(loose.extent(axis)), word);
    }

    private Spot lowAt(Axis axis, Length at, String word) {
        Fixed earlier = fixed.get(axis);
        if (earlier != null && !earlier.low().equals(at)) {
            throw new Unplannable(
                    placing.origin(),
                    "%s: “%s” and “%s” disagree by %s %s."
                            .formatted(
                                    placing.part(),
                                    earlier.word(),
                                    word,
                                    Clashes.distance(at.minus(earlier.low()).absolute(), style),
                                    axis.words()));
        }
        Map<Axis, Fixed> more = new EnumMap<>(Axis.class);
        more.putAll(fixed);
        more.put(axis, new Fixed(at, word));
        return new Spot(placing, loose, style, more);
    }
}
