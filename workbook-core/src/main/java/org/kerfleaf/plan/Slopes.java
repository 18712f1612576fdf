package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Cut;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.EdgeOf;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Trait;

/**
 * Puts roofs on their gables, and trim and cap on roofs.
 *
 * <p>A roof half's own frame: v climbs from the eave to the ridge, w is the normal that looks up and out, u is square to both.
 * Trim takes its directions from the roof half it runs along.
 */
final class Slopes {
    private static final String EAVE = "BOTTOM";

    private Slopes() {}

    /** Both halves of a roof, or one, on the slopes of a gable; centred on the hull of the gables front to back. */
    static List<Piece> roof(Placing placing, SizedPart roof, SizedPart gable, Box gables, int halves) {
        Angle slope = gable.said().trait(Trait.Gable.class).orElseThrow().slope();
        double under = roof.high(SheetSide.OUTSIDE).inMillimetres();
        double across = roof.across().value().inMillimetres();
        Vector peak = new Vector(
                gables.middle(Axis.X).inMillimetres(),
                gables.middle(Axis.Y).inMillimetres(),
                gables.high(Axis.Z).inMillimetres());
        List<Piece> pieces = new ArrayList<>();
        for (int half = 0; half < halves; half++) {
            int side = half == 0 ? 1 : -1;
            Vector up = new Vector(side * slope.cos(), 0, slope.sin());
            Vector normal = new Vector(-side * slope.sin(), 0, slope.cos());
            Vector along = up.cross(normal);
            Vector eave = peak.minus(up.times(under)).minus(along.times(across / 2));
            Pose pose = Pose.of(eave, along, up);
            pieces.add(
                    Piece.sloping(placing.origin(), half, new PlacedSolid(placing.part(), half, roof.solid(), pose)));
        }
        return pieces;
    }

    /** One piece on one slope, its lower end as far past what carries it as was said, in the middle across the slope. */
    static List<Piece> single(Placing placing, SizedPart part, Slope slope, Box sloped, Box supports) {
        double past = part.said().traits(Trait.Past.class).stream()
                .filter(p -> p.edge() == slope.lowSide())
                .mapToDouble(p -> p.by().inMillimetres())
                .sum();
        Vector low = slope.lowEnd(sloped, supports, past);
        Vector up = slope.up();
        Vector across = up.cross(slope.normal());
        Vector corner = low.minus(across.times(part.across().value().inMillimetres() / 2));
        PlacedSolid solid = new PlacedSolid(placing.part(), 0, part.solid(), Pose.of(corner, across, up));
        return List.of(Piece.sloping(placing.origin(), 0, solid));
    }

    /** Boards along an edge of every half of a roof, their upper side in line with the roof's upper face. */
    static List<Piece> along(Placing placing, SizedPart board, List<Piece> roofs, EdgeOf.Edge edge) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece roof : roofs) {
            PlacedSolid half = roof.sloping().orElseThrow();
            List<Pose> poses = edge == EdgeOf.Edge.RAKE ? rakes(board, half) : List.of(eave(board, half));
            for (Pose pose : poses) {
                PlacedSolid solid = new PlacedSolid(placing.part(), pieces.size(), board.solid(), pose);
                pieces.add(Piece.sloping(placing.origin(), pieces.size(), solid));
            }
        }
        return pieces;
    }

    /** One at either end of the roof half: it climbs with the slope, its wide face against the roof's end. */
    private static List<Pose> rakes(SizedPart board, PlacedSolid half) {
        Pose roof = half.pose();
        double length = half.solid().outline().wide().inMillimetres();
        double thick = board.thickness().value().inMillimetres();
        Vector lowerEdge = roof.origin().plus(roof.w().times(drop(board, half)));
        // The board's frame has w along the roof's u: it ends where the roof begins, or begins where the roof ends.
        Vector near = lowerEdge.minus(roof.u().times(thick));
        Vector far = lowerEdge.plus(roof.u().times(length));
        return List.of(Pose.of(near, roof.v(), roof.w()), Pose.of(far, roof.v(), roof.w()));
    }

    /** Along the eave, past the roof's ends by the thickness of what it covers there. */
    private static Pose eave(SizedPart board, PlacedSolid half) {
        Pose roof = half.pose();
        Length past =
                board.across().value().minus(half.solid().outline().wide()).half();
        Vector start = roof.origin()
                .plus(roof.w().times(drop(board, half)))
                .minus(roof.u().times(past.inMillimetres()));
        return Pose.of(start, roof.u(), roof.w());
    }

    /** From the roof's under face to the board's lower edge, so that both are in line on top. */
    private static double drop(SizedPart board, PlacedSolid half) {
        return half.solid().thickness().minus(board.up().value()).inMillimetres();
    }

    /**
     * An angle over the ridge: a leg on every half of the roof, half as wide as its girth, both cut plumb where the angle is bent.
     * On a roof with square edges it is bent where the planes of its upper faces would meet.
     */
    static List<Piece> cap(Placing placing, SizedPart cap, List<Piece> roofs) {
        List<Piece> legs = new ArrayList<>();
        Length leg = cap.up().value().half();
        for (Piece roof : roofs) {
            PlacedSolid half = roof.sloping().orElseThrow();
            Pose pose = half.pose();
            // v is level · cos + up · sin, so that the slope is v's own.
            double sin = pose.v().z();
            double cos = pose.w().z();
            boolean plumb = half.solid().cuts().stream()
                    .anyMatch(cut -> Math.abs(cut.normal().z()) > 1e-9);
            double thick = half.solid().thickness().inMillimetres();
            double fold = half.solid().outline().high().inMillimetres() + (plumb ? 0 : thick * sin / cos);
            Length past =
                    cap.across().value().minus(half.solid().outline().wide()).half();
            Vector start = pose.origin()
                    .plus(pose.w().times(thick))
                    .plus(pose.v().times(fold - leg.inMillimetres()))
                    .minus(pose.u().times(past.inMillimetres()));
            Length thin = cap.thickness().value();
            Length longer = leg.plus(Length.ofMillimetres(thin.inMillimetres() * sin / cos));
            Solid plate = Solid.of(Outline.rectangle(cap.across().value(), longer), thin)
                    .cut(new Cut("RIDGE", new Vector(0, cos, -sin), leg.inMillimetres() * cos));
            PlacedSolid solid = new PlacedSolid(placing.part(), legs.size(), plate, Pose.of(start, pose.u(), pose.v()));
            legs.add(Piece.sloping(placing.origin(), legs.size(), solid));
        }
        return legs;
    }

    /** How high the lowest point of a roof half's eave is, in millimetres. */
    static double eaveLow(PlacedSolid half) {
        return half.face(EAVE).bounds().low().z();
    }

    /** How high a gable's upright edges reach, in millimetres. */
    static double wallTop(PlacedSolid gable) {
        return gable.face("LEFT_WALL").bounds().high().z();
    }

    /** The edge a board runs along, if it runs along one. */
    static Optional<EdgeOf.Edge> edge(SizedPart board) {
        return board.said().trait(Trait.Along.class).map(along -> along.edge().edge());
    }
}
