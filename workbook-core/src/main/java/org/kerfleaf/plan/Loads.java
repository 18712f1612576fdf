package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.Moment;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.stock.Stiffness;

/**
 * What parts carry, and what people lift. Estimates, all of them.
 *
 * @param carried every load that was said, in document order
 * @param lifted every build that is lifted onto another
 * @param filled every build that is filled
 */
public record Loads(List<Carried> carried, List<Lifted> lifted, List<Filled> filled) {
    public Loads {
        carried = List.copyOf(carried);
        lifted = List.copyOf(lifted);
        filled = List.copyOf(filled);
    }

    /**
     * A load on a part.
     *
     * @param part that carries it
     * @param area it lies on, seen from above
     * @param load all of it
     * @param bending of one piece, if its free span and its stiffness are known
     */
    public record Carried(String part, Figure<Area> area, Figure<Mass> load, Optional<Bending> bending) {}

    /**
     * How a piece bends under it.
     *
     * @param span how far it hangs free
     * @param onSpan what of the load lies there
     * @param stiffness along its grain
     * @param sag in the middle when first loaded
     * @param sagInTime the same after months under load
     * @param limits the usual limits
     */
    public record Bending(
            Figure<Length> span,
            Figure<Mass> onSpan,
            Figure<Stiffness> stiffness,
            Figure<Length> sag,
            Figure<Length> sagInTime,
            List<Limited> limits) {
        public Bending {
            limits = List.copyOf(limits);
        }
    }

    /**
     * A sag held to one limit.
     *
     * @param allowed over this span
     * @param longest span on which this load would just stay within it
     */
    public record Limited(SagLimit limit, Length allowed, Figure<Length> longest) {}

    /**
     * A build that people lift.
     *
     * @param part by which it is held
     * @param weight of its parts, hardware not counted; empty if a density is not known
     * @param fromLeft where it balances, from its left side
     * @param fromFront likewise from its front
     * @param up likewise above its underside
     * @param people who lift it
     * @param share of the one who holds most, where one stands at either end
     * @param limit what they may lift together, if it is known how high it stood before
     * @param outOfPost how far from the post's middle it balances
     * @param tipping moment about the post
     * @param holding fasteners that hold it before anybody lets go
     */
    public record Lifted(
            String part,
            Optional<Figure<Mass>> weight,
            Optional<Figure<Length>> fromLeft,
            Optional<Figure<Length>> fromFront,
            Optional<Figure<Length>> up,
            int people,
            Optional<Figure<Mass>> share,
            Optional<Figure<Mass>> limit,
            Optional<Figure<Length>> outOfPost,
            Optional<Figure<Moment>> tipping,
            Holding holding) {}

    /**
     * A build with something in it.
     *
     * @param part that stands round it
     * @param what fills it
     * @param volume of that
     * @param weight of that, if its density was said
     * @param together with the wood, if that is known too
     */
    public record Filled(
            String part,
            String what,
            Figure<Volume> volume,
            Optional<Figure<Mass>> weight,
            Optional<Figure<Mass>> together) {}

    /** Fasteners between a lifted build and what it stands on, on either side of where it balances. */
    public record Holding(int left, int right, int front, int back) {
        /** How many are on the poorer side, the way it is better held. */
        public int eachSide() {
            return Math.max(Math.min(left, right), Math.min(front, back));
        }
    }
}
