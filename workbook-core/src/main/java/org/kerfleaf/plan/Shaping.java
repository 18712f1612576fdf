package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Corner;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Shape;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Trait;

/**
 * Gives a part its shape, in its own frame: outline, openings, mitres, bevels, rabbets and grooves as they were said.
 *
 * <p>Sides are said as the part stands; in its outline LEFT, RIGHT, BOTTOM and TOP are its edges seen from the back, the right
 * or above, so a part that faces a side has its front at LEFT, and one that lies has its front at BOTTOM.
 */
final class Shaping {
    private Shaping() {}

    /** The outline that a part's own sizes and words give it, before anything is cut out or off. */
    static Outline outline(Part part, Length across, Length up) {
        Optional<Trait.Gable> gable = part.trait(Trait.Gable.class);
        Optional<Trait.SlopingTop> top = part.trait(Trait.SlopingTop.class);
        Optional<Trait.WideAtTop> tapered = part.trait(Trait.WideAtTop.class);
        Optional<Trait.Corners> corners = part.trait(Trait.Corners.class);
        if (gable.isPresent()) {
            return Outline.gable(across, gable.get().eaves(), gable.get().slope());
        }
        if (top.isPresent()) {
            return Outline.trapezoid(across, top.get().front(), top.get().back());
        }
        if (tapered.isPresent()) {
            return Outline.tapered(across, tapered.get().length(), up);
        }
        if (part.trait(Trait.RoundDisc.class).isPresent()) {
            return Outline.circle(across).moved(across.half(), across.half());
        }
        return corners.map(said -> cornered(part, said.corners(), across, up))
                .orElseGet(() -> Outline.rectangle(across, up));
    }

    private static Outline cornered(Part part, List<Shape.At> corners, Length across, Length up) {
        for (Shape.At at : corners) {
            boolean within = !at.along().isNegative()
                    && !at.up().isNegative()
                    && !at.along().isLongerThan(across)
                    && !at.up().isLongerThan(up);
            if (!within) {
                throw new Unplannable(
                        part.origin(),
                        "A corner of “%s” is at %s, %s, outside its %s by %s. Corners within its two sizes would be right."
                                .formatted(part.name(), at.along(), at.up(), across, up));
            }
        }
        int[] number = {0};
        return Outline.polygon(corners.stream()
                .map(at -> new Corner("EDGE_" + ++number[0], at.along(), at.up()))
                .toList());
    }

    /** The solid of an outline with everything that was said of it. */
    static Solid solid(Part part, Standing standing, Outline plain, Length thickness, List<Cutout> cutouts) {
        Outline outline = plain;
        for (Trait.Mitred mitre : part.traits(Trait.Mitred.class)) {
            Angle scale = Edges.cut(mitre.meets()).mitre().value();
            if (!scale.isZero()) {
                outline = outline.mitred(
                        edge(part, standing, outline, mitre.end()),
                        standing.beside(mitre.longAt()).orElseThrow(() -> noEdge(part, standing, mitre.longAt())),
                        scale);
            }
        }
        Optional<Trait.RoundedCorners> rounded = part.trait(Trait.RoundedCorners.class);
        if (rounded.isPresent()) {
            outline = outline.rounded(rounded.get().radius());
        }
        for (Cutout cutout : cutouts) {
            outline = withOpening(part, outline, cutout);
        }
        Solid solid = Solid.of(outline, thickness);
        Optional<Angle> rises = part.trait(Trait.TopBevel.class).map(Trait.TopBevel::rises);
        if (rises.isPresent() && !rises.get().isZero()) {
            boolean inward = rises.get().nanodegrees() > 0;
            Angle tilt = inward ? rises.get() : Angle.ZERO.minus(rises.get());
            solid = solid.bevelled(
                    edge(part, standing, outline, Side.TOP), tilt, inward ? SheetSide.INSIDE : SheetSide.OUTSIDE);
        }
        for (Trait.Mitred mitre : part.traits(Trait.Mitred.class)) {
            Angle tilt = Edges.cut(mitre.meets()).tilt().value();
            if (!tilt.isZero()) {
                solid = solid.bevelled(edge(part, standing, outline, mitre.end()), tilt, SheetSide.OUTSIDE);
            }
        }
        for (Trait.Bevelled bevel : part.traits(Trait.Bevelled.class)) {
            solid = solid.bevelled(
                    edge(part, standing, outline, bevel.edge()), bevel.tilt(), face(part, bevel.longOn()));
        }
        return pockets(part, standing, solid);
    }

    private static Solid pockets(Part part, Standing standing, Solid square) {
        Solid solid = square;
        for (Trait.RabbetIn rabbet : part.traits(Trait.RabbetIn.class)) {
            solid = solid.rabbetAround(
                    "rabbet round " + rabbet.opening(),
                    rabbet.opening(),
                    rabbet.wide(),
                    rabbet.deep(),
                    face(part, rabbet.face()));
        }
        for (Trait.RabbetAlong rabbet : part.traits(Trait.RabbetAlong.class)) {
            solid = solid.rabbetAlong(
                    "rabbet at " + rabbet.edge().words(),
                    edge(part, standing, solid.outline(), rabbet.edge()),
                    rabbet.wide(),
                    rabbet.deep(),
                    face(part, rabbet.face()));
        }
        for (Trait.GrooveIn groove : part.traits(Trait.GrooveIn.class)) {
            solid = solid.groove(
                    groove.name(),
                    edge(part, standing, solid.outline(), groove.along()),
                    groove.from(),
                    groove.wide(),
                    groove.deep(),
                    face(part, groove.face()));
        }
        return solid;
    }

    /** INSIDE and OUTSIDE as said; of what lies flat also TOP and BOTTOM. */
    private static SheetSide face(Part part, Side said) {
        return switch (said) {
            case INSIDE, TOP -> SheetSide.INSIDE;
            case OUTSIDE, BOTTOM -> SheetSide.OUTSIDE;
            default ->
                throw new Unplannable(
                        part.origin(),
                        "“%s” has no face at %s. INSIDE or OUTSIDE would be right, or TOP or BOTTOM if it lies flat."
                                .formatted(part.name(), said.words()));
        };
    }

    /** The outline's edge on that side of the part as it stands. */
    private static String edge(Part part, Standing standing, Outline outline, Side side) {
        String name = standing.edge(side).orElseThrow(() -> noEdge(part, standing, side));
        boolean there = outline.edges().stream().anyMatch(e -> e.name().equals(name));
        if (!there) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” has no one straight edge at %s to be sawn or rabbeted.".formatted(part.name(), side.words()));
        }
        return name;
    }

    private static Unplannable noEdge(Part part, Standing standing, Side side) {
        return new Unplannable(
                part.origin(),
                "“%s” has no edge at %s as it stands. One of %s would be right."
                        .formatted(part.name(), side.words(), standing.sides()));
    }

    /** Sloping tops, rounded corners and neighbours leave less room than the part's two sizes, by which a cutout was placed. */
    private static Outline withOpening(Part part, Outline outline, Cutout cutout) {
        try {
            return outline.opening(cutout.name(), shape(cutout));
        } catch (IllegalArgumentException noRoom) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” of “%s” goes past its outline or into another opening or hole, or its corners are rounder than it has room for. Smaller, or placed elsewhere, would do."
                            .formatted(cutout.name(), part.name()));
        }
    }

    private static Outline shape(Cutout cutout) {
        if (!cutout.opening()) {
            return Outline.circle(cutout.wide()).moved(cutout.middleAcross(), cutout.middleUp());
        }
        Outline rectangle = Outline.rectangle(cutout.wide(), cutout.high());
        Outline shape = cutout.radius().isPositive() ? rectangle.rounded(cutout.radius()) : rectangle;
        return shape.moved(cutout.from(), cutout.up());
    }
}
