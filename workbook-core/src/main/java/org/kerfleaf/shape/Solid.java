package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Volume;

/**
 * A part: an outline as thick as its stock, sawn off by named cuts, less named pockets.
 *
 * <p>Its own frame: u and v in the outline, w from 0, the OUTSIDE or lower face, to the thickness, the INSIDE or upper face;
 * right-handed, so one sees u to the right and v up when looking at the INSIDE. Faces follow from this definition and are never
 * split, so names are stable at every size.
 */
public final class Solid {
    private final Outline outline;
    private final Length thickness;
    private final List<Cut> cuts;
    private final List<Pocket> pockets;
    // Worked out when first asked for; two threads may both do it, with the same result.
    private volatile Section section;
    private volatile List<Face> faces;
    private volatile SolidMeasure measure;
    private volatile Hull hull;
    private volatile List<ConvexPiece> pieces;

    private Solid(Outline outline, Length thickness, List<Cut> cuts, List<Pocket> pockets) {
        this.outline = outline;
        this.thickness = thickness;
        this.cuts = List.copyOf(cuts);
        this.pockets = List.copyOf(pockets);
    }

    /** @throws IllegalArgumentException if the thickness is not more than nothing */
    public static Solid of(Outline outline, Length thickness) {
        if (!thickness.isPositive()) {
            throw new IllegalArgumentException(
                    "A part %s thick: it should be thicker than nothing.".formatted(thickness));
        }
        return new Solid(outline, thickness, List.of(), List.of());
    }

    public Outline outline() {
        return outline;
    }

    public Length thickness() {
        return thickness;
    }

    public List<Cut> cuts() {
        return cuts;
    }

    public List<Pocket> pockets() {
        return pockets;
    }

    /**
     * An edge sawn with the blade tilted; the outline stays the size of the long face. The cut has the edge's name.
     *
     * @param tilt from square to the sheet, more than 0 and less than 90 degrees
     * @param longFace the face that keeps its size
     */
    public Solid bevelled(String edge, Angle tilt, SheetSide longFace) {
        OutlineEdge side = outline.edge(edge);
        if (side.isArc() || tilt.inDegrees() <= 0 || tilt.inDegrees() >= 90) {
            throw new IllegalArgumentException(
                    "Edge (%s) bevelled by %s: a straight edge and an angle between 0 and 90 degrees would be right."
                            .formatted(edge, tilt));
        }
        double out = side.leaves() - StrictMath.PI / 2;
        double up = longFace == SheetSide.INSIDE ? -1 : 1;
        Vector normal = new Vector(StrictMath.cos(out) * tilt.cos(), StrictMath.sin(out) * tilt.cos(), up * tilt.sin());
        double w = longFace == SheetSide.INSIDE ? thickness.inMillimetres() : 0;
        Vector onEdge = new Vector(side.from().x(), side.from().y(), w);
        return cut(new Cut(edge, normal.normalised(), normal.normalised().dot(onEdge)));
    }

    /**
     * An end sawn with the blade swung and tilted.
     *
     * @param longAt the neighbouring edge on which the long point stays
     * @param mitre in the sheet, from square
     * @param tilt of the blade, from square to the sheet; zero for a plain mitre
     */
    public Solid mitredEnd(String edge, String longAt, Angle mitre, Angle tilt, SheetSide longFace) {
        Outline swung = mitre.isZero() ? outline : outline.mitred(edge, longAt, mitre);
        Solid square = new Solid(swung, thickness, cuts, pockets);
        return tilt.isZero() ? square : square.bevelled(edge, tilt, longFace);
    }

    /** Sawn off at any plane not square to the sheet. */
    public Solid cut(Cut cut) {
        List<Cut> more = new ArrayList<>(cuts);
        more.add(cut);
        return new Solid(outline, thickness, more, pockets);
    }

    /** With wood taken out from one side. @throws IllegalArgumentException if it is as deep as the sheet or its name is taken */
    public Solid pocket(String name, Outline shape, Length depth, SheetSide side) {
        if (!depth.isShorterThan(thickness)) {
            throw new IllegalArgumentException("Pocket (%s) is %s deep in a part of %s: cut an opening instead."
                    .formatted(name, depth, thickness));
        }
        if (pockets.stream().anyMatch(p -> p.name().equals(name))) {
            throw new IllegalArgumentException("Two pockets (%s) in one part: give each a name.".formatted(name));
        }
        List<Pocket> more = new ArrayList<>(pockets);
        more.add(new Pocket(name, shape, depth, side));
        return new Solid(outline, thickness, cuts, more);
    }

    /** A rabbet along a straight edge of the outline. */
    public Solid rabbetAlong(String name, String edge, Length wide, Length depth, SheetSide side) {
        return pocket(name, Recesses.along(outline, edge, wide), depth, side);
    }

    /** A rabbet all round an opening, with square corners. */
    public Solid rabbetAround(String name, String opening, Length wide, Length depth, SheetSide side) {
        return pocket(name, Recesses.around(outline.opening(opening), wide), depth, side);
    }

    /** A groove right across, side by side with a straight edge, its near wall so far from that edge. */
    public Solid groove(String name, String edge, Length from, Length wide, Length depth, SheetSide side) {
        return pocket(name, Recesses.across(outline, edge, from, wide), depth, side);
    }

    /** The other hand: u mirrored about the middle of the outline's box; every name stays with its face. */
    public Solid mirrored() {
        Bounds box = outline.bounds();
        Length sum = Length.ofMillimetres(box.low().x() + box.high().x());
        List<Cut> otherCuts = cuts.stream()
                .map(c -> new Cut(
                        c.name(),
                        new Vector(-c.normal().x(), c.normal().y(), c.normal().z()),
                        c.offset() - c.normal().x() * sum.inMillimetres()))
                .toList();
        List<Pocket> otherPockets = pockets.stream()
                .map(p -> new Pocket(p.name(), p.shape().mirrored(sum), p.depth(), p.side()))
                .toList();
        return new Solid(outline.mirrored(sum), thickness, otherCuts, otherPockets);
    }

    /** Whether this and its mirrored twin are a pair of equals or left and right. */
    public Hands hands() {
        return Hands.of(this);
    }

    /** All faces, arcs as facets; in a fixed order. */
    public List<Face> faces() {
        List<Face> found = faces;
        if (found == null) {
            found = SolidFaces.of(this, section());
            faces = found;
        }
        return found;
    }

    /** The faces of that name: facets of an arc, or what grooves leave of it. @throws IllegalArgumentException if there is none */
    public List<Face> faces(String name) {
        List<Face> named = faces().stream().filter(f -> f.name().equals(name)).toList();
        if (named.isEmpty()) {
            String names = faces().stream().map(Face::name).distinct().collect(Collectors.joining(", "));
            throw new IllegalArgumentException("No face (%s); there is: %s.".formatted(name, names));
        }
        return named;
    }

    /** The flat face of that name, the largest piece of it. @throws IllegalArgumentException if there is none or it is round */
    public Face face(String name) {
        Face largest = faces(name).stream()
                .max(Comparator.comparingDouble(Face::squareMillimetres))
                .orElseThrow();
        if (largest.isFacet()) {
            throw new IllegalArgumentException("Face (%s) is round: it has no one plane.".formatted(name));
        }
        return largest;
    }

    public Volume volume() {
        return Volume.ofCubicMillimetres(measure().wood().size());
    }

    /** The middle of the wood, in this frame. */
    public Vector centroid() {
        return measure().wood().centre();
    }

    /** The area of all faces of that name; arcs count in full. */
    public Area area(String name) {
        faces(name);
        return Area.ofSquareMillimetres(measure().areas().get(name));
    }

    /** The names of its edges: all faces but the two wide ones and those of pockets. */
    public List<String> edges() {
        return faces().stream()
                .map(Face::name)
                .distinct()
                .filter(name -> Arrays.stream(SheetSide.values())
                                .noneMatch(side -> side.name().equals(name))
                        && pockets.stream().noneMatch(pocket -> name.startsWith(pocket.name() + " ")))
                .toList();
    }

    /** The area of all edges. */
    public Area edgeArea() {
        return edges().stream().map(this::area).reduce(Area.ZERO, Area::plus);
    }

    /** The area of all faces. */
    public Area surface() {
        return Area.ofSquareMillimetres(
                measure().areas().values().stream().mapToDouble(a -> a).sum());
    }

    /** Whether a point of this frame is in the wood, not on a face. */
    public boolean holds(Vector point) {
        return point.z() > 0
                && point.z() < thickness.inMillimetres()
                && cuts.stream().allMatch(c -> c.beyond(point) < 0)
                && section().inSheet(point.x(), point.y())
                && point.z() > section().low(point.x(), point.y())
                && point.z() < section().high(point.x(), point.y());
    }

    /** How far from closed the surface is: the length of Σ area · normal, in square millimetres; nothing but rounding. */
    double unclosed() {
        return measure().unclosed();
    }

    /** The corners of all faces, each once. */
    public List<Vector> corners() {
        return hull().corners();
    }

    /** Which faces have all of the solid behind them, by their place in {@link #faces()}. */
    int[] hullFaces() {
        return hull().faces();
    }

    private Hull hull() {
        Hull found = hull;
        if (found == null) {
            found = Hull.of(faces());
            hull = found;
        }
        return found;
    }

    /** The solid as convex pieces in its own frame, side by side. */
    List<ConvexPiece> pieces() {
        List<ConvexPiece> found = pieces;
        if (found == null) {
            found = ConvexPieces.of(this, section());
            pieces = found;
        }
        return found;
    }

    Section section() {
        Section found = section;
        if (found == null) {
            found = new Section(this);
            section = found;
        }
        return found;
    }

    private SolidMeasure measure() {
        SolidMeasure found = measure;
        if (found == null) {
            found = new SolidMeasure(this, section());
            measure = found;
        }
        return found;
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Solid that
                        && thickness.equals(that.thickness)
                        && outline.equals(that.outline)
                        && cuts.equals(that.cuts)
                        && pockets.equals(that.pockets);
    }

    @Override
    public int hashCode() {
        return Objects.hash(outline, thickness, cuts, pockets);
    }

    @Override
    public String toString() {
        return "%s, %s thick, cuts %s, pockets %s".formatted(outline, thickness, cuts, pockets);
    }
}
