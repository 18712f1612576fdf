package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Vector;

/** The lines across a door and what it closes at the middle of every hinge and catch. */
final class HingeMarks {
    /** How long a line is, in millimetres, where there is room. */
    private static final double LONG = 50;

    /** A line shorter than this, in millimetres, is none. */
    private static final double SHORT = 5;

    /** A normal this much along a direction looks that way. */
    private static final double LOOKS = 0.7;

    private final Planned planned;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * A line on a wide face of a piece.
     *
     * @param up the face
     * @param from in the build, in millimetres; flattened onto the face
     * @param to likewise
     */
    record Mark(Piece piece, SheetSide up, Vector from, Vector to, String words) {}

    private HingeMarks(Planned planned) {
        this.planned = planned;
    }

    /** @param doors told of each that hangs, in the same order */
    static List<Mark> of(Planned planned, List<Hung> hung, List<HungDoor> doors) {
        HingeMarks all = new HingeMarks(planned);
        for (int at = 0; at < hung.size(); at++) {
            all.door(hung.get(at), doors.get(at));
        }
        return List.copyOf(all.marks);
    }

    private void door(Hung hung, HungDoor door) {
        PlacedSolid solid = planned.bodies().of(hung.piece());
        Vector along = HingePlaces.along(hung);
        Vector out = hung.out();
        Optional<Piece> carcass = new HingePlaces(planned).carcass(hung);
        for (Figure<Length> hinge : door.hinges()) {
            Vector at = at(hung, solid, along, hinge.value());
            mark(hung.piece(), hung.in(), at, out.negated(), "middle of hinge");
            carcass.ifPresent(piece -> onCarcass(piece, hung, at, out, "hinge of " + hung.name()));
        }
        for (Figure<Length> one : door.catches()) {
            Vector edge = at(hung, solid, along, one.value());
            Vector at = edge.minus(out.times(edge.dot(out) - solid.project(out).least()));
            mark(hung.piece(), hung.in(), at, out, "middle of catch");
            carcass.filter(piece -> hung.inset().isEmpty())
                    .ifPresent(piece -> onCarcass(piece, hung, at, out.negated(), "catch of " + hung.name()));
        }
    }

    /** So far from the end that places are measured from, on the hinges' line. */
    private static Vector at(Hung hung, PlacedSolid door, Vector along, Length place) {
        Vector point = hung.line().point();
        double from = door.project(along).least() + place.inMillimetres();
        return point.plus(along.times(from - point.dot(along)));
    }

    /** What it lies on is marked on the face it lies on, out from the door's edge; what stands beside it on the face towards it. */
    private void onCarcass(Piece piece, Hung hung, Vector at, Vector away, String words) {
        if (hung.inset().isPresent()) {
            mark(piece, away.negated(), at, hung.in(), words);
        } else {
            mark(piece, hung.in().negated(), at, away, words);
        }
    }

    /** A line from a point as far as the piece goes that way; if that is next to nothing, the other way. */
    private void mark(Piece piece, Vector looks, Vector at, Vector way, String words) {
        PlacedSolid solid = planned.bodies().of(piece);
        double toward = solid.pose().w().dot(looks);
        if (Math.abs(toward) < LOOKS) {
            return;
        }
        Vector go = room(solid, at, way) > SHORT ? way : way.negated();
        double reach = Math.min(LONG, room(solid, at, go));
        if (reach > SHORT) {
            SheetSide up = toward > 0 ? SheetSide.INSIDE : SheetSide.OUTSIDE;
            marks.add(new Mark(piece, up, at, at.plus(go.times(reach)), words));
        }
    }

    private static double room(PlacedSolid solid, Vector at, Vector way) {
        return solid.project(way).most() - at.dot(way);
    }
}
