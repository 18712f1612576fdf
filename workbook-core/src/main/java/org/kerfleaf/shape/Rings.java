package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** What is asked of rings: closed forms, chords and whether they are sound. */
final class Rings {
    /** No facet of an arc turns more than this, however small its radius. */
    private static final double WIDEST_TURN = StrictMath.PI / 4;

    private Rings() {}

    /**
     * A straight piece of a ring as faces and overlays use it, from (x1, y1) to (x2, y2).
     *
     * @param group of the arc it is a chord of, 0 for none
     * @param stretch how much longer the arc is than the chord
     * @param smoothEnd whether the surface goes on smoothly at the end
     */
    record Chord(
            String name, double x1, double y1, double x2, double y2, int group, double stretch, boolean smoothEnd) {
        double length() {
            return StrictMath.hypot(x2 - x1, y2 - y1);
        }
    }

    static int index(Outline outline, String name) {
        List<String> names = outline.edges().stream().map(OutlineEdge::name).toList();
        if (!names.contains(name)) {
            throw new IllegalArgumentException("No edge (%s); there is: %s.".formatted(name, String.join(", ", names)));
        }
        return names.indexOf(name);
    }

    static Lump lump(Outline outline) {
        Lump sum = Lump.NONE;
        for (OutlineEdge e : outline.edges()) {
            sum = sum.plus(under(e.from().x(), e.from().y(), e.to().x(), e.to().y()));
            sum = sum.plus(segment(e));
        }
        for (String name : outline.openings()) {
            sum = sum.minus(lump(outline.opening(name)));
        }
        return sum;
    }

    /** What the chord leaves out. */
    static Lump segment(OutlineEdge edge) {
        if (!edge.isArc()) {
            return Lump.NONE;
        }
        double[] middle = edge.segmentCentroid();
        return Lump.at(edge.segment(), new Vector(middle[0], middle[1], 0));
    }

    /** What lies between an arc and its chords: positive where the arc bulges out of its ring. */
    static Lump betweenArcAndChords(OutlineEdge edge, double sagitta) {
        List<Chord> chords = new ArrayList<>();
        addChords(edge, sagitta, "", 0, false, chords);
        Lump sum = segment(edge);
        for (Chord c : chords) {
            sum = sum.minus(under(c.x1(), c.y1(), c.x2(), c.y2()));
        }
        return sum.plus(
                under(edge.from().x(), edge.from().y(), edge.to().x(), edge.to().y()));
    }

    /** A side's share in the area of its ring, seen from the origin. */
    private static Lump under(double x1, double y1, double x2, double y2) {
        double twice = x1 * y2 - x2 * y1;
        return new Lump(twice / 2, new Vector(twice * (x1 + x2) / 6, twice * (y1 + y2) / 6, 0));
    }

    static Bounds bounds(Outline outline) {
        List<Vector> points = new ArrayList<>();
        for (OutlineEdge e : outline.edges()) {
            points.add(new Vector(e.from().x(), e.from().y(), 0));
            if (e.isArc()) {
                extremes(e, points);
            }
        }
        return Bounds.of(points);
    }

    /** The points of an arc that are farthest left, right, down or up on its circle. */
    private static void extremes(OutlineEdge e, List<Vector> points) {
        double[] centre = e.centre();
        double start = StrictMath.atan2(e.from().y() - centre[1], e.from().x() - centre[0]);
        for (int quarter = 0; quarter < 4; quarter++) {
            double turn = (quarter * StrictMath.PI / 2 - start) * Math.signum(e.sweep());
            turn -= Math.floor(turn / (2 * StrictMath.PI)) * 2 * StrictMath.PI;
            // Ends of a quarter arc are extremes themselves and exact: leave them alone.
            if (turn > 1e-6 && turn < Math.abs(e.sweep()) - 1e-6) {
                double[] at = e.along(turn / Math.abs(e.sweep()));
                points.add(new Vector(at[0], at[1], 0));
            }
        }
    }

    /**
     * The ring as chords, every corner on the nanometre.
     *
     * @param sagitta how far a chord may lie from its arc, in millimetres
     * @param prefix put before each edge's name
     * @param group the number of the last group given before
     */
    static List<Chord> chords(Outline ring, double sagitta, String prefix, int group) {
        List<Chord> chords = new ArrayList<>();
        List<OutlineEdge> edges = ring.edges();
        int number = group;
        for (int i = 0; i < edges.size(); i++) {
            OutlineEdge edge = edges.get(i);
            OutlineEdge next = edges.get((i + 1) % edges.size());
            OutlineEdge before = edges.get((i + edges.size() - 1) % edges.size());
            boolean goesOn = edge.isArc() && before.isArc() && before.name().equals(edge.name()) && i > 0;
            number += edge.isArc() && !goesOn ? 1 : 0;
            boolean smooth = (edge.isArc() || next.isArc()) && isTangent(edge, next);
            addChords(edge, sagitta, prefix + edge.name(), edge.isArc() ? number : 0, smooth, chords);
        }
        return chords;
    }

    private static void addChords(
            OutlineEdge edge, double sagitta, String name, int group, boolean smoothEnd, List<Chord> chords) {
        int count = facets(edge, sagitta);
        double turn = Math.abs(edge.sweep()) / count;
        double stretch = edge.isArc() ? turn / 2 / StrictMath.sin(turn / 2) : 1;
        double x = edge.from().x();
        double y = edge.from().y();
        for (int i = 1; i <= count; i++) {
            boolean last = i == count;
            double[] at = edge.along((double) i / count);
            double x2 = last ? edge.to().x() : snapped(at[0]);
            double y2 = last ? edge.to().y() : snapped(at[1]);
            chords.add(new Chord(name, x, y, x2, y2, group, stretch, last ? smoothEnd : true));
            x = x2;
            y = y2;
        }
    }

    /** Sagitta of a chord that turns by φ: r (1 − cos φ/2). */
    private static int facets(OutlineEdge edge, double sagitta) {
        if (!edge.isArc()) {
            return 1;
        }
        double most = 2 * StrictMath.acos(Math.max(0, 1 - sagitta / edge.radius()));
        return (int) Math.ceil(Math.abs(edge.sweep()) / Math.min(most, WIDEST_TURN) - 1e-9);
    }

    private static boolean isTangent(OutlineEdge edge, OutlineEdge next) {
        double turn = next.leaves() - edge.arrives();
        return Math.abs(StrictMath.sin(turn)) < 1e-4 && StrictMath.cos(turn) > 0;
    }

    /** On the nanometre, so that what is said twice is the same twice. */
    static double snapped(double millimetres) {
        return Math.rint(millimetres * 1e6) / 1e6;
    }

    /** @throws IllegalArgumentException if the ring or an opening in it is not sound */
    static Outline checked(Outline outline) {
        Set<String> seen = new HashSet<>();
        String last = "";
        for (OutlineEdge edge : outline.edges()) {
            boolean sameArc = edge.isArc() && edge.name().equals(last);
            if (!sameArc && !seen.add(edge.name())) {
                throw new IllegalArgumentException(
                        "Two edges (%s) in one outline: give each a name.".formatted(edge.name()));
            }
            last = edge.name();
        }
        if (outline.edges().size() < 3) {
            throw new IllegalArgumentException("%s has %d edges: three or more would be right."
                    .formatted(outline, outline.edges().size()));
        }
        if (!(lump(outline).size() > 0)) {
            throw new IllegalArgumentException(
                    "%s encloses nothing or runs clockwise: name its corners counter-clockwise.".formatted(outline));
        }
        Polygon polygon = Flat.polygon(outline, 0.05);
        IsValidOp check = new IsValidOp(polygon);
        if (!check.isValid()) {
            throw new IllegalArgumentException("%s crosses itself, or an opening does not lie inside, near %s mm."
                    .formatted(outline, check.getValidationError().getCoordinate()));
        }
        return outline;
    }
}
