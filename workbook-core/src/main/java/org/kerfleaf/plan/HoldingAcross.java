package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.Dowel;
import org.kerfleaf.joint.FastenerSetting.Across;
import org.kerfleaf.joint.Force;
import org.kerfleaf.joint.Hold;
import org.kerfleaf.joint.LagScrew;
import org.kerfleaf.joint.Sideways;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Lag;
import org.kerfleaf.sketch.Nail;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.Sketch;

/**
 * What a fastener holds sideways in its place. The load goes straight down where the fastener lies level; one that stands upright
 * is pushed along the grain of either part, and the less of the two counts.
 */
final class HoldingAcross {
    /** Steeper than this a fastener stands upright: the sine. */
    private static final double UPRIGHT = 0.95;

    /** From ten diameters in the wood on, a point no longer counts off (NDS 2018 12.3.5, from memory). */
    private static final int WHOLE = 10;

    private final Sketch sketch;
    private final Sizing sizing;
    private final Bodies bodies;

    HoldingAcross(Sketch sketch, Sizing sizing, Bodies bodies) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.bodies = bodies;
    }

    /**
     * One of the two parts.
     *
     * @param gravity of its wood, if known
     * @param deep how much of it lies along the fastener
     * @param grain which way it runs; empty for a sheet, whose plies cross
     */
    record Member(Optional<Ratio> gravity, Length deep, Optional<Vector> grain) {}

    Member member(Piece piece, Length deep, Vector way) {
        boolean board = sizing.of(piece.part())
                .filter(part -> part.said().kind() == PartKind.BOARD)
                .isPresent();
        Optional<Vector> grain = board ? Optional.of(bodies.of(piece).pose().u()) : Optional.empty();
        return new Member(gravity(piece.part()), deep, grain);
    }

    private Optional<Ratio> gravity(String part) {
        return FastenerSettings.gravity(sketch, part).map(Figure::value);
    }

    /** Into studs: they stand upright, and are deep enough for it. */
    Across intoStuds(Fastener fastener, PlannedJoint.Behind wall, Optional<Figure<Ratio>> gravity) {
        Optional<Piece> through = bodies.all().keySet().stream()
                .filter(piece -> piece.part().equals(wall.part()))
                .findFirst();
        if (through.isEmpty()) {
            return Across.notKnown("which way the first part’s grain runs is not known: place it");
        }
        Length deep = fastener.said().orElse(wall.thickness());
        return of(
                fastener,
                member(through.get(), wall.thickness(), Vector.Y),
                new Member(gravity.map(Figure::value), deep, Optional.of(Vector.Z)),
                Hold.SIDE_GRAIN,
                Vector.Y);
    }

    Across of(Fastener said, Member first, Member second, Hold hold, Vector way) {
        if (hold == Hold.SHEET_EDGE) {
            return Across.notKnown(FastenerSettings.NO_TABLE);
        }
        if (said instanceof Nail nail && nail.diameter().isEmpty()) {
            return Across.notKnown(FastenerSettings.NO_DIAMETER);
        }
        Optional<Dowel> dowel = dowel(said);
        if (dowel.isEmpty()) {
            return Across.notKnown("its root is not in the table");
        }
        if (first.gravity().isEmpty() || second.gravity().isEmpty()) {
            return Across.notKnown("how dense the wood of both parts is, is not known: say the species");
        }
        boolean sheet = first.grain().isEmpty() || second.grain().isEmpty();
        if (sheet && dowel.get().nominal().inInches() >= 0.25) {
            return Across.notKnown("no rule known here says how a sheet bears a fastener of 1/4 in or more");
        }
        Length bears = bears(said, dowel.get(), first.deep(), second.deep());
        Length reach = reach(said, first.deep(), second.deep());
        if (reach.isShorterThan(dowel.get().nominal().times(dowel.get().least()))) {
            return Across.notKnown("it goes less than %d of its diameters into the second part"
                    .formatted(dowel.get().least()));
        }
        Figure<Force> least = null;
        for (Vector load : loads(first, second, way)) {
            Figure<Force> held = Sideways.holds(
                    dowel.get(),
                    new Sideways.Wood(first.gravity().get(), first.deep(), toGrain(first, load)),
                    new Sideways.Wood(second.gravity().get(), bears, toGrain(second, load)));
            least = least == null || held.value().compareTo(least.value()) < 0 ? held : least;
        }
        return Across.of(hold == Hold.END_GRAIN ? Sideways.inEndGrain(least) : least);
    }

    private static Optional<Dowel> dowel(Fastener said) {
        if (said instanceof Screw screw) {
            return Dowel.woodScrew(screw.gauge());
        }
        if (said instanceof Lag lag) {
            return Dowel.lag(new LagScrew(lag.diameter(), lag.length()));
        }
        return said instanceof Bolt bolt
                ? Optional.of(Dowel.bolt(bolt.diameter()))
                : ((Nail) said).diameter().map(Dowel::nail);
    }

    /** How far it goes into the second part, as far as there is any. */
    private static Length reach(Fastener said, Length through, Length deep) {
        return said.said()
                .map(length -> length.minus(through).plus(sunk(said)).min(deep).max(Length.ZERO))
                .orElse(deep);
    }

    private static Length sunk(Fastener said) {
        return said instanceof Screw ? WoodScrew.COUNTERSINK : Length.ZERO;
    }

    /** How much of it presses on the second part: its point counts off a lag screw, and any other under ten diameters. */
    private static Length bears(Fastener said, Dowel dowel, Length through, Length deep) {
        Length reach = reach(said, through, deep);
        boolean whole =
                !(said instanceof Lag) && !reach.isShorterThan(dowel.nominal().times(WHOLE));
        Length all = said.said()
                .map(length -> length.minus(through).plus(sunk(said)).minus(whole ? Length.ZERO : dowel.tip()))
                .orElse(deep);
        return all.min(deep).max(Length.ofMillimetres(0.1));
    }

    private static List<Vector> loads(Member first, Member second, Vector way) {
        Vector down = Vector.Z.minus(way.times(Vector.Z.dot(way)));
        if (Math.abs(way.z()) < UPRIGHT) {
            return List.of(down.normalised());
        }
        Vector along = first.grain().or(second::grain).orElse(Vector.X);
        Vector level = along.minus(way.times(along.dot(way)));
        Vector one = level.length() < 1e-6 ? Vector.X : level.normalised();
        return List.of(one, one.cross(way).normalised());
    }

    /** Between load and grain, from 0 to 90°; a sheet's plies cross, and thin fasteners do not ask. */
    private static Angle toGrain(Member member, Vector load) {
        double cosine = member.grain().map(grain -> Math.abs(grain.dot(load))).orElse(1.0);
        return Angle.ofDegrees(StrictMath.toDegrees(StrictMath.acos(Math.min(1, cosine))));
    }
}
