package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Corner;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

/**
 * A frame of boards that lie in one plane, as one sees it looking at its upper (or front) side.
 *
 * @param middle of the frame, on that side
 * @param right along its width, one long
 * @param up along its height, one long
 */
record Frame(Vector middle, Vector right, Vector up) {
    /** Nearer than this to a plane is in it, in millimetres. */
    private static final double IN_PLANE = 0.01;

    /** @throws IllegalArgumentException if the boards do not lie in one plane */
    static Frame of(List<PlacedSolid> boards) {
        Pose first = boards.get(0).pose();
        // The side that looks up, or in a standing frame to the front, is the one that is glazed from.
        Vector out = first.w().z() > 1e-6
                        || Math.abs(first.w().z()) <= 1e-6 && first.w().y() < 0
                ? first.w()
                : first.w().negated();
        Vector right = Math.abs(first.u().x()) > Math.abs(first.v().x()) ? first.u() : first.v();
        right = right.x() < 0 ? right.negated() : right;
        Vector up = out.cross(right);
        double front = boards.get(0).project(out).most();
        for (PlacedSolid board : boards) {
            if (Math.abs(board.project(out).most() - front) > IN_PLANE) {
                throw new IllegalArgumentException(
                        "%s does not lie in the plane of the frame: a frame's boards should be flush on the glazed side."
                                .formatted(board.part()));
            }
        }
        return new Frame(
                right.times(middle(boards, right))
                        .plus(up.times(middle(boards, up)))
                        .plus(out.times(front)),
                right,
                up);
    }

    private static double middle(List<PlacedSolid> boards, Vector way) {
        double least =
                boards.stream().mapToDouble(b -> b.project(way).least()).min().orElseThrow();
        double most =
                boards.stream().mapToDouble(b -> b.project(way).most()).max().orElseThrow();
        return (least + most) / 2;
    }

    /** A board of the frame less what a rabbet of that size round the frame's middle takes of it. */
    PlacedSolid rabbeted(PlacedSolid board, String name, Length wide, Length high, Length deep) {
        Pose pose = board.pose();
        boolean upper = right.cross(up).dot(pose.w()) > 0;
        double halfWide = wide.inMillimetres() / 2;
        double halfHigh = high.inMillimetres() / 2;
        double[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
        String[] edges = {"BOTTOM", "RIGHT", "TOP", "LEFT"};
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            // Looked at from the other side the ring runs the other way round.
            int k = upper ? i : 3 - i;
            String edge = edges[upper ? k : (k + 3) % 4];
            Vector at = pose.toLocal(
                    middle.plus(right.times(signs[k][0] * halfWide)).plus(up.times(signs[k][1] * halfHigh)));
            corners.add(new Corner(edge, Length.ofMillimetres(at.x()), Length.ofMillimetres(at.y())));
        }
        Solid solid = board.solid()
                .pocket(name, Outline.polygon(corners), deep, upper ? SheetSide.INSIDE : SheetSide.OUTSIDE);
        return new PlacedSolid(board.part(), board.piece(), solid, pose);
    }

    /** Where a pane of that size lies in the middle, its lower face on the floor of a rabbet so deep. */
    Pose lying(Length wide, Length high, Length deep) {
        Vector corner = middle.minus(right.times(wide.inMillimetres() / 2))
                .minus(up.times(high.inMillimetres() / 2))
                .minus(right.cross(up).times(deep.inMillimetres()));
        return Pose.of(corner, right, up);
    }
}
