package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.OutlineEdge.Point;

/**
 * The shape of a part in its sheet: one ring of named edges, counter-clockwise, and named openings in it.
 *
 * <p>u runs to the right and v up when one looks at the face that is w = thickness, {@link SheetSide#INSIDE}. Corners are exact
 * in nanometres and arcs stay arcs: area, length and centroid are closed forms. An outline said standing before the other
 * face is {@link #mirrored()}: names stay with their edges.
 */
public final class Outline {
    private final List<OutlineEdge> edges;
    private final Map<String, Outline> openings;

    Outline(List<OutlineEdge> edges, Map<String, Outline> openings) {
        this.edges = List.copyOf(edges);
        this.openings = Collections.unmodifiableMap(new LinkedHashMap<>(openings));
    }

    /** Edges BOTTOM, RIGHT, TOP, LEFT, from the lower left corner at the origin. */
    public static Outline rectangle(Length wide, Length high) {
        return trapezoid(wide, high, high);
    }

    /** A square bottom, upright sides and a sloping top: edges BOTTOM, RIGHT, TOP, LEFT, lower left corner at the origin. */
    public static Outline trapezoid(Length wide, Length leftHigh, Length rightHigh) {
        return polygon(List.of(
                new Corner("BOTTOM", Length.ZERO, Length.ZERO),
                new Corner("RIGHT", wide, Length.ZERO),
                new Corner("TOP", wide, rightHigh),
                new Corner("LEFT", Length.ZERO, leftHigh)));
    }

    /** Level bottom and top, the narrower centred over the wider; edges BOTTOM, RIGHT, TOP, LEFT, its box's corner at the origin. */
    public static Outline tapered(Length bottom, Length top, Length high) {
        Length middle = bottom.max(top).half();
        return polygon(List.of(
                new Corner("BOTTOM", middle.minus(bottom.half()), Length.ZERO),
                new Corner("RIGHT", middle.plus(bottom.half()), Length.ZERO),
                new Corner("TOP", middle.plus(top.half()), high),
                new Corner("LEFT", middle.minus(top.half()), high)));
    }

    /** A wall with a peak: edges FOOT, RIGHT_WALL, RIGHT_SLOPE, LEFT_SLOPE, LEFT_WALL, lower left corner at the origin. */
    public static Outline gable(Length wide, Length eaves, Angle slope) {
        return polygon(List.of(
                new Corner("FOOT", Length.ZERO, Length.ZERO),
                new Corner("RIGHT_WALL", wide, Length.ZERO),
                new Corner("RIGHT_SLOPE", wide, eaves),
                new Corner("LEFT_SLOPE", wide.half(), eaves.plus(slope.rise(wide.half()))),
                new Corner("LEFT_WALL", Length.ZERO, eaves)));
    }

    /** Four arcs named ROUND about the origin. */
    public static Outline circle(Length diameter) {
        Length r = diameter.half();
        Length back = r.negated();
        Length none = Length.ZERO;
        List<Point> points =
                List.of(new Point(r, none), new Point(none, r), new Point(back, none), new Point(none, back));
        List<OutlineEdge> arcs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            arcs.add(new OutlineEdge("ROUND", points.get(i), points.get((i + 1) % 4), StrictMath.PI / 2));
        }
        return Rings.checked(new Outline(arcs, Map.of()));
    }

    /**
     * Straight edges from corner to corner, counter-clockwise.
     *
     * @throws IllegalArgumentException if fewer than three, clockwise, crossing itself, or two edges of one name
     */
    public static Outline polygon(List<Corner> corners) {
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Corner from = corners.get(i);
            Corner to = corners.get((i + 1) % corners.size());
            edges.add(new OutlineEdge(from.edge(), new Point(from.u(), from.v()), new Point(to.u(), to.v()), 0));
        }
        return Rings.checked(new Outline(edges, Map.of()));
    }

    /** The edges of the ring, counter-clockwise. */
    public List<OutlineEdge> edges() {
        return edges;
    }

    /** The first edge of that name. @throws IllegalArgumentException if there is none */
    public OutlineEdge edge(String name) {
        return edges.get(Rings.index(this, name));
    }

    /** The names of the openings, in the order they were cut. */
    public Set<String> openings() {
        return openings.keySet();
    }

    /** The ring of an opening, counter-clockwise itself. @throws IllegalArgumentException if there is none of that name */
    public Outline opening(String name) {
        if (!openings.containsKey(name)) {
            throw new IllegalArgumentException(
                    "No opening (%s); there is: %s.".formatted(name, String.join(", ", openings.keySet())));
        }
        return openings.get(name);
    }

    /** Its lower left and upper right corner, arcs included; z is zero. */
    public Bounds bounds() {
        return Rings.bounds(this);
    }

    /** Left to right over all, rounded to 1 nm. */
    public Length wide() {
        return Length.ofMillimetres(bounds().sizes().x());
    }

    /** Bottom to top over all, rounded to 1 nm. */
    public Length high() {
        return Length.ofMillimetres(bounds().sizes().y());
    }

    /** What the ring encloses less its openings; arcs by closed form. */
    public Area area() {
        return Area.ofSquareMillimetres(Rings.lump(this).size());
    }

    /** The length of the ring, without its openings. */
    public Length around() {
        return edges.stream().map(OutlineEdge::length).reduce(Length.ZERO, Length::plus);
    }

    /** The middle of the area, arcs by closed form; z is zero. */
    public Vector centroid() {
        return Rings.lump(this).centre();
    }

    /** This with an opening cut through. @throws IllegalArgumentException if it does not lie inside, clear of edges and others */
    public Outline opening(String name, Outline shape) {
        if (openings.containsKey(name)) {
            throw new IllegalArgumentException("Two openings (%s) in one part: give each a name.".formatted(name));
        }
        Map<String, Outline> more = new LinkedHashMap<>(openings);
        more.put(name, shape);
        return Rings.checked(new Outline(edges, more));
    }

    /** Moved in the sheet, openings with it. */
    public Outline moved(Length du, Length dv) {
        return mapped(e -> new OutlineEdge(e.name(), e.from().moved(du, dv), e.to().moved(du, dv), e.sweep()), false);
    }

    /** Left and right exchanged about the middle of its box, openings with it; every name stays with its edge. */
    public Outline mirrored() {
        Bounds box = bounds();
        return mirrored(Length.ofMillimetres(box.low().x() + box.high().x()));
    }

    Outline mirrored(Length sum) {
        UnaryOperator<Point> flip = p -> new Point(sum.minus(p.u()), p.v());
        return mapped(e -> new OutlineEdge(e.name(), flip.apply(e.to()), flip.apply(e.from()), e.sweep()), true);
    }

    private Outline mapped(UnaryOperator<OutlineEdge> map, boolean backwards) {
        List<OutlineEdge> moved = new ArrayList<>(edges.stream().map(map).toList());
        if (backwards) {
            Collections.reverse(moved);
        }
        Map<String, Outline> inner = new LinkedHashMap<>();
        openings.forEach((name, ring) -> inner.put(name, ring.mapped(map, backwards)));
        return new Outline(moved, inner);
    }

    /** Every corner of the ring rounded to an arc tangent to both edges, named {@code EDGE_NEXT}: BOTTOM_RIGHT. */
    public Outline rounded(Length radius) {
        return Rings.checked(new Outline(OutlineCuts.rounded(this, radius, e -> true), openings));
    }

    /** The corner at the end of one edge rounded. @throws IllegalArgumentException if there is no such edge or no room */
    public Outline roundedAfter(String edge, Length radius) {
        int index = Rings.index(this, edge);
        return Rings.checked(new Outline(OutlineCuts.rounded(this, radius, i -> i == index), openings));
    }

    /**
     * An edge sawn at an angle from square, so that its neighbour stays as long as it is; the new edge keeps the name.
     *
     * @param longAt the neighbouring edge on which the long point stays
     * @param angle from square, more than 0 and less than 90 degrees
     */
    public Outline mitred(String edge, String longAt, Angle angle) {
        return OutlineCuts.mitred(this, edge, longAt, angle);
    }

    /**
     * Sawn off straight: keeps the side where {@code nu·u + nv·v <= offset}.
     *
     * @param name of the new edge
     * @param offset in millimetres
     * @throws IllegalArgumentException if an arc or an opening is in the way, nothing is left or it falls in two
     */
    public Outline sawn(String name, double nu, double nv, double offset) {
        return OutlineCuts.sawn(this, name, new HalfPlane(nu, nv, offset));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline that && edges.equals(that.edges) && openings.equals(that.openings);
    }

    @Override
    public int hashCode() {
        return edges.hashCode() * 31 + openings.hashCode();
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("outline");
        edges.forEach(e -> text.append(' ')
                .append(e.name())
                .append(" (")
                .append(e.from().u())
                .append(", ")
                .append(e.from().v())
                .append(')'));
        openings.forEach(
                (name, ring) -> text.append("; ").append(name).append(": ").append(ring));
        return text.toString();
    }
}
