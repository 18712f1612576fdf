package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/**
 * A view interrupted where nothing but long thin parts goes on (ISO 128-3, interrupted views): a stretch of them is left out, and
 * the ends at either side are broken with zigzags (ISO 128-2, line 01.1 with zigzags). Sizes given across the break stay true.
 *
 * @param axis along which it is shortened
 * @param from where the stretch that is left out begins
 * @param to where it ends, in millimetres of the build
 * @param kept how wide the gap is drawn in its place
 */
record Broken(Axis axis, double from, double to, double kept) {
    /** Nothing is left out. */
    static final Broken NOWHERE = new Broken(Axis.Z, 0, 0, 0);

    /** A part is long and thin if it is so many times as long as it is wide and thick. */
    private static final double SLENDER = 8;

    /** What is left out must be this share of the whole at least; a shorter gain is not worth a picture that lies. */
    private static final double WORTH = 0.4;

    /** What stays of a long part at either side, as a share of what is drawn whole. */
    private static final double STUB = 0.11;

    private static final double GAP = 0.03;
    private static final double OVERHANG = 1.2;
    private static final double SAME = 0.02;

    /** Where the pieces are best interrupted: only the way they are longest, for only there does it make the drawing larger. */
    static Broken of(List<PlacedSolid> pieces) {
        Vector sizes = pieces.stream()
                .map(PlacedSolid::bounds)
                .reduce(Bounds::and)
                .orElseThrow()
                .sizes();
        Axis longest = Axis.X;
        for (Axis axis : Axis.values()) {
            longest = of(axis, sizes) > of(longest, sizes) ? axis : longest;
        }
        Broken broken = along(longest, pieces);
        return (broken.to - broken.from) / of(longest, sizes) > WORTH ? broken : NOWHERE;
    }

    private static Broken along(Axis axis, List<PlacedSolid> pieces) {
        List<Bounds> thin = new ArrayList<>();
        Spans others = new Spans();
        for (PlacedSolid piece : pieces) {
            Bounds box = piece.bounds();
            if (isSlender(axis, piece)) {
                thin.add(box);
            } else {
                others.add(of(axis, box.low()), of(axis, box.high()));
            }
        }
        if (thin.isEmpty()) {
            return NOWHERE;
        }
        double low = thin.stream().mapToDouble(b -> of(axis, b.low())).max().orElseThrow();
        double high = thin.stream().mapToDouble(b -> of(axis, b.high())).min().orElseThrow();
        Spans.Span free = Spans.minus(List.of(new Spans.Span(low, Math.max(low, high))), others.joined(0)).stream()
                .reduce(new Spans.Span(0, 0), (a, b) -> b.length() > a.length() ? b : a);
        Bounds all =
                pieces.stream().map(PlacedSolid::bounds).reduce(Bounds::and).orElseThrow();
        double whole = of(axis, all.sizes()) - free.length();
        double stub = STUB * Math.max(whole, free.length() / SLENDER);
        double gap = GAP * Math.max(whole, free.length() / SLENDER);
        return free.length() > 2 * stub + gap ? new Broken(axis, free.from() + stub, free.to() - stub, gap) : NOWHERE;
    }

    private static boolean isSlender(Axis axis, PlacedSolid piece) {
        Vector sizes = piece.bounds().sizes();
        double length = of(axis, sizes);
        for (Axis other : Axis.values()) {
            if (other != axis && of(other, sizes) * SLENDER > length) {
                return false;
            }
        }
        return true;
    }

    static double of(Axis axis, Vector vector) {
        return vector.dot(axis.unit());
    }

    boolean isNowhere() {
        return to <= from;
    }

    private double leftOut() {
        return isNowhere() ? 0 : to - from - kept;
    }

    /** Where a place on an axis of the build is drawn. */
    double drawn(Axis on, double place) {
        if (on != axis || isNowhere() || place >= to) {
            return place;
        }
        double within = Math.max(0, (place - from) / (to - from));
        return place <= from ? place + leftOut() : from + leftOut() + within * kept;
    }

    /** A point where it is drawn. */
    Vector moved(Vector point) {
        return point.plus(axis.unit().times(drawn(axis, of(axis, point)) - of(axis, point)));
    }

    /** A fastener where it is drawn. */
    DrivenFastener moved(DrivenFastener fastener) {
        Vector by = axis.unit().times(drawn(axis, of(axis, fastener.head())) - of(axis, fastener.head()));
        return new DrivenFastener(
                fastener.kind(), fastener.head().plus(by), fastener.tip().plus(by), fastener.diameter());
    }

    /** A piece where it is drawn: moved up, or in two stubs if it goes through the break. */
    List<Shown> shortened(Shown shown) {
        PlacedSolid solid = shown.solid();
        if (isNowhere()) {
            return List.of(shown);
        }
        Vector along = axis.unit();
        List<Shown> stubs = new ArrayList<>();
        solid.behind(along, from)
                .map(lower -> lower.at(lower.pose().moved(along.times(leftOut()))))
                .ifPresent(lower -> stubs.add(shown.as(lower)));
        solid.behind(along.negated(), -to).ifPresent(upper -> stubs.add(shown.as(upper)));
        return stubs;
    }

    List<Shown> shortened(List<Shown> all) {
        return all.stream().flatMap(one -> shortened(one).stream()).toList();
    }

    /** The edges of the broken ends in a view: x, y, x, y, in millimetres of the build. */
    List<double[]> ends(List<Shown> shortened, View view) {
        List<double[]> ends = new ArrayList<>();
        if (isNowhere() || Math.abs(of(axis, view.toEye())) > 0.9) {
            return ends;
        }
        for (Shown one : shortened) {
            for (Face face : one.drawn().faces()) {
                if (face.name().equals(PlacedSolid.SLICE) && Math.abs(of(axis, face.normal())) > 0.9) {
                    face.edges()
                            .forEach(e -> ends.add(
                                    new double[] {view.x(e.from()), view.y(e.from()), view.x(e.to()), view.y(e.to())}));
                }
            }
        }
        return ends;
    }

    /** Whether a line of a view is the edge of a broken end, or a stretch of it. */
    static boolean isEnd(List<double[]> ends, DrawnLine line) {
        return line.xy().length == 4 && isEnd(ends, line.x1(), line.y1(), line.x2(), line.y2());
    }

    static boolean isEnd(List<double[]> ends, double x1, double y1, double x2, double y2) {
        return ends.stream().anyMatch(e -> isOn(e, x1, y1) && isOn(e, x2, y2));
    }

    private static boolean isOn(double[] edge, double x, double y) {
        return java.awt.geom.Line2D.ptSegDist(edge[0], edge[1], edge[2], edge[3], x, y) < 3 * SAME;
    }

    /** A line with a zigzag in its middle, on paper. @param past whether it reaches past the part a little, as in square views */
    static Path2D zigzag(double[] on, boolean past) {
        double length = StrictMath.hypot(on[2] - on[0], on[3] - on[1]);
        double dx = (on[2] - on[0]) / length;
        double dy = (on[3] - on[1]) / length;
        double half = past ? Math.min(1.2, length / 5) : Math.min(0.8, length / 6);
        double over = past ? OVERHANG : 0;
        double[][] points = {
            {-over, 0},
            {length / 2 - half, 0},
            {length / 2 - half / 2, 1.4 * half},
            {length / 2 + half / 2, -1.4 * half},
            {length / 2 + half, 0},
            {length + over, 0}
        };
        double[] xy = new double[2 * points.length];
        for (int i = 0; i < points.length; i++) {
            xy[2 * i] = on[0] + points[i][0] * dx - points[i][1] * dy;
            xy[2 * i + 1] = on[1] + points[i][0] * dy + points[i][1] * dx;
        }
        return Ink.open(xy);
    }
}
