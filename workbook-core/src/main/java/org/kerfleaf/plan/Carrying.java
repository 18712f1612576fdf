package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Limited;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.Carries;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.stock.Stiffness;

/** Follows every load that was said: how much it is, how far its part hangs free under it, how far that sags. */
final class Carrying {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Map<Origin, Mass> whole = new LinkedHashMap<>();
    private final Map<Carries, Carried> carried = new LinkedHashMap<>();

    Carrying(Sketch sketch, Assembly assembly) {
        this.sketch = sketch;
        this.assembly = assembly;
        for (Carries said : sketch.all(Carries.class)) {
            List<Piece> pieces = assembly.of(said.what());
            if (!pieces.isEmpty()) {
                carried.put(said, carried(said, pieces));
            }
        }
    }

    /** Every load with what was said of it. */
    Map<Carries, Carried> all() {
        return carried;
    }

    /** All of a load that was said earlier; nothing if it lies nowhere. */
    Mass whole(Origin load) {
        return whole.getOrDefault(load, Mass.ZERO);
    }

    private Carried carried(Carries said, List<Piece> pieces) {
        Box one = pieces.get(0).box();
        Axis run = run(one);
        List<Box> floors = floors(pieces);
        Area area = floors.stream()
                .map(floor -> floor.extent(Axis.X).by(floor.extent(Axis.Y)))
                .reduce(Area.ZERO, Area::plus);
        Figure<Mass> load = load(said, floors, run, area);
        whole.put(said.origin(), load.value());
        Mass each = load.value().times(1.0 / pieces.size());
        Optional<Figure<Stiffness>> stiffness = stiffness(pieces.get(0).part());
        Optional<Bending> bending =
                span(said, one, run).flatMap(span -> stiffness.map(stiff -> bending(span, stiff, one, run, each)));
        return new Carried(
                pieces.get(0).part(),
                Figure.of(area, "length · width, seen from above", Reason.GEOMETRY),
                load,
                bending);
    }

    /** What lies side by side is one floor; what lies on another level is another. */
    private static List<Box> floors(List<Piece> pieces) {
        Map<Length, List<Box>> byHeight = new LinkedHashMap<>();
        pieces.forEach(p -> byHeight.computeIfAbsent(p.box().low(Axis.Z), z -> new ArrayList<>())
                .add(p.box()));
        return byHeight.values().stream().map(Box::hull).toList();
    }

    private Figure<Mass> load(Carries said, List<Box> floors, Axis run, Area area) {
        if (said.share().isPresent()) {
            Mass other = whole(said.share().get().of());
            return Figure.of(
                    other.times(said.share().get().share()),
                    "its share of the load",
                    Reason.GEOMETRY,
                    given("load", other),
                    given("share", Ratio.of(said.share().get().share())));
        }
        Length along = floors.stream().map(f -> f.extent(run)).reduce(Length.ZERO, Length::plus);
        return Figure.of(
                said.load().orElseThrow().on(along, area),
                "the load, over all it lies on",
                Reason.GEOMETRY,
                given("load", said.load().orElseThrow()),
                given("length", along),
                given("area", area));
    }

    /** The way a piece runs: its longer level extent. */
    private static Axis run(Box box) {
        return box.extent(Axis.X).isShorterThan(box.extent(Axis.Y)) ? Axis.Y : Axis.X;
    }

    private Optional<Figure<Length>> span(Carries said, Box piece, Axis run) {
        if (said.span().isPresent()) {
            return said.span().map(span -> Figure.said(span, "how far it hangs free"));
        }
        List<Box> supports = said.between().stream()
                .flatMap(on -> assembly.of(on).stream())
                .map(Piece::box)
                .sorted(Comparator.comparing(box -> box.low(run)))
                .toList();
        Length widest = Length.ZERO;
        for (int i = 1; i < supports.size(); i++) {
            widest = widest.max(
                    supports.get(i).low(run).minus(supports.get(i - 1).high(run)));
        }
        return Optional.of(widest)
                .filter(Length::isPositive)
                .map(span -> Figure.of(
                        span,
                        "the widest clear gap between neighbours of what it lies on",
                        Reason.GEOMETRY,
                        given("supports", supports.size())));
    }

    private Optional<Figure<Stiffness>> stiffness(String part) {
        String stock = sketch.part(part).map(Part::stock).orElse("");
        Optional<Stiffness> graded = sketch.lumber(stock)
                .flatMap(lumber -> lumber.stiffness())
                .or(() -> sketch.sheet(stock).flatMap(sheet -> sheet.stiffness()));
        return graded.map(e -> Figure.said(e, "the stiffness of " + stock))
                .or(() -> Stiffness.named(
                        sketch.lumber(stock).flatMap(l -> l.species()).orElse(stock)));
    }

    private static Bending bending(Figure<Length> span, Figure<Stiffness> stiffness, Box piece, Axis run, Mass load) {
        Length wide = piece.extent(run == Axis.X ? Axis.Y : Axis.X);
        Length high = piece.extent(Axis.Z);
        Mass onSpan = load.times(span.value().dividedBy(piece.extent(run)));
        Figure<Length> sag = SagChecks.sag(span.value(), wide, high, stiffness.value(), onSpan);
        Mass perMetre = load.times(1000 / piece.extent(run).inMillimetres());
        return new Bending(
                span,
                Figure.of(
                        onSpan,
                        "the load of one piece · span / its length; its own weight is not counted",
                        Reason.GEOMETRY,
                        given("load", load),
                        given("span", span.value()),
                        given("length", piece.extent(run))),
                stiffness,
                sag,
                Figure.of(
                        sag.value().times(SagChecks.CREEP),
                        "first sag · 1.5, since wood creeps under a load that stays on",
                        Reason.COMMON_PRACTICE,
                        given("first sag", sag.value())),
                Arrays.stream(SagLimit.values())
                        .map(limit -> new Limited(
                                limit,
                                limit.over(span.value()),
                                SagChecks.longest(wide, high, stiffness.value(), perMetre, limit)))
                        .toList());
    }
}
