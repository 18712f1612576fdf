package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.sketch.EdgeOf;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.OpeningOf;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.stock.DressedSize;

/**
 * Gives every part its sizes: those that were said, and those that follow from other parts, in the order of need.
 *
 * <p>A part that takes its size from itself by way of others is a problem that names the ring; a part that needs one
 * without sizes waits for it.
 */
final class Sizing {
    private final Sketch sketch;
    private final MeasureStyle style;
    private final Map<String, Optional<SizedPart>> sized = new HashMap<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final Problems problems;
    private SlopeSizes slopes;

    Sizing(Sketch sketch, MeasureStyle style, Problems problems) {
        this.sketch = sketch;
        this.style = style;
        this.problems = problems;
    }

    /** How lengths are printed where something does not fit. */
    MeasureStyle style() {
        return style;
    }

    /** Where placed parts are, for sizes that follow from it. */
    void using(Places where) {
        this.slopes = new SlopeSizes(this, where);
    }

    /** The part with its sizes, if they can be known. */
    Optional<SizedPart> of(String name) {
        Optional<SizedPart> known = sized.get(name);
        if (known != null) {
            return known;
        }
        Optional<Part> part = sketch.part(name);
        Optional<SizedPart> result = part.flatMap(p -> problems.trying(p.origin(), () -> inOrderOfNeed(p)));
        sized.put(name, result);
        return result;
    }

    private SizedPart inOrderOfNeed(Part part) {
        if (!open.add(part.name())) {
            throw new Unplannable(
                    part.origin(),
                    "Sizes go round in a ring: %s. One of them needs a size of its own."
                            .formatted(String.join(" takes from ", open) + " takes from " + part.name()));
        }
        try {
            return part.kind() == PartKind.BOARD ? board(part) : sheetPart(part);
        } finally {
            open.remove(part.name());
        }
    }

    SizedPart need(Part asking, String other) {
        return of(other)
                .orElseThrow(() -> new Unplannable(
                        asking.origin(),
                        "“%s” waits for “%s”, which has no sizes yet.".formatted(asking.name(), other)));
    }

    // ---- panels and panes ------------------------------------------------------------------------------------

    private SizedPart sheetPart(Part part) {
        Sheet sheet = sketch.sheet(part.stock())
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” is cut from “%s”, which is kept nowhere. Write: Sheet name = sheet(...)."
                                .formatted(part.name(), part.stock())));
        Figure<Length> thickness = sheet.measured().isPresent()
                ? Figure.of(sheet.thickness(), "thickness by caliper", Reason.THE_WORKBOOK)
                : Figure.of(sheet.thickness(), "thickness as sold, never measured", Reason.THE_WORKBOOK);
        if (part.kind() == PartKind.PANE) {
            return pane(part, sheet, thickness);
        }
        if (part.trait(Trait.OverGables.class).isPresent()) {
            return slopes.overGables(part, thickness);
        }
        if (part.trait(Trait.OverSlope.class).isPresent()) {
            return slopes.onOneSlope(part, thickness, Optional.empty());
        }
        if (part.trait(Trait.RingOf.class).isPresent()) {
            return RingSizes.side(this, part, thickness);
        }
        if (part.trait(Trait.FitsRing.class).isPresent()) {
            return RingSizes.floor(
                    this,
                    part,
                    need(part, part.trait(Trait.FitsRing.class).get().side()),
                    thickness);
        }
        if (part.trait(Trait.Laps.class).isPresent()) {
            return lapping(part, thickness);
        }
        return panel(part, thickness);
    }

    private SizedPart panel(Part part, Figure<Length> thickness) {
        Optional<Length> wide = part.trait(Trait.Wide.class).map(Trait.Wide::length);
        Optional<Length> deep = part.trait(Trait.Deep.class).map(Trait.Deep::length);
        Optional<Length> round = part.trait(Trait.RoundDisc.class).map(Trait.RoundDisc::across);
        boolean upright = isUpright(part);
        if (round.isPresent()) {
            Figure<Length> across = Figure.said(round.get(), "across");
            return finish(part, Standing.LIES, across, across, thickness, List.of());
        }
        if (wide.isPresent() && deep.isPresent() && !upright) {
            Figure<Length> across = Figure.said(wide.get(), "wide");
            return finish(part, Standing.LIES, across, Figure.said(deep.get(), "deep"), thickness, List.of());
        }
        if (upright && wide.isPresent() != deep.isPresent()) {
            Figure<Length> across = Figure.said(wide.or(() -> deep).orElseThrow(), wide.isPresent() ? "wide" : "deep");
            return upright(part, wide.isPresent() ? Standing.FACES_FRONT : Standing.FACES_SIDE, across, thickness);
        }
        throw new Unplannable(
                part.origin(),
                "“%s” needs two sizes: wide and deep to lie flat, wide and high to face front, deep and high to face a side."
                        .formatted(part.name()));
    }

    private static boolean isUpright(Part part) {
        return part.trait(Trait.High.class).isPresent()
                || part.trait(Trait.Gable.class).isPresent()
                || part.trait(Trait.SlopingTop.class).isPresent();
    }

    private SizedPart upright(Part part, Standing standing, Figure<Length> across, Figure<Length> thickness) {
        Optional<Trait.Gable> gable = part.trait(Trait.Gable.class);
        if (gable.isPresent()) {
            return gabled(part, standing, across, thickness, gable.get());
        }
        Optional<Trait.SlopingTop> sloping = part.trait(Trait.SlopingTop.class);
        if (sloping.isPresent()) {
            Figure<Length> up =
                    Figure.said(sloping.get().front().max(sloping.get().back()), "the higher end");
            return finish(part, standing, across, up, thickness, slopingEnd(part, sloping.get(), across.value()));
        }
        Length said = part.trait(Trait.High.class).orElseThrow().length();
        Optional<Trait.TopBevel> bevel = part.trait(Trait.TopBevel.class);
        if (bevel.isEmpty()) {
            return finish(part, standing, across, Figure.said(said, "high"), thickness, List.of());
        }
        return bevelled(part, standing, across, thickness, said, bevel.get().rises());
    }

    /** A sloping top is one cut across a board, set on the mitre saw; on a sheet it is a line to be marked. */
    private static List<PlannedEdge> slopingEnd(Part part, Trait.SlopingTop top, Length across) {
        Angle slope = top.back().minus(top.front()).absolute().over(across);
        return part.kind() == PartKind.BOARD && !slope.isZero()
                ? List.of(Edges.mitre(
                        "upper end",
                        Figure.of(
                                slope,
                                "(one height − the other) over the width",
                                Reason.GEOMETRY,
                                given("in front", top.front()),
                                given("at the back", top.back()),
                                given("width", across)),
                        across))
                : List.of();
    }

    private SizedPart bevelled(
            Part part, Standing standing, Figure<Length> across, Figure<Length> thickness, Length said, Angle rises) {
        Side face = part.trait(Trait.SizedOn.class)
                .map(Trait.SizedOn::face)
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” has a bevelled top, so its two faces differ in height. Say .sizedOn(OUTSIDE) or .sizedOn(INSIDE)."
                                .formatted(part.name())));
        Length differ = rises.rise(thickness.value());
        Length outside = face == Side.OUTSIDE ? said : said.minus(differ);
        Length inside = face == Side.OUTSIDE ? said.plus(differ) : said;
        Figure<Length> up = Figure.of(
                outside.max(inside),
                "height on the %s face, and on the longer face what the bevel rises over the thickness: height + t · tan slope"
                        .formatted(face.words()),
                Reason.GEOMETRY,
                given("height", said),
                given("t", thickness.value()),
                given("slope", rises));
        Angle tilt = rises.nanodegrees() < 0 ? Angle.ZERO.minus(rises) : rises;
        Figure<Angle> from = Figure.of(tilt, "the slope of what lies on it", Reason.GEOMETRY, given("slope", tilt));
        String name = inside.isLongerThan(outside) ? "top, long point inside" : "top, long point outside";
        return finish(part, standing, across, up, thickness, List.of(Edges.bevel(name, from, thickness.value())));
    }

    private SizedPart gabled(
            Part part, Standing standing, Figure<Length> across, Figure<Length> thickness, Trait.Gable gable) {
        Length half = across.value().half();
        Figure<Length> up = Figure.of(
                gable.eaves().plus(gable.slope().rise(half)),
                "height at the peak: eaves + half width · tan slope",
                Reason.GEOMETRY,
                given("eaves", gable.eaves()),
                given("half width", half),
                given("slope", gable.slope()));
        return finish(part, standing, across, up, thickness, List.of());
    }

    private SizedPart lapping(Part part, Figure<Length> thickness) {
        Trait.Laps laps = part.trait(Trait.Laps.class).orElseThrow();
        Cutout opening = opening(part, laps.opening());
        Figure<Length> across = allRound(opening.wide(), laps.by(), "opening + lap on both sides");
        Figure<Length> up = allRound(opening.high(), laps.by(), "opening + lap at top and bottom");
        Standing standing = need(part, laps.opening().part()).standing();
        return finish(part, standing, across, up, thickness, List.of());
    }

    private static Figure<Length> allRound(Length opening, Length by, String rule) {
        return Figure.of(
                opening.plus(by, by), rule, Reason.GEOMETRY, given("opening", opening), given("each side", by));
    }

    private Cutout opening(Part asking, OpeningOf of) {
        return need(asking, of.part())
                .cutout(of.opening())
                .orElseThrow(() -> new Unplannable(
                        asking.origin(),
                        "“%s” has no opening “%s”. Say .opening(\"%s\", rectangle(...)) where it is made."
                                .formatted(of.part(), of.opening(), of.opening())));
    }

    // ---- boards ------------------------------------------------------------------------------------------------

    private SizedPart board(Part part) {
        Lumber lumber = sketch.lumber(part.stock())
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” is cut from “%s”, which is kept nowhere. Write: Lumber name = lumber(...)."
                                .formatted(part.name(), part.stock())));
        Optional<DressedSize> dressed = DressedSize.of(lumber.name());
        Optional<Length> thick = lumber.thickness().or(() -> dressed.map(DressedSize::thickness));
        Optional<Length> wide = lumber.width().or(() -> dressed.map(DressedSize::width));
        if (thick.isEmpty() || wide.isEmpty()) {
            throw new Unplannable(
                    lumber.origin(),
                    "The section of “%s” is not known. Say it: .section(\"3/4 in\", \"3 1/2 in\"), thickness first."
                            .formatted(lumber.name()));
        }
        String source = lumber.thickness().isPresent() ? Reason.THE_WORKBOOK : DressedSize.SOURCE;
        Figure<Length> thickness = Figure.of(thick.get(), "thickness of " + lumber.name(), source);
        Figure<Length> width = Figure.of(wide.get(), "width of " + lumber.name(), source);
        if (part.trait(Trait.OverSlope.class).isPresent()) {
            return slopes.onOneSlope(part, thickness, Optional.of(width));
        }
        if (isUpright(part)) {
            Standing standing =
                    part.trait(Trait.SlopingTop.class).isPresent() ? Standing.FACES_SIDE : Standing.FACES_FRONT;
            return upright(part, standing, width, thickness);
        }
        Optional<Trait.CutTo> cut = part.trait(Trait.CutTo.class);
        Optional<Trait.Along> along = part.trait(Trait.Along.class);
        if (cut.isEmpty() == along.isEmpty()) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” needs one length: .cutTo(\"18 in\"), .high(\"18 in\") if it stands, or .along(roof.rake())."
                            .formatted(part.name()));
        }
        Figure<Length> length = cut.map(c -> cutTo(part, c.length()))
                .orElseGet(() -> along(part, along.get().edge()));
        Outline outline = Outline.rectangle(length.value(), width.value());
        if (part.trait(Trait.MitredAtRidge.class).isEmpty()) {
            return finish(part, Standing.AS_PLACED, length, width, thickness, outline, List.of());
        }
        PlannedEdge mitre = slopes.ridgeMitre(part, width.value());
        Outline mitred = outline.mitred("RIGHT", "TOP", mitre.angle().value());
        return finish(part, Standing.AS_PLACED, length, width, thickness, mitred, List.of(mitre));
    }

    private static Figure<Length> cutTo(Part part, Length length) {
        return part.trait(Trait.Brace.class)
                .map(brace -> Figure.of(
                        length,
                        "√(out² + down²), long point to long point",
                        Reason.GEOMETRY,
                        given("out", brace.out()),
                        given("down", brace.down())))
                .orElseGet(() -> Figure.said(length, "cut to"));
    }

    private Figure<Length> along(Part part, EdgeOf edge) {
        SizedPart roof = need(part, edge.part());
        Length length = edge.edge() == EdgeOf.Edge.RAKE
                ? roof.up().value()
                : roof.across().value();
        Optional<String> covered = part.trait(Trait.CoversEndsOf.class).map(Trait.CoversEndsOf::part);
        Length more =
                covered.map(other -> need(part, other).thickness().value()).orElse(Length.ZERO);
        return Figure.of(
                length.plus(more, more),
                covered.isPresent()
                        ? "the edge it runs along + the thickness of what it covers, at both ends"
                        : "the edge it runs along",
                Reason.GEOMETRY,
                given("edge", length),
                given("each end", more));
    }

    // ---- what all have in common -------------------------------------------------------------------------------

    private SizedPart pane(Part part, Sheet sheet, Figure<Length> thickness) {
        Panes.Pocket pocket = pocket(part);
        Figure<Length> across = Panes.cut(part, sheet, pocket.wide(), style);
        Figure<Length> up = Panes.cut(part, sheet, pocket.high(), style);
        return finish(part, Standing.FACES_FRONT, across, up, thickness, List.of());
    }

    /** The pocket a pane goes into, if the pane's sizes are known. */
    Optional<Panes.Pocket> pocketOf(Part pane) {
        return of(pane.name()).map(known -> pocket(pane));
    }

    private Panes.Pocket pocket(Part pane) {
        Optional<Trait.FitsRabbet> frame = pane.trait(Trait.FitsRabbet.class);
        if (frame.isPresent()) {
            return new Panes.Pocket(
                    frame.get().clearWide(),
                    frame.get().clearHigh(),
                    frame.get().rabbetWide());
        }
        OpeningOf fits = pane.trait(Trait.FitsOpening.class)
                .map(Trait.FitsOpening::opening)
                .orElseThrow(() -> new Unplannable(
                        pane.origin(),
                        "“%s” fits nothing yet. Say .fits(door.opening(\"window\")), or .fitsFrame(wide, high, \"1/2 in\")."
                                .formatted(pane.name())));
        Cutout opening = opening(pane, fits);
        Length rabbet = need(pane, fits.part()).said().traits(Trait.RabbetIn.class).stream()
                .filter(r -> r.opening().equals(fits.opening()))
                .map(Trait.RabbetIn::wide)
                .findFirst()
                .orElseThrow(() -> new Unplannable(
                        pane.origin(),
                        "“%s” has no rabbet round “%s” for “%s” to lie in."
                                .formatted(fits.part(), fits.opening(), pane.name())));
        return new Panes.Pocket(opening.wide(), opening.high(), rabbet);
    }

    private SizedPart finish(
            Part part,
            Standing standing,
            Figure<Length> across,
            Figure<Length> up,
            Figure<Length> thickness,
            List<PlannedEdge> edges) {
        Outline outline = Shaping.outline(part, across.value(), up.value());
        return finish(part, standing, across, up, thickness, outline, edges);
    }

    /** The part with its solid, and the edges that its words saw off square. */
    SizedPart finish(
            Part part,
            Standing standing,
            Figure<Length> across,
            Figure<Length> up,
            Figure<Length> thickness,
            Outline outline,
            List<PlannedEdge> edges) {
        List<Cutout> cutouts = new Cutouts(part, standing, across.value(), up.value(), style).all();
        Solid solid = Shaping.solid(part, standing, outline, thickness.value(), cutouts);
        for (SheetSide side : SheetSide.values()) {
            if (solid.faces().stream().noneMatch(face -> face.name().equals(side.name()))) {
                throw new Unplannable(
                        part.origin(),
                        "What is routed out of “%s” leaves nothing of its %s face. A narrower rabbet or groove would do."
                                .formatted(part.name(), side == SheetSide.INSIDE ? "inside" : "outside"));
            }
        }
        List<PlannedEdge> all = new ArrayList<>(edges);
        all.addAll(Edges.said(part, up.value(), thickness.value()));
        return new SizedPart(part, standing, across, up, thickness, solid, cutouts, List.copyOf(all));
    }
}
