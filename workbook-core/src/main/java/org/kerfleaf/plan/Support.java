package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Side;

/**
 * What carries something on one slope.
 *
 * @param slope of the first of them that has a sloping top
 * @param sloped where that one stands
 * @param all the box round all of them
 */
record Support(Slope slope, Box sloped, Box all) {
    /** Empty if none has a sloping top. */
    static Optional<Support> of(List<Origin> keys, Function<Origin, SizedPart> parts, Function<Origin, Box> boxes) {
        Box all = Box.hull(keys.stream().map(boxes).toList());
        for (Origin key : keys) {
            Optional<Slope> slope = Slope.of(parts.apply(key));
            if (slope.isPresent()) {
                return Optional.of(new Support(slope.get(), boxes.apply(key), all));
            }
        }
        return Optional.empty();
    }

    /**
     * Where a build's frame stands once it lies on the slope, with one end in line or past, or else in the middle.
     *
     * @param hull of the build as it lies level
     */
    Pose lying(Mount mount, Box hull) {
        boolean low =
                mount.flushAt().map(side -> side == lowOrHigh(mount, side)).orElse(true);
        double run = all.extent(slope.along()).inMillimetres() / slope.angle().cos();
        double length = hull.extent(slope.along()).inMillimetres();
        double past = mount.past().inMillimetres();
        if (mount.flushAt().isEmpty()) {
            past = (length - run) / 2;
        } else if (!low) {
            past = length - run - past;
        }
        Vector target = slope.lowEnd(sloped, all, past);
        double sign = slope.towardsHigh() ? 1 : -1;
        Vector along = slope.up().times(sign);
        Vector u = slope.along() == Axis.X ? along : Vector.X;
        Vector v = slope.along() == Axis.X ? Vector.Y : along;
        Pose turned = Pose.of(Vector.ZERO, u, v);
        double end = (slope.towardsHigh() ? hull.low(slope.along()) : hull.high(slope.along())).inMillimetres();
        double middle = hull.middle(slope.level()).inMillimetres();
        double foot = hull.low(Axis.Z).inMillimetres();
        Vector from = slope.along() == Axis.X ? new Vector(end, middle, foot) : new Vector(middle, end, foot);
        return turned.moved(target.minus(turned.toWorld(from)));
    }

    /** The lower side, if the end said is the lower one. */
    private Side lowOrHigh(Mount mount, Side said) {
        if (said != slope.lowSide() && said != slope.highSide()) {
            throw new Unplannable(
                    mount.origin(),
                    "The slope's ends are at %s and %s, not at %s."
                            .formatted(slope.lowSide().words(), slope.highSide().words(), said.words()));
        }
        return slope.lowSide();
    }
}
