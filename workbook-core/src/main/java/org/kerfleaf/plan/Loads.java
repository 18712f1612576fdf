package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.Moment;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.stock.CrossSection;
import org.kerfleaf.stock.Stiffness;

/**
 * What goes in, what parts carry, and what people lift. Estimates, all loads of them.
 *
 * @param contents every kind of thing that must go in, for each it was said to stand on, in document order
 * @param carried every load that was said, in document order
 * @param snow what lies on roofs and lids, if the ground's snow load was said
 * @param lifted every build that is lifted onto another
 */
public record Loads(List<Contained> contents, List<Carried> carried, Optional<Snow> snow, List<Lifted> lifted) {
    /** None of them. */
    public static final Loads NONE = new Loads(List.of(), List.of(), Optional.empty(), List.of());

    public Loads {
        contents = List.copyOf(contents);
        carried = List.copyOf(carried);
        lifted = List.copyOf(lifted);
    }

    /**
     * Things of one kind on the pieces of one placing.
     *
     * @param name what they are
     * @param on the part they stand on
     * @param each how many stand on one piece
     * @param sideBySide how many of these stand beside each other
     * @param rooms what they need and what is there, each way of which their size was said
     */
    public record Contained(String name, String on, int each, int sideBySide, List<Room> rooms) {
        public Contained {
            rooms = List.copyOf(rooms);
        }
    }

    /**
     * Room one way.
     *
     * @param way {@code wide}, {@code deep} or {@code high}
     * @param need clear size that the things need, with room for a hand
     * @param there clear size that is there, where there is least; empty if it is open that way
     */
    public record Room(String way, Figure<Length> need, Optional<Figure<Length>> there) {}

    /**
     * Snow on everything that keeps it off.
     *
     * @param pressure on a roof, seen from above
     * @param carried by each piece that lies under the sky
     */
    public record Snow(Figure<Pressure> pressure, List<Carried> carried) {
        public Snow {
            carried = List.copyOf(carried);
        }
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
     * @param section of one piece, as it lies
     * @param stiffness along its grain
     * @param sag in the middle when first loaded
     * @param sagInTime the same after months under load
     * @param limits the usual limits
     */
    public record Bending(
            Figure<Length> span,
            Figure<Mass> onSpan,
            CrossSection section,
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

    /** Fasteners between a lifted build and what it stands on, on either side of where it balances. */
    public record Holding(int left, int right, int front, int back) {
        /** How many are on the poorer side, the way it is better held. */
        public int eachSide() {
            return Math.max(Math.min(left, right), Math.min(front, back));
        }
    }
}
