package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Where a line along a contact keeps clear of the contact's edges: those of its ends, and of openings and holes in it. */
public final class ClearLine {
    private static final double HAIR = 1e-6;

    private ClearLine() {}

    /** From here to there along the contact, in millimetres. */
    public record Span(double from, double to) {
        /** Whether a place lies in it, to a nanometre. */
        public boolean holds(double along) {
            return along >= from - HAIR && along <= to + HAIR;
        }
    }

    /**
     * The stretches of the line at that place across the contact that are inside it and nowhere nearer to its edges.
     *
     * @param across from the contact frame's origin, in millimetres
     * @param clear how far to stay from every edge, in millimetres
     */
    public static List<Span> of(Touch touch, double across, double clear) {
        List<Span> spans = inside(touch.polygon(), across);
        for (List<Coordinate> ring : Flat.rings(touch.polygon())) {
            for (int i = 0; i < ring.size(); i++) {
                Coordinate p = ring.get(i);
                Coordinate q = ring.get((i + 1) % ring.size());
                spans = without(spans, near(p, q, across, clear - HAIR));
            }
        }
        return spans;
    }

    private static List<Span> inside(Polygon polygon, double across) {
        List<Double> crossings = new ArrayList<>();
        for (List<Coordinate> ring : Flat.rings(polygon)) {
            for (int i = 0; i < ring.size(); i++) {
                Coordinate p = ring.get(i);
                Coordinate q = ring.get((i + 1) % ring.size());
                if (p.y > across != q.y > across) {
                    crossings.add(p.x + (across - p.y) / (q.y - p.y) * (q.x - p.x));
                }
            }
        }
        crossings.sort(Comparator.naturalOrder());
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            spans.add(new Span(crossings.get(i), crossings.get(i + 1)));
        }
        return spans;
    }

    /** Where the line is nearer to an edge than that; an empty span if nowhere. The distance is convex along the line. */
    private static Span near(Coordinate p, Coordinate q, double across, double clear) {
        double dx = q.x - p.x;
        double dy = q.y - p.y;
        double length = StrictMath.hypot(dx, dy);
        DoubleStream.Builder ends = DoubleStream.builder();
        for (Coordinate corner : List.of(p, q)) {
            double off = Math.abs(across - corner.y);
            if (off < clear) {
                double half = StrictMath.sqrt(clear * clear - off * off);
                ends.add(corner.x - half).add(corner.x + half);
            }
        }
        if (Math.abs(dy) > HAIR * length) {
            double middle = p.x + (across - p.y) / dy * dx;
            double half = clear * length / Math.abs(dy);
            for (double x : new double[] {middle - half, middle + half}) {
                double foot = ((x - p.x) * dx + (across - p.y) * dy) / (length * length);
                if (foot >= 0 && foot <= 1) {
                    ends.add(x);
                }
            }
        } else if (Math.abs(across - p.y) < clear) {
            ends.add(p.x).add(q.x);
        }
        double[] all = ends.build().sorted().toArray();
        return all.length == 0 ? new Span(0, 0) : new Span(all[0], all[all.length - 1]);
    }

    private static List<Span> without(List<Span> spans, Span taken) {
        List<Span> left = new ArrayList<>();
        for (Span span : spans) {
            if (taken.to() <= span.from() || taken.from() >= span.to()) {
                left.add(span);
                continue;
            }
            if (taken.from() > span.from()) {
                left.add(new Span(span.from(), taken.from()));
            }
            if (taken.to() < span.to()) {
                left.add(new Span(taken.to(), span.to()));
            }
        }
        return left;
    }
}
