package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.OutlineEdge.Point;

/** The shapes of rabbets and grooves in the sheet. */
final class Recesses {
    /** How far a groove is drawn past the part, in millimetres. */
    private static final double PAST = 1;

    private Recesses() {}

    /** A strip along a straight edge, drawn past its ends where the neighbours lean outward. */
    static Outline along(Outline outline, String name, Length wide) {
        int index = Rings.index(outline, name);
        List<OutlineEdge> edges = outline.edges();
        OutlineEdge edge = straight(edges.get(index));
        OutlineEdge before = edges.get((index + edges.size() - 1) % edges.size());
        OutlineEdge next = edges.get((index + 1) % edges.size());
        double depth = wide.inMillimetres();
        double start = -past(edge.leaves() - before.arrives(), depth);
        double end = edge.chord() + past(next.leaves() - edge.arrives(), depth);
        List<Corner> corners = new ArrayList<>();
        if (start < 0) {
            corners.add(corner("BEFORE", edge, start, 0));
        }
        corners.add(new Corner("EDGE", edge.from().u(), edge.from().v()));
        corners.add(new Corner(
                end > edge.chord() ? "AFTER" : "END", edge.to().u(), edge.to().v()));
        if (end > edge.chord()) {
            corners.add(corner("END", edge, end, 0));
        }
        corners.add(corner("WALL", edge, end, depth));
        corners.add(corner("START", edge, start, depth));
        return Outline.polygon(corners);
    }

    /** How far a neighbour that turns by less than a right angle reaches past the edge's end within that depth. */
    private static double past(double turn, double depth) {
        double left = StrictMath.atan2(StrictMath.sin(turn), StrictMath.cos(turn));
        return left > 0 && left < StrictMath.PI / 2 - 1e-9 ? depth / StrictMath.tan(left) + PAST : 0;
    }

    /** A strip right across, side by side with an edge. */
    static Outline across(Outline outline, String name, Length from, Length wide) {
        OutlineEdge edge = straight(outline.edge(name));
        Vector sizes = outline.bounds().sizes();
        double far = sizes.x() + sizes.y() + PAST;
        double near = from.inMillimetres();
        double beyond = near + wide.inMillimetres();
        return Outline.polygon(List.of(
                corner("NEAR", edge, -far, near),
                corner("END", edge, edge.chord() + far, near),
                corner("FAR", edge, edge.chord() + far, beyond),
                corner("START", edge, -far, beyond)));
    }

    /** The opening made wider all round, its round corners square; a round opening stays round. */
    static Outline around(Outline opening, Length wide) {
        List<OutlineEdge> straight =
                opening.edges().stream().filter(e -> !e.isArc()).toList();
        if (straight.size() < 3) {
            return widerCircle(opening, wide);
        }
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < straight.size(); i++) {
            OutlineEdge edge = straight.get(i);
            OutlineEdge before = straight.get((i + straight.size() - 1) % straight.size());
            Point at = meeting(before, edge, -wide.inMillimetres());
            corners.add(new Corner(edge.name(), at.u(), at.v()));
        }
        return Outline.polygon(corners);
    }

    private static Outline widerCircle(Outline opening, Length wide) {
        Bounds box = opening.bounds();
        Length diameter = opening.wide();
        if (!diameter.equals(opening.high())) {
            throw new IllegalArgumentException(
                    "%s is neither round nor has straight sides to go round.".formatted(opening));
        }
        Point middle = Point.at(box.middle().x(), box.middle().y());
        return Outline.circle(diameter.plus(wide, wide)).moved(middle.u(), middle.v());
    }

    /** Where two edges, each moved to its left by so much, meet. */
    private static Point meeting(OutlineEdge a, OutlineEdge b, double left) {
        double ax = StrictMath.cos(a.leaves());
        double ay = StrictMath.sin(a.leaves());
        double bx = StrictMath.cos(b.leaves());
        double by = StrictMath.sin(b.leaves());
        double cross = ax * by - ay * bx;
        if (Math.abs(cross) < 1e-9) {
            throw new IllegalArgumentException(
                    "Edges (%s) and (%s) are side by side: no corner to go round.".formatted(a.name(), b.name()));
        }
        double px = b.from().x() - left * by - a.from().x() + left * ay;
        double py = b.from().y() + left * bx - a.from().y() - left * ax;
        double along = (px * by - py * bx) / cross;
        return Point.at(a.from().x() - left * ay + along * ax, a.from().y() + left * ax + along * ay);
    }

    private static OutlineEdge straight(OutlineEdge edge) {
        if (edge.isArc()) {
            throw new IllegalArgumentException("Edge (%s) is round: say a straight one.".formatted(edge.name()));
        }
        return edge;
    }

    /** So far along the edge and so far to its left, where the part is. */
    private static Corner corner(String name, OutlineEdge edge, double along, double left) {
        double dx = (edge.to().x() - edge.from().x()) / edge.chord();
        double dy = (edge.to().y() - edge.from().y()) / edge.chord();
        Point at =
                Point.at(edge.from().x() + along * dx - left * dy, edge.from().y() + along * dy + left * dx);
        return new Corner(name, at.u(), at.v());
    }
}
