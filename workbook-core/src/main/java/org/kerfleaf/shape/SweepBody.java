package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;

/** A piece seen from a hinge line, whole and as its convex pieces. */
final class SweepBody {
    /**
     * What planes can be found for.
     *
     * @param corners all of them
     * @param planes with all corners behind them
     * @param edges the directions of its edges, one long, none twice; none for a whole piece, which need not be convex
     */
    record Hulled(List<Vector> corners, List<ConvexPiece.Plane> planes, List<Vector> edges, Reach reach) {}

    /**
     * Where something is about the line.
     *
     * @param least, most from the line, in millimetres
     * @param low, high along it
     */
    record Reach(double least, double most, double low, double high) {
        static Reach of(List<Vector> corners) {
            Bounds box = Bounds.of(corners);
            double u = Math.max(0, Math.max(box.low().x(), -box.high().x()));
            double v = Math.max(0, Math.max(box.low().y(), -box.high().y()));
            double most = 0;
            for (Vector corner : corners) {
                most = Math.max(most, StrictMath.hypot(corner.x(), corner.y()));
            }
            return new Reach(
                    StrictMath.hypot(u, v), most, box.low().z(), box.high().z());
        }

        /** Whether one that turns about the line can come where the other is. */
        boolean meets(Reach other) {
            return low < other.high && other.low < high && least < other.most && other.least < most;
        }
    }

    private final PlacedSolid solid;
    private final Pose line;
    private final Hulled whole;
    private List<Hulled> pieces;

    SweepBody(PlacedSolid solid, Pose line) {
        this.solid = solid;
        this.line = line;
        List<Vector> corners = solid.corners().stream().map(line::toLocal).toList();
        List<ConvexPiece.Plane> planes = solid.hullFaces().stream()
                .map(face -> {
                    Vector normal = direction(face.normal());
                    return new ConvexPiece.Plane(
                            normal, normal.dot(line.toLocal(face.frame().origin())));
                })
                .toList();
        this.whole = new Hulled(corners, planes, List.of(), Reach.of(corners));
    }

    PlacedSolid solid() {
        return solid;
    }

    Hulled whole() {
        return whole;
    }

    List<Hulled> pieces() {
        if (pieces == null) {
            pieces = solid.solid().pieces().stream()
                    .map(piece -> hulled(piece.seenFrom(solid.pose(), line)))
                    .toList();
        }
        return pieces;
    }

    private static Hulled hulled(ConvexPiece piece) {
        List<Vector> corners =
                piece.faces().stream().flatMap(List::stream).distinct().toList();
        return new Hulled(corners, piece.planes().toList(), edges(piece), Reach.of(corners));
    }

    private static List<Vector> edges(ConvexPiece piece) {
        List<Vector> once = new ArrayList<>();
        for (List<Vector> face : piece.faces()) {
            for (int i = 0; i < face.size(); i++) {
                Vector edge = face.get((i + 1) % face.size()).minus(face.get(i));
                if (edge.length() > Section.NOTHING) {
                    Vector direction = edge.normalised();
                    if (once.stream().noneMatch(e -> e.cross(direction).length() < 1e-9)) {
                        once.add(direction);
                    }
                }
            }
        }
        return once;
    }

    private Vector direction(Vector of) {
        return new Vector(of.dot(line.u()), of.dot(line.v()), of.dot(line.w()));
    }
}
