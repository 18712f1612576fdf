package org.kerfleaf.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Volume, middle and areas of a solid.
 *
 * <p>From its faces by the divergence theorem: V = ⅓ Σ (o·n) A, and the first moment along each axis ½ Σ n ∫ x² dA. Then the
 * slivers between arcs and their chords, each as high as the wood is at its arc: exact wherever no cut or other pocket ends
 * within a sliver.
 */
final class SolidMeasure {
    private static final double BESIDE = 1e-3;

    private final Solid solid;
    private final Section section;
    private final Map<String, Double> areas = new LinkedHashMap<>();
    private Lump wood = Lump.NONE;
    private Vector unclosed = Vector.ZERO;

    SolidMeasure(Solid solid, Section section) {
        this.solid = solid;
        this.section = section;
        for (Face face : solid.faces()) {
            wood = wood.plus(under(face));
            double area = face.squareMillimetres();
            unclosed = unclosed.plus(face.normal().times(area));
            areas.merge(face.name(), area * face.stretch(), Double::sum);
        }
        Outline outline = solid.outline();
        outline.edges().forEach(e -> sliver(e, 1, null));
        for (String name : outline.openings()) {
            outline.opening(name).edges().forEach(e -> sliver(e, -1, null));
        }
        for (Pocket pocket : solid.pockets()) {
            pocket.shape().edges().forEach(e -> sliver(e, -1, pocket));
        }
    }

    /** Volume in mm³ and its middle. */
    Lump wood() {
        return wood;
    }

    /** By name of face, in mm². */
    Map<String, Double> areas() {
        return areas;
    }

    /** Σ area · normal of the flat faces: nothing, to rounding, where the surface is closed. */
    double unclosed() {
        return unclosed.length();
    }

    private static Lump under(Face face) {
        Pose frame = face.frame();
        double[] m = moments(face);
        Vector o = frame.origin();
        double volume = o.dot(frame.w()) * m[0] / 3;
        Vector first = new Vector(
                frame.w().x() / 2 * square(m, o.x(), frame.u().x(), frame.v().x()),
                frame.w().y() / 2 * square(m, o.y(), frame.u().y(), frame.v().y()),
                frame.w().z() / 2 * square(m, o.z(), frame.u().z(), frame.v().z()));
        return new Lump(volume, first);
    }

    /** ∫ (o + a·s + b·t)² over the polygon. */
    private static double square(double[] m, double o, double a, double b) {
        return o * o * m[0] + 2 * o * (a * m[1] + b * m[2]) + a * a * m[3] + 2 * a * b * m[4] + b * b * m[5];
    }

    /** Area, ∫s, ∫t, ∫s², ∫st, ∫t² of the face's polygon, by Green's theorem. */
    private static double[] moments(Face face) {
        double[] m = new double[6];
        for (List<Coordinate> ring : Flat.rings(face.polygon())) {
            for (int i = 0; i < ring.size(); i++) {
                Coordinate p = ring.get(i);
                Coordinate q = ring.get((i + 1) % ring.size());
                double twice = p.x * q.y - q.x * p.y;
                m[0] += twice / 2;
                m[1] += twice * (p.x + q.x) / 6;
                m[2] += twice * (p.y + q.y) / 6;
                m[3] += twice * (p.x * p.x + p.x * q.x + q.x * q.x) / 12;
                m[4] += twice * (2 * p.x * p.y + p.x * q.y + q.x * p.y + 2 * q.x * q.y) / 24;
                m[5] += twice * (p.y * p.y + p.y * q.y + q.y * q.y) / 12;
            }
        }
        return m;
    }

    /**
     * Adds what lies between an arc and its chords.
     *
     * @param sign 1 where a bulge adds wood, −1 where it takes wood away
     * @param pocket whose ring it is, null for the outline and its openings
     */
    private void sliver(OutlineEdge edge, int sign, Pocket pocket) {
        if (!edge.isArc()) {
            return;
        }
        Lump flat = Rings.betweenArcAndChords(edge, Section.SAGITTA);
        double[] middle = edge.along(0.5);
        double[] centre = edge.centre();
        // Just beside the arc, on the side where its ring leaves wood: towards its middle that is behind the chords.
        double way = Math.signum(edge.sweep()) * -sign;
        double out = way * (way < 0 ? 2 * Section.SAGITTA : BESIDE) / edge.radius();
        double x = middle[0] + (middle[0] - centre[0]) * out;
        double y = middle[1] + (middle[1] - centre[1]) * out;
        if (!section.inSheet(x, y)) {
            return;
        }
        double low = section.low(x, y);
        double high = section.high(x, y);
        String lower = floorAt(low, x, y, SheetSide.OUTSIDE);
        String upper = floorAt(high, x, y, SheetSide.INSIDE);
        for (Cut cut : solid.cuts()) {
            if (cut.isSquare()) {
                if (cut.beyond(new Vector(x, y, 0)) > 0) {
                    return;
                }
                continue;
            }
            double at = (cut.offset() - cut.normal().x() * x - cut.normal().y() * y)
                    / cut.normal().z();
            boolean fromAbove = cut.normal().z() > 0;
            upper = fromAbove && at < high ? cut.name() : upper;
            lower = !fromAbove && at > low ? cut.name() : lower;
            high = fromAbove ? Math.min(high, at) : high;
            low = fromAbove ? low : Math.max(low, at);
        }
        if (pocket == null) {
            add(flat, sign, low, high);
            addArea(lower, sign * flat.size());
            addArea(upper, sign * flat.size());
        } else if (pocket.side() == SheetSide.INSIDE) {
            add(
                    flat,
                    sign,
                    Math.max(low, solid.thickness().minus(pocket.depth()).inMillimetres()),
                    high);
            addArea(upper, -flat.size());
            addArea(pocket.name() + " FLOOR", flat.size());
        } else {
            add(flat, sign, low, Math.min(high, pocket.depth().inMillimetres()));
            addArea(lower, -flat.size());
            addArea(pocket.name() + " FLOOR", flat.size());
        }
    }

    private void add(Lump flat, int sign, double low, double high) {
        if (high > low) {
            Vector middle = flat.centre().plus(new Vector(0, 0, (low + high) / 2));
            wood = wood.plus(Lump.at(sign * flat.size() * (high - low), middle));
        }
    }

    private void addArea(String name, double area) {
        areas.computeIfPresent(name, (key, sum) -> sum + area);
    }

    /** The name of the face that ends the wood there: a sheet face or a pocket's floor. */
    private String floorAt(double w, double x, double y, SheetSide side) {
        for (int i = 0; i < solid.pockets().size(); i++) {
            Pocket pocket = solid.pockets().get(i);
            if (pocket.side() == side && section.floor(i) == w && section.inPocket(i, x, y)) {
                return pocket.name() + " FLOOR";
            }
        }
        return side.name();
    }
}
