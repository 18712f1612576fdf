package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which stretches of every edge are seen.
 *
 * <p>Along an edge the depth of a face less that of the edge is linear, so the face is nearer on one stretch; that stretch is
 * cut where it crosses the face's rings, and the pieces inside the face are hidden. What lies just on a nearer outline counts as
 * seen: there is a line there anyway. Cost: edges times faces whose boxes meet. Tried and given up: differences of lines and
 * polygons by overlay, a hundred times slower.
 */
final class HiddenLines {
    /** A face hides what is farther behind it than this, in millimetres. */
    private static final double BEHIND = 0.02;

    /** A place is inside a face if it is farther than this from its rings, in millimetres. */
    private static final double INSIDE = 0.005;

    /** Stretches shorter than this are none, in millimetres. */
    private static final double SHORT = 1e-3;

    private final Projection projection;
    private final List<ViewFace> covers;

    private HiddenLines(Projection projection) {
        this.projection = projection;
        covers = projection.faces().stream()
                .filter(f -> f.isFront() && !projection.bodies().get(f.body()).glass())
                .sorted(Comparator.comparingDouble(ViewFace::nearest).reversed())
                .toList();
    }

    /** Seen and hidden lines; doubles merged. */
    static List<DrawnLine> of(Projection projection) {
        return LineMerge.merged(new HiddenLines(projection).stretches(true));
    }

    /** Seen lines only, doubles merged: for pictures. */
    static List<DrawnLine> seen(Projection projection) {
        return LineMerge.merged(new HiddenLines(projection).stretches(false));
    }

    /** The stretches of one edge that something nearer covers, from 0 at its start to 1 at its end. */
    static List<Spans.Span> hidden(Projection projection, Projection.Edge edge) {
        double length = StrictMath.hypot(edge.x2() - edge.x1(), edge.y2() - edge.y1());
        return new HiddenLines(projection).hidden(edge, length);
    }

    private List<DrawnLine> stretches(boolean withHidden) {
        List<DrawnLine> lines = new ArrayList<>();
        for (Projection.Edge edge : projection.edges()) {
            double length = StrictMath.hypot(edge.x2() - edge.x1(), edge.y2() - edge.y1());
            Body body = projection.bodies().get(edge.body());
            // No face toward the eye ends here: the body's own front covers it, and of glass only the outline counts.
            boolean onTheFarSide = !edge.faced() && (body.glass() || !withHidden);
            if (length < SHORT || onTheFarSide) {
                continue;
            }
            List<Spans.Span> hidden = hidden(edge, length);
            List<Spans.Span> seen = Spans.minus(List.of(new Spans.Span(0, 1)), hidden);
            add(lines, edge, seen, false, length);
            if (withHidden) {
                add(lines, edge, hidden, true, length);
            }
        }
        return lines;
    }

    private void add(
            List<DrawnLine> lines, Projection.Edge edge, List<Spans.Span> spans, boolean hidden, double length) {
        double dx = edge.x2() - edge.x1();
        double dy = edge.y2() - edge.y1();
        Shown.State state = projection.bodies().get(edge.body()).state();
        for (Spans.Span span : spans) {
            if (span.length() * length > SHORT) {
                lines.add(DrawnLine.of(
                        edge.x1() + span.from() * dx,
                        edge.y1() + span.from() * dy,
                        edge.x1() + span.to() * dx,
                        edge.y1() + span.to() * dy,
                        hidden,
                        state,
                        edge.arc()));
            }
        }
    }

    private List<Spans.Span> hidden(Projection.Edge edge, double length) {
        Spans hidden = new Spans();
        double least = Math.min(edge.nearFrom(), edge.nearTo());
        for (ViewFace face : covers) {
            if (face.nearest() < least) {
                break;
            }
            // A box of no width still meets: level and upright edges have one.
            if (face.boxMeets(edge.x1(), edge.y1(), edge.x2(), edge.y2())) {
                cover(face, edge, length, hidden);
            }
        }
        return hidden.joined(SHORT / length);
    }

    private void cover(ViewFace face, Projection.Edge edge, double length, Spans hidden) {
        double dx = edge.x2() - edge.x1();
        double dy = edge.y2() - edge.y1();
        double start = face.depth(edge.x1(), edge.y1()) - edge.nearFrom() - BEHIND;
        double end = face.depth(edge.x2(), edge.y2()) - edge.nearTo() - BEHIND;
        if (start <= 0 && end <= 0) {
            return;
        }
        double from = start > 0 ? 0 : start / (start - end);
        double to = end > 0 ? 1 : start / (start - end);
        double[] stops = stops(face, edge, dx, dy, from, to);
        for (int i = 1; i < stops.length; i++) {
            double middle = (stops[i - 1] + stops[i]) / 2;
            if ((stops[i] - stops[i - 1]) * length > SHORT / 10
                    && face.holds(edge.x1() + middle * dx, edge.y1() + middle * dy, INSIDE)) {
                hidden.add(stops[i - 1], stops[i]);
            }
        }
    }

    /** Where the edge begins and ends to be behind the face, and where it crosses the face's rings between, in order. */
    private static double[] stops(ViewFace face, Projection.Edge edge, double dx, double dy, double from, double to) {
        double[] stops = {from, to, 0, 0, 0, 0, 0, 0};
        int count = 2;
        for (double[] ring : face.rings()) {
            double px = ring[ring.length - 2] - edge.x1();
            double py = ring[ring.length - 1] - edge.y1();
            double before = dx * py - dy * px;
            for (int i = 0; i < ring.length; i += 2) {
                double qx = ring[i] - edge.x1();
                double qy = ring[i + 1] - edge.y1();
                double after = dx * qy - dy * qx;
                if (before > 0 != after > 0) {
                    double share = before / (before - after);
                    double t = ((px + share * (qx - px)) * dx + (py + share * (qy - py)) * dy) / (dx * dx + dy * dy);
                    if (t > from && t < to) {
                        stops = count == stops.length ? Arrays.copyOf(stops, 2 * count) : stops;
                        stops[count++] = t;
                    }
                }
                px = qx;
                py = qy;
                before = after;
            }
        }
        double[] inOrder = Arrays.copyOf(stops, count);
        Arrays.sort(inOrder);
        return inOrder;
    }
}
