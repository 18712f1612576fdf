package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.OutlineEdge;

/** What falls off between an outline and the rectangle round it, as hatching at 45 degrees. */
final class Waste {
    private static final double APART = 2.2;

    private static final int CHORDS = 24;

    private Waste() {}

    /** The points of a ring, arcs as chords: x, y, x, y, in millimetres. */
    static double[] ring(Outline outline) {
        List<Double> xy = new ArrayList<>();
        for (OutlineEdge edge : outline.edges()) {
            double x1 = edge.from().u().inMillimetres();
            double y1 = edge.from().v().inMillimetres();
            double dx = edge.to().u().inMillimetres() - x1;
            double dy = edge.to().v().inMillimetres() - y1;
            xy.add(x1);
            xy.add(y1);
            for (int i = 1; edge.isArc() && i < CHORDS; i++) {
                // A chord from the start that turns by part of the sweep: sin(part / 2) / sin(whole / 2) long, so much
                // turned back.
                double part = edge.sweep() * i / CHORDS;
                double share = StrictMath.sin(part / 2) / StrictMath.sin(edge.sweep() / 2);
                double turn = (part - edge.sweep()) / 2;
                double c = StrictMath.cos(turn) * share;
                double s = StrictMath.sin(turn) * share;
                xy.add(x1 + c * dx - s * dy);
                xy.add(y1 + s * dx + c * dy);
            }
        }
        return xy.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Hatching on paper of what the rectangle round the outline has more than the outline; empty where they are the same. */
    static Path2D hatch(Outline outline, OnPaper paper) {
        double[] ring = ring(outline);
        Bounds box = outline.bounds();
        double apart = APART * paper.times() * StrictMath.sqrt(2);
        double x1 = box.low().x();
        double y1 = box.low().y();
        double x2 = box.high().x();
        double y2 = box.high().y();
        Path2D hatch = new Path2D.Double();
        for (double c = x1 + y1 + apart / 2; c < x2 + y2; c += apart) {
            // Along x + y = c.
            Spans inside = inside(ring, c);
            List<Spans.Span> whole = List.of(new Spans.Span(Math.max(x1, c - y2), Math.min(x2, c - y1)));
            for (Spans.Span span : Spans.minus(whole, inside.joined(0))) {
                if (span.length() > 0.3 * paper.times()) {
                    hatch.moveTo(paper.x(span.from()), paper.y(c - span.from()));
                    hatch.lineTo(paper.x(span.to()), paper.y(c - span.to()));
                }
            }
        }
        return hatch;
    }

    private static Spans inside(double[] ring, double c) {
        double[] crossings = new double[ring.length / 2];
        int count = 0;
        double px = ring[ring.length - 2];
        double py = ring[ring.length - 1];
        for (int i = 0; i < ring.length; i += 2) {
            double before = px + py - c;
            double after = ring[i] + ring[i + 1] - c;
            if (before > 0 != after > 0) {
                crossings[count++] = px + (ring[i] - px) * before / (before - after);
            }
            px = ring[i];
            py = ring[i + 1];
        }
        Arrays.sort(crossings, 0, count);
        Spans spans = new Spans();
        for (int i = 0; i + 1 < count; i += 2) {
            spans.add(crossings[i], crossings[i + 1]);
        }
        return spans;
    }
}
