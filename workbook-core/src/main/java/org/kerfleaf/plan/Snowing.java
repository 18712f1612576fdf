package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.SpreadLoad;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Snow;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.SnowChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.ClearSpace;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.OfSite;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.sketch.SiteSaid;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Where;
import org.kerfleaf.stock.CrossSection;

/**
 * What snow does to roofs and lids: every panel, board and pane whose wide face lies under the sky, no steeper than 60° and at
 * least 4 in wide and deep seen from above. Trim and caps are narrower, and snow slides off what is steeper.
 */
final class Snowing {
    /** Wide faces that look up at least this much: the cosine of 60°. */
    private static final double UP = 0.5;

    private static final double LEAST = 101.6;
    private static final double OFF = 0.01;

    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final Optional<Figure<Pressure>> pressure;
    private final Map<String, Carried> byPart = new LinkedHashMap<>();

    Snowing(Sketch sketch, Assembly assembly, Bodies bodies) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
        this.pressure = sketch.all(SiteSaid.class).stream()
                .flatMap(site -> site.of(OfSite.Snow.class).stream())
                .findFirst()
                .map(snow -> SnowChecks.onRoof(snow.onTheGround()));
        if (pressure.isPresent()) {
            ClearSpace space =
                    new ClearSpace(Stream.concat(bodies.all().values().stream(), bodies.panes().values().stream())
                            .toList());
            bodies.all()
                    .forEach((piece, solid) ->
                            lies(space, solid).ifPresent(face -> worst(carried(piece, solid, span(piece, solid)))));
            bodies.panes().forEach((glazing, solid) -> lies(space, solid).ifPresent(face -> worst(pane(solid, face))));
        }
    }

    Optional<Snow> snow() {
        return pressure.map(known -> new Snow(known, List.copyOf(byPart.values())));
    }

    List<Check> checks(MeasureStyle style) {
        return byPart.values().stream().map(carried -> check(carried, style)).toList();
    }

    private Check check(Carried carried, MeasureStyle style) {
        if (carried.bending().isEmpty()) {
            return SnowChecks.notKnown(
                    carried.part(),
                    "%s of snow lie on it; how far it sags is not known."
                            .formatted(carried.load().value().in(style)),
                    "Say how stiff its stock is, stiffness(\"1.5 million psi\"), and let it rest on something.",
                    style);
        }
        Bending bending = carried.bending().get();
        return SnowChecks.sag(
                carried.part(),
                carried.load().value(),
                bending.span().value(),
                bending.sag().value(),
                SagLimit.WOODWORK_STANDARD,
                style);
    }

    /** Of equal pieces the one that sags most stands for all. */
    private void worst(Carried carried) {
        byPart.merge(carried.part(), carried, (old, now) -> sag(now).compareTo(sag(old)) > 0 ? now : old);
    }

    private static Length sag(Carried carried) {
        return carried.bending().map(b -> b.sag().value()).orElse(Length.ZERO);
    }

    /** Its upper wide face, if snow stays on it. */
    private static Optional<Face> lies(ClearSpace space, PlacedSolid solid) {
        return solid.faces().stream()
                .filter(Bodies::isWide)
                .filter(face -> face.normal().z() >= UP)
                .filter(face -> face.bounds().sizes().x() >= LEAST
                        && face.bounds().sizes().y() >= LEAST)
                .filter(face ->
                        Double.isInfinite(space.from(face.bounds().middle().plus(Vector.Z.times(OFF)), Vector.Z)))
                .findFirst();
    }

    private Carried carried(Piece piece, PlacedSolid solid, Optional<Span> found) {
        Area area = seenFromAbove(solid.bounds());
        Figure<Mass> load = load(area);
        Optional<Bending> bending = found.flatMap(span -> Bends.stiffness(sketch, piece.part())
                .map(stiff -> Bends.under(
                        span.clear(),
                        new CrossSection(span.across(), thickness(solid)),
                        stiff,
                        span.along(),
                        load.value(),
                        false)));
        return new Carried(piece.part(), seen(area), load, bending);
    }

    private Carried pane(PlacedSolid solid, Face face) {
        Area area = seenFromAbove(solid.bounds());
        Figure<Mass> load = load(area);
        Vector sizes = face.bounds().sizes();
        Length one = Length.ofMillimetres(sizes.x());
        Length other = Length.ofMillimetres(StrictMath.hypot(sizes.y(), sizes.z()));
        Figure<Length> span = Figure.of(
                one.min(other),
                "the pane's shorter side: held all round, it sags no more than as a strip across it",
                Reason.GEOMETRY);
        Optional<Bending> bending = Bends.stiffness(sketch, solid.part())
                .map(stiff -> Bends.under(
                        span,
                        new CrossSection(one.max(other), thickness(solid)),
                        stiff,
                        one.min(other),
                        load.value(),
                        false));
        return new Carried(solid.part(), seen(area), load, bending);
    }

    private static Area seenFromAbove(Bounds bounds) {
        return Area.ofSquareMillimetres(bounds.sizes().x() * bounds.sizes().y());
    }

    private static Figure<Area> seen(Area area) {
        return Figure.of(area, "length · width, seen from above", Reason.GEOMETRY);
    }

    private Figure<Mass> load(Area area) {
        Pressure on = pressure.orElseThrow().value();
        return Figure.of(
                new SpreadLoad(on.pascals(), SpreadLoad.Over.AREA).on(Length.ZERO, area),
                "snow on a roof · area seen from above",
                SnowChecks.SOURCE,
                given("snow", on),
                given("area", area));
    }

    private static Length thickness(PlacedSolid solid) {
        Vector through = solid.faces().stream()
                .filter(Bodies::isWide)
                .findFirst()
                .orElseThrow()
                .normal();
        PlacedSolid.Reach reach = solid.project(through);
        return Length.ofMillimetres(reach.most() - reach.least());
    }

    // ---- how far it hangs free ------------------------------------------------------------------------------------

    /**
     * How a piece hangs free.
     *
     * @param clear from one support to the next
     * @param along its own length that way
     * @param across its width square to that, along its slope
     */
    private record Span(Figure<Length> clear, Length along, Length across) {}

    /** The shorter way over what carries it: held on more sides, it sags no more than as a strip that way. */
    private Optional<Span> span(Piece piece, PlacedSolid solid) {
        List<Box> supports = supports(piece).map(Piece::box).toList();
        List<Span> spans = new ArrayList<>();
        for (Axis axis : List.of(Axis.X, Axis.Y)) {
            Axis other = axis == Axis.X ? Axis.Y : Axis.X;
            List<Box> crosswise = supports.stream()
                    .filter(box -> box.extent(axis).isShorterThan(box.extent(other)))
                    .filter(box -> meet(box, piece.box(), Axis.X) && meet(box, piece.box(), Axis.Y))
                    .sorted(Comparator.comparing(box -> box.low(axis)))
                    .toList();
            Length widest = Length.ZERO;
            for (int i = 1; i < crosswise.size(); i++) {
                widest = widest.max(
                        crosswise.get(i).low(axis).minus(crosswise.get(i - 1).high(axis)));
            }
            if (widest.isPositive()) {
                Length along = alongSlope(solid, axis);
                Length clear = widest.times(along.dividedBy(piece.box().extent(axis)));
                spans.add(new Span(
                        Figure.of(
                                clear,
                                "the widest clear gap between neighbours of what it lies on, along its slope",
                                Reason.GEOMETRY,
                                given("level", widest),
                                given("supports", crosswise.size())),
                        along,
                        alongSlope(solid, other)));
            }
        }
        return spans.stream().min(Comparator.comparing(span -> span.clear().value()));
    }

    private static boolean meet(Box one, Box other, Axis axis) {
        return one.low(axis).isShorterThan(other.high(axis)) && other.low(axis).isShorterThan(one.high(axis));
    }

    /** How far its upper face goes that way, measured on it. */
    private static Length alongSlope(PlacedSolid solid, Axis axis) {
        Face up = solid.faces().stream()
                .filter(Bodies::isWide)
                .max(Comparator.comparingDouble(face -> face.normal().z()))
                .orElseThrow();
        Vector way = axis.unit().minus(up.normal().times(axis.unit().dot(up.normal())));
        PlacedSolid.Reach reach = solid.project(way.normalised());
        return Length.ofMillimetres(reach.most() - reach.least());
    }

    /** What was said to carry it; else what it touches that lies wholly below. */
    private Stream<Piece> supports(Piece piece) {
        List<Piece> said = sketch.placing(piece.placing()).stream()
                .map(Placing::where)
                .flatMap(List::stream)
                .filter(Where.RestsOn.class::isInstance)
                .flatMap(rests -> ((Where.RestsOn) rests).supports().stream())
                .flatMap(on -> assembly.of(on).stream())
                .toList();
        if (!said.isEmpty()) {
            return said.stream();
        }
        Length under = piece.box().low(Axis.Z).plus(Touching.TOLERANCE);
        return assembly.standingWith(piece.placing()).stream()
                .filter(other -> !other.box().high(Axis.Z).isLongerThan(under))
                .filter(other -> bodies.has(other) && bodies.has(piece))
                .filter(other -> bodies.touching(piece, other).isAny());
    }
}
