package org.kerfleaf.rain;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/** Wet lines between two solids, each place of them once, however often and from whichever side water came to it. */
final class SeamLines {
    /** Ends nearer than this are one, in millimetres. */
    private static final double SAME = 0.1;

    private final List<Line> lines = new ArrayList<>();

    private record Line(PlacedSolid a, PlacedSolid b, Vector from, Vector along, TreeMap<Double, Double> spans) {
        boolean holds(PlacedSolid one, PlacedSolid other, Vector p, Vector q) {
            boolean both = a.equals(one) && b.equals(other) || a.equals(other) && b.equals(one);
            return both && off(p) < SAME && off(q) < SAME;
        }

        private double off(Vector point) {
            return point.minus(from).cross(along).length();
        }

        void add(double start, double end) {
            double low = start;
            double high = end;
            while (true) {
                var touching = spans.floorEntry(high + SAME);
                if (touching == null || touching.getValue() < low - SAME) {
                    break;
                }
                low = Math.min(low, touching.getKey());
                high = Math.max(high, touching.getValue());
                spans.remove(touching.getKey());
            }
            spans.put(low, high);
        }
    }

    void add(PlacedSolid a, PlacedSolid b, Vector from, Vector to) {
        if (to.minus(from).length() < SAME) {
            return;
        }
        Line line = lines.stream()
                .filter(l -> l.holds(a, b, from, to))
                .findFirst()
                .orElseGet(() -> {
                    Line started = new Line(a, b, from, to.minus(from).normalised(), new TreeMap<>());
                    lines.add(started);
                    return started;
                });
        double s = from.minus(line.from()).dot(line.along());
        double e = to.minus(line.from()).dot(line.along());
        line.add(Math.min(s, e), Math.max(s, e));
    }

    /** In the order in which water came to them. */
    List<Wet.Seam> all() {
        List<Wet.Seam> all = new ArrayList<>();
        for (Line line : lines) {
            line.spans()
                    .forEach((s, e) -> all.add(new Wet.Seam(
                            line.a(),
                            line.b(),
                            line.from().plus(line.along().times(s)),
                            line.from().plus(line.along().times(e)))));
        }
        return all;
    }
}
