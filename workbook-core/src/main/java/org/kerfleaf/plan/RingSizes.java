package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.CompoundMitre;
import org.kerfleaf.shape.Corner;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Trait;

/**
 * Sizes the equal sides of a ring that leans out, and the floor in it. Geometry; the saw's angles as {@link CompoundMitre}.
 *
 * <p>With n sides that lean out by f from upright, height H and thickness t: a side is H / cos f long along its slope; its top
 * and foot are level, so its blank is longer by t · tan f; across the flats the ring grows by 2 · tan f for each length up, and a
 * side of a ring that is F across the flats is F · tan(180°/n) wide.
 */
final class RingSizes {
    private RingSizes() {}

    /** Half the turn from one side to the next. */
    static Angle halfTurn(int sides) {
        return Angle.ofDegrees(180.0 / sides);
    }

    static SizedPart side(Sizing sizing, Part part, Figure<Length> thickness) {
        Trait.RingOf ring = part.trait(Trait.RingOf.class).orElseThrow();
        Angle leans = ring.leansOut();
        if (leans.inDegrees() < 0 || leans.inDegrees() >= 60) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” leans out by %s. From 0 to less than 60 degrees would be right."
                            .formatted(part.name(), leans));
        }
        Length high = part.trait(Trait.High.class).map(Trait.High::length).orElseThrow(() -> missing(part, "high"));
        Length top = part.trait(Trait.Wide.class).map(Trait.Wide::length).orElseThrow(() -> missing(part, "wide"));
        Length t = thickness.value();
        Length below = leans.rise(t);
        Length blank = leans.lengthOver(high).plus(below);
        Length foot = widthAt(ring, top, high, leans.cos() * -below.inMillimetres());
        if (!foot.isPositive()) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” leans out so much that the ring closes before its foot. Less lean, or a wider top, would do."
                            .formatted(part.name()));
        }
        Figure<Length> across = Figure.said(top, "wide on top, outside");
        Figure<Length> up = Figure.of(
                blank,
                "height / cos lean, + t · tan lean because top and foot are level",
                Reason.GEOMETRY,
                given("height", high),
                given("lean", leans),
                given("t", t));
        // The inside face reaches down to the foot, the outside face up to the top.
        Outline outline = Outline.tapered(foot, top, blank);
        SizedPart square = sizing.finish(part, Standing.SLOPES, across, up, thickness, outline, edges(ring, t, high));
        CompoundMitre mitre = mitre(ring);
        Angle tilt = mitre.tilt().value();
        Solid solid =
                square.solid().bevelled("LEFT", tilt, SheetSide.OUTSIDE).bevelled("RIGHT", tilt, SheetSide.OUTSIDE);
        if (!leans.isZero()) {
            solid = solid.bevelled("TOP", leans, SheetSide.OUTSIDE).bevelled("BOTTOM", leans, SheetSide.INSIDE);
        }
        return new SizedPart(part, Standing.SLOPES, across, up, thickness, solid, square.cutouts(), square.edges());
    }

    private static CompoundMitre mitre(Trait.RingOf ring) {
        return CompoundMitre.ofSides(Angle.RIGHT.minus(ring.leansOut()), ring.sides());
    }

    private static List<PlannedEdge> edges(Trait.RingOf ring, Length t, Length high) {
        List<PlannedEdge> edges = new ArrayList<>();
        Length slant = ring.leansOut().lengthOver(high);
        edges.add(Edges.compound("both ends, long point outside", mitre(ring), slant));
        if (!ring.leansOut().isZero()) {
            Figure<Angle> lean = Figure.of(
                    ring.leansOut(),
                    "the lean, so that top and foot are level",
                    Reason.GEOMETRY,
                    given("lean", ring.leansOut()));
            edges.add(Edges.bevel("top, long point outside; foot, long point inside", lean, t));
        }
        return edges;
    }

    private static Unplannable missing(Part part, String word) {
        return new Unplannable(
                part.origin(),
                "“%s” is one of a ring: it needs to be wide (its top, outside) and high (upright). Say .%s(...)."
                        .formatted(part.name(), word));
    }

    /** How wide a side's outside is so far up from the ring's foot, in millimetres upright. */
    static Length widthAt(Trait.RingOf ring, Length top, Length high, double upMillimetres) {
        double lower = high.inMillimetres() - upMillimetres;
        double narrower =
                2 * lower * ring.leansOut().tan() * halfTurn(ring.sides()).tan();
        return Length.ofMillimetres(top.inMillimetres() - narrower);
    }

    /** Across the flats of the outside at the foot, halved, in millimetres: how far a side's foot stands from the middle. */
    static double footFromMiddle(SizedPart side) {
        Trait.RingOf ring = side.said().trait(Trait.RingOf.class).orElseThrow();
        Length high = side.said().trait(Trait.High.class).orElseThrow().length();
        return widthAt(ring, side.across().value(), high, 0).inMillimetres()
                / 2
                / halfTurn(ring.sides()).tan();
    }

    /** How far the middle of a floor's side stands from the ring's middle, in millimetres. */
    static double floorFromMiddle(SizedPart floor, SizedPart side) {
        return insideFromMiddle(
                side,
                side.said().trait(Trait.RingOf.class).orElseThrow(),
                floor.said().trait(Trait.FitsRing.class).orElseThrow().up());
    }

    private static double insideFromMiddle(SizedPart side, Trait.RingOf ring, Length up) {
        return footFromMiddle(side)
                + up.inMillimetres() * ring.leansOut().tan()
                - side.thickness().value().inMillimetres() / ring.leansOut().cos();
    }

    /** A floor with square edges that touches the sides' insides along its lower edges. */
    static SizedPart floor(Sizing sizing, Part part, SizedPart side, Figure<Length> thickness) {
        Trait.RingOf ring = side.said()
                .trait(Trait.RingOf.class)
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” fits in a ring of “%s”, which is none. Say .ringOf(6, \"15 deg\") there."
                                .formatted(part.name(), side.said().name())));
        Length up = part.trait(Trait.FitsRing.class).orElseThrow().up();
        double flats = 2 * insideFromMiddle(side, ring, up);
        if (!(flats > 0)) {
            throw new Unplannable(
                    part.origin(), "There is no room for “%s” %s up in the ring.".formatted(part.name(), up));
        }
        double width = flats * halfTurn(ring.sides()).tan();
        Outline outline = regular(ring.sides(), flats);
        Figure<Length> across = Figure.of(
                outline.wide(),
                "corner to corner of the ring's inside at the floor's underside",
                Reason.GEOMETRY,
                given("across the flats", Length.ofMillimetres(flats)),
                given("one side", Length.ofMillimetres(width)));
        Figure<Length> high = Figure.of(
                outline.high(),
                "front to back; across the flats it is the ring's foot + 2 · up · tan lean − 2 · t / cos lean",
                Reason.GEOMETRY,
                given("foot", Length.ofMillimetres(2 * footFromMiddle(side))),
                given("up", up),
                given("lean", ring.leansOut()),
                given("t", side.thickness().value()));
        return sizing.finish(part, Standing.LIES, across, high, thickness, outline, List.of());
    }

    /** A regular outline with one side in front, its box's corner at the origin. */
    private static Outline regular(int sides, double flats) {
        double radius = flats / 2 / halfTurn(sides).cos();
        double lowest = -flats / 2;
        double leftmost = 0;
        double[] x = new double[sides];
        double[] y = new double[sides];
        for (int i = 0; i < sides; i++) {
            // Counter-clockwise from the left corner of the front side.
            double turn = -StrictMath.PI / 2 + StrictMath.PI / sides * (2 * i - 1);
            x[i] = radius * StrictMath.cos(turn);
            y[i] = radius * StrictMath.sin(turn);
            leftmost = Math.min(leftmost, x[i]);
        }
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            corners.add(new Corner(
                    "SIDE_" + (i + 1), Length.ofMillimetres(x[i] - leftmost), Length.ofMillimetres(y[i] - lowest)));
        }
        return Outline.polygon(corners);
    }
}
