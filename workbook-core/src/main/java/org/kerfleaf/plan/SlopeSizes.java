package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.SawAngles;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Trait;

/** Sizes what lies on slopes, from the figures of what carries it: roofs over gables, lids and roofs on one slope. */
final class SlopeSizes {
    private static final String UPPER = "TOP";

    private final Sizing sizing;
    private final Places places;

    SlopeSizes(Sizing sizing, Places places) {
        this.sizing = sizing;
        this.places = places;
    }

    /** A half roof over the slopes of its gables. */
    SizedPart overGables(Part part, Figure<Length> thickness) {
        List<String> names = part.trait(Trait.OverGables.class).orElseThrow().gables();
        List<SizedPart> gables =
                names.stream().map(name -> sizing.need(part, name)).toList();
        SizedPart first = gables.get(0);
        Trait.Gable gable = first.said()
                .trait(Trait.Gable.class)
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” lies over “%s”, which has no gable. Say .gable(eaves, slope) there."
                                .formatted(part.name(), names.get(0))));
        for (SizedPart other : gables) {
            boolean same = other.said().trait(Trait.Gable.class).equals(Optional.of(gable))
                    && other.across().value().equals(first.across().value());
            if (!same) {
                throw new Unplannable(
                        part.origin(),
                        "“%s” and “%s” are not the same gable, so “%s” cannot lie on both."
                                .formatted(names.get(0), other.said().name(), part.name()));
            }
        }
        Length past = past(part, Side.EAVES);
        Length half = first.across().value().half();
        Length under = gable.slope().lengthOver(half).plus(past);
        boolean plumb = part.trait(Trait.MeetsTwin.class).isPresent();
        Length longer = plumb ? gable.slope().rise(thickness.value()) : Length.ZERO;
        Figure<Length> up = Figure.of(
                under.plus(longer),
                plumb
                        ? "upper face, ridge to eave: half width / cos slope + overhang + t · tan slope, the ridge being plumb"
                        : "half width / cos slope + overhang",
                Reason.GEOMETRY,
                given("half width", half),
                given("slope", gable.slope()),
                given("overhang", past),
                given("t", thickness.value()));
        Box hull = Box.hull(names.stream()
                .flatMap(name -> places.of(part, name).stream())
                .map(Piece::box)
                .toList());
        Length beyond = past(part, Side.GABLES);
        Figure<Length> across = Figure.of(
                hull.extent(Axis.Y).plus(beyond, beyond),
                "outside of the gables, front to back + overhang at both",
                Reason.GEOMETRY,
                given("gables", hull.extent(Axis.Y)),
                given("overhang", beyond));
        return sloping(part, across, up, thickness, gable.slope(), plumb ? "ridge" : "");
    }

    private static Length past(Part part, Side edge) {
        return part.traits(Trait.Past.class).stream()
                .filter(p -> p.edge() == edge)
                .map(Trait.Past::by)
                .findFirst()
                .orElse(Length.ZERO);
    }

    /** What lies on one slope, which a part with a sloping top gives; a board keeps its own width. */
    SizedPart onOneSlope(Part part, Figure<Length> thickness, Optional<Figure<Length>> boardWidth) {
        List<String> names = part.trait(Trait.OverSlope.class).orElseThrow().supports();
        Slope slope = slope(part, names);
        Box hull = hull(part, names);
        Length low = past(part, slope.lowSide());
        Length high = past(part, slope.highSide());
        Length run = hull.extent(slope.along());
        Length under = slope.angle().lengthOver(run).plus(low, high);
        boolean plumb = part.trait(Trait.PlumbAt.class)
                .map(at -> plumbSide(part, at.side(), slope))
                .isPresent();
        Figure<Length> up = Figure.of(
                plumb ? under.plus(slope.angle().rise(thickness.value())) : under,
                "level run / cos slope + what goes past its ends"
                        + (plumb ? " + t · tan slope, the upper end being plumb" : ""),
                Reason.GEOMETRY,
                given("level run", run),
                given("slope", slope.angle()),
                given("past the lower end", low),
                given("past the upper end", high),
                given("t", thickness.value()));
        Figure<Length> across = boardWidth.orElseGet(() -> acrossSlope(part, hull, slope));
        return sloping(part, across, up, thickness, slope.angle(), plumb ? "upper end" : "");
    }

    private static Side plumbSide(Part part, Side said, Slope slope) {
        if (said != slope.highSide()) {
            throw new Unplannable(
                    part.origin(),
                    "“%s” is plumb at %s, but its upper end is at %s. plumbAt(%s) would be right."
                            .formatted(
                                    part.name(), said.words(), slope.highSide().words(), slope.highSide()));
        }
        return said;
    }

    private static Figure<Length> acrossSlope(Part part, Box hull, Slope slope) {
        boolean sideways = slope.level() == Axis.X;
        Length one = past(part, sideways ? Side.LEFT : Side.FRONT);
        Length other = past(part, sideways ? Side.RIGHT : Side.BACK);
        Length extent = hull.extent(slope.level());
        return Figure.of(
                extent.plus(one, other),
                "outside of what carries it + what goes past at both sides",
                Reason.GEOMETRY,
                given("carried over", extent),
                given("past one side", one),
                given("past the other", other));
    }

    private Slope slope(Part part, List<String> names) {
        return names.stream()
                .map(name -> sizing.need(part, name))
                .flatMap(support -> Slope.of(support).stream())
                .findFirst()
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” lies on a slope, but none of %s has a sloping top. Say .highFrontToBack(...) of one."
                                .formatted(part.name(), String.join(", ", names))));
    }

    private Box hull(Part part, List<String> names) {
        return Box.hull(names.stream()
                .flatMap(name -> places.of(part, name).stream())
                .map(Piece::box)
                .toList());
    }

    /** Its upper end sawn plumb, if it has a name. */
    private SizedPart sloping(
            Part part,
            Figure<Length> across,
            Figure<Length> up,
            Figure<Length> thickness,
            Angle slope,
            String plumbEnd) {
        Outline outline = Outline.rectangle(across.value(), up.value());
        if (plumbEnd.isEmpty() || slope.isZero()) {
            return sizing.finish(part, Standing.SLOPES, across, up, thickness, outline, List.of());
        }
        Figure<Angle> tilt = SawAngles.peakBevel(slope, slope);
        PlannedEdge edge = Edges.bevel(plumbEnd + ", long point on the upper face", tilt, thickness.value());
        SizedPart square = sizing.finish(part, Standing.SLOPES, across, up, thickness, outline, List.of(edge));
        Solid plumb = square.solid().bevelled(UPPER, tilt.value(), SheetSide.INSIDE);
        return new SizedPart(part, Standing.SLOPES, across, up, thickness, plumb, square.cutouts(), square.edges());
    }

    /** The upper end of trim that meets its neighbour at the ridge. */
    PlannedEdge ridgeMitre(Part part, Length width) {
        String roofName = part.trait(Trait.Along.class)
                .map(a -> a.edge().part())
                .orElseThrow(() -> new Unplannable(
                        part.origin(),
                        "“%s” is mitred at a ridge, but runs along no roof. Say .along(roof.rake())."
                                .formatted(part.name())));
        SizedPart roof = sizing.need(part, roofName);
        Angle slope = roof.said().trait(Trait.OverGables.class).stream()
                .flatMap(over -> over.gables().stream())
                .flatMap(gable -> sizing.need(part, gable).said().trait(Trait.Gable.class).stream())
                .map(Trait.Gable::slope)
                .findFirst()
                .orElseThrow(() -> new Unplannable(
                        part.origin(), "“%s” lies over no gables, so its slope is not known.".formatted(roofName)));
        Figure<Angle> scale =
                SawAngles.mitreScale(SawAngles.peakAngle(slope, slope).value());
        return Edges.mitre("upper end", scale, width);
    }
}
