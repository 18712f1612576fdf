package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.OutlineEdge.Point;

/** Outlines rounded, mitred and sawn off. */
final class OutlineCuts {
    /** Nearer to a line than this is on it: a thousandth of the tolerance for contact. */
    private static final double ON = 1e-5;

    private OutlineCuts() {}

    static List<OutlineEdge> rounded(Outline outline, Length radius, IntPredicate which) {
        List<OutlineEdge> edges = outline.edges();
        int count = edges.size();
        Point[] starts = new Point[count];
        Point[] ends = new Point[count];
        double[] turns = new double[count];
        for (int i = 0; i < count; i++) {
            OutlineEdge edge = edges.get(i);
            OutlineEdge next = edges.get((i + 1) % count);
            starts[(i + 1) % count] = next.from();
            ends[i] = edge.to();
            if (which.test(i)) {
                turns[i] = turn(edge, next);
                double back = radius.inMillimetres() * StrictMath.tan(Math.abs(turns[i]) / 2);
                ends[i] = onto(edge, edge.chord() - back, radius);
                starts[(i + 1) % count] = onto(next, back, radius);
            }
        }
        for (int i = 0; i < count; i++) {
            OutlineEdge edge = edges.get(i);
            double left = StrictMath.cos(edge.leaves()) * (ends[i].x() - starts[i].x())
                    + StrictMath.sin(edge.leaves()) * (ends[i].y() - starts[i].y());
            if (!edge.isArc() && left < -ON) {
                throw noRoom(radius, edge);
            }
            // Two arcs that meet in the middle of an edge meet in one point.
            starts[i] = !edge.isArc() && left < ON ? ends[i] : starts[i];
        }
        List<OutlineEdge> rounded = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            OutlineEdge edge = edges.get(i);
            OutlineEdge next = edges.get((i + 1) % count);
            if (!starts[i].equals(ends[i])) {
                rounded.add(new OutlineEdge(edge.name(), starts[i], ends[i], edge.sweep()));
            }
            if (which.test(i)) {
                rounded.add(
                        new OutlineEdge(edge.name() + "_" + next.name(), ends[i], starts[(i + 1) % count], turns[i]));
            }
        }
        return rounded;
    }

    private static double turn(OutlineEdge edge, OutlineEdge next) {
        if (edge.isArc() || next.isArc()) {
            throw new IllegalArgumentException(
                    "The corner between (%s) and (%s) is an arc already.".formatted(edge.name(), next.name()));
        }
        double turn = next.leaves() - edge.arrives();
        return StrictMath.atan2(StrictMath.sin(turn), StrictMath.cos(turn));
    }

    private static Point onto(OutlineEdge edge, double distance, Length radius) {
        if (!(distance > -ON && distance < edge.chord() + ON)) {
            throw noRoom(radius, edge);
        }
        double[] at = edge.along(distance / edge.chord());
        return Point.at(at[0], at[1]);
    }

    private static IllegalArgumentException noRoom(Length radius, OutlineEdge edge) {
        return new IllegalArgumentException("A radius of %s has no room on edge (%s), which is %s long."
                .formatted(radius, edge.name(), edge.length()));
    }

    static Outline mitred(Outline outline, String name, String longAt, Angle angle) {
        List<OutlineEdge> edges = outline.edges();
        int index = Rings.index(outline, name);
        OutlineEdge edge = edges.get(index);
        boolean longAtEnd = edges.get((index + 1) % edges.size()).name().equals(longAt);
        boolean longAtStart =
                edges.get((index + edges.size() - 1) % edges.size()).name().equals(longAt);
        if (!longAtEnd && !longAtStart || edge.isArc()) {
            throw new IllegalArgumentException(
                    "Edge (%s) has its long point on one of the straight edges beside it; (%s) is none of them."
                            .formatted(name, longAt));
        }
        double turned = edge.leaves() - StrictMath.PI / 2 + (longAtEnd ? -1 : 1) * angle.inRadians();
        Point kept = longAtEnd ? edge.to() : edge.from();
        double a = StrictMath.cos(turned);
        double b = StrictMath.sin(turned);
        return sawn(outline, name, new HalfPlane(a, b, a * kept.x() + b * kept.y()));
    }

    static Outline sawn(Outline outline, String name, HalfPlane keep) {
        List<OutlineEdge> left = new ArrayList<>();
        int cuts = 0;
        for (OutlineEdge edge : outline.edges()) {
            double from = beyond(keep, edge.from());
            double to = beyond(keep, edge.to());
            boolean starts = from <= 0 && (from < 0 || to < 0);
            boolean ends = to <= 0 && (to < 0 || from < 0);
            double bulge = edge.isArc() ? beyond(keep, middle(edge)) : from;
            if (Math.min(bulge, Math.min(from, to)) < 0 && Math.max(bulge, Math.max(from, to)) > 0 && edge.isArc()) {
                throw new IllegalArgumentException("Arc (%s) is in the way of cut (%s).".formatted(edge.name(), name));
            }
            if (starts || ends) {
                Point cross = starts && ends ? null : crossing(edge, from, to);
                Point begin = starts ? edge.from() : cross;
                Point end = ends ? edge.to() : cross;
                if (!left.isEmpty() && !left.get(left.size() - 1).to().equals(begin)) {
                    left.add(new OutlineEdge(name, left.get(left.size() - 1).to(), begin, 0));
                    cuts++;
                }
                left.add(new OutlineEdge(edge.name(), begin, end, edge.sweep()));
            }
        }
        if (left.isEmpty()) {
            throw new IllegalArgumentException("Cut (%s) leaves nothing of the part.".formatted(name));
        }
        Point last = left.get(left.size() - 1).to();
        if (!last.equals(left.get(0).from())) {
            left.add(new OutlineEdge(name, last, left.get(0).from(), 0));
            cuts++;
        }
        if (cuts > 1) {
            throw new IllegalArgumentException("Cut (%s) would saw the part in two.".formatted(name));
        }
        return Rings.checked(new Outline(left, clear(outline, name, keep)));
    }

    /** The openings left: those cut away whole are gone, those cut through are in the way. */
    private static Map<String, Outline> clear(Outline outline, String name, HalfPlane keep) {
        Map<String, Outline> kept = new LinkedHashMap<>();
        for (String opening : outline.openings()) {
            Outline ring = outline.opening(opening);
            long beyond = ring.edges().stream()
                    .filter(e -> beyond(keep, e.from()) > 0 || beyond(keep, middle(e)) > 0)
                    .count();
            if (beyond != 0 && beyond != ring.edges().size()) {
                throw new IllegalArgumentException("Opening (%s) is in the way of cut (%s).".formatted(opening, name));
            }
            if (beyond == 0) {
                kept.put(opening, ring);
            }
        }
        return kept;
    }

    private static double beyond(HalfPlane keep, Point point) {
        double beyond = keep.beyond(point.x(), point.y());
        return Math.abs(beyond) < ON ? 0 : beyond;
    }

    private static Point middle(OutlineEdge edge) {
        double[] at = edge.along(0.5);
        return Point.at(at[0], at[1]);
    }

    private static Point crossing(OutlineEdge edge, double from, double to) {
        double[] at = edge.along(from / (from - to));
        return Point.at(at[0], at[1]);
    }
}
