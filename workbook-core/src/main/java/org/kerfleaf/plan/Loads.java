package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.Vector;
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
 * @param filled every build that is filled
 * @param onJoints what hangs on joints, across their fasteners
 * @param brackets what brackets carry
 */
public record Loads(
        List<Contained> contents,
        List<Carried> carried,
        Optional<Snow> snow,
        List<Lifted> lifted,
        List<Filled> filled,
        List<OnJoint> onJoints,
        List<Bracket> brackets) {
    /** None of them. */
    public static final Loads NONE =
            new Loads(List.of(), List.of(), Optional.empty(), List.of(), List.of(), List.of(), List.of());

    public Loads {
        contents = List.copyOf(contents);
        carried = List.copyOf(carried);
        lifted = List.copyOf(lifted);
        filled = List.copyOf(filled);
        onJoints = List.copyOf(onJoints);
        brackets = List.copyOf(brackets);
    }

    /** Whether there is none of any kind. */
    public boolean isEmpty() {
        return contents.isEmpty()
                && carried.isEmpty()
                && snow.isEmpty()
                && lifted.isEmpty()
                && filled.isEmpty()
                && onJoints.isEmpty()
                && brackets.isEmpty();
    }

    /**
     * A load that pushes straight down across the fasteners of a joint.
     *
     * @param joint what is fastened to what
     * @param load all of it
     * @param fasteners that share it
     * @param each what one of them gets
     * @param holds what the weakest of them holds sideways, if known
     * @param notHeld why it is not known; empty if it is
     */
    public record OnJoint(
            String joint,
            Figure<Mass> load,
            int fasteners,
            Figure<Force> each,
            Optional<Figure<Force>> holds,
            String notHeld) {}

    /**
     * Brackets that carry something out from a wall.
     *
     * @param on what lies on them
     * @param load on all of them
     * @param out how far from the wall it acts
     * @param height between the upper and the lower screws of one, if said
     * @param count how many there are
     * @param pull at the top screw of each, if the height between its screws is known
     * @param holds what that screw holds, if known
     * @param lacks what to say where one of the two is not known; empty if both are
     */
    public record Bracket(
            String on,
            Mass load,
            Length out,
            Optional<Length> height,
            int count,
            Optional<Figure<Force>> pull,
            Optional<Figure<Force>> holds,
            String lacks) {}

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
     * @param step in which it is lifted, 0 above the first
     * @param build which of the builds it is
     * @param part by which it is held
     * @param weight of its parts, hardware not counted; empty if a density is not known
     * @param fromLeft where it balances, from its left side
     * @param fromFront likewise from its front
     * @param up likewise above its underside
     * @param people who lift it
     * @param share of the one who holds most, where one stands at either end
     * @param limit what they may lift together, if it is known how high it stood before
     * @param reach what makes that limit, likewise
     * @param outOfPost how far from the post's middle it balances
     * @param tipping moment about the post
     * @param holding fasteners that hold it before anybody lets go
     * @param balance the middle of its weight in its place, in millimetres; empty if a density is not known
     * @param grips a place for every hand of one or two people; none for more, who share the edges as they can
     */
    public record Lifted(
            int step,
            int build,
            String part,
            Optional<Figure<Mass>> weight,
            Optional<Figure<Length>> fromLeft,
            Optional<Figure<Length>> fromFront,
            Optional<Figure<Length>> up,
            int people,
            Optional<Figure<Mass>> share,
            Optional<Figure<Mass>> limit,
            Optional<LiftReach> reach,
            Optional<Figure<Length>> outOfPost,
            Optional<Figure<Moment>> tipping,
            Holding holding,
            Optional<Vector> balance,
            List<Grip> grips) {
        public Lifted {
            grips = List.copyOf(grips);
        }
    }

    /**
     * Where a hand takes hold, under the edge of what is lifted.
     *
     * @param person who, from 1; the first stands at the left
     * @param at in the finished build, in millimetres
     */
    public record Grip(int person, Vector at) {}

    /**
     * How a lift takes away from what can be lifted at best.
     *
     * @param out from the ankles to the hands, level
     * @param outShare what is left for that, from 0 to 1
     * @param heightShare what is left for the height of the hands at the start
     * @param wayShare what is left for how far it is lifted
     */
    public record LiftReach(
            Figure<Length> out, Figure<Ratio> outShare, Figure<Ratio> heightShare, Figure<Ratio> wayShare) {}

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
