package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
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
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.Carries;
import org.kerfleaf.sketch.Contents;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.stock.CrossSection;

/** Follows every load that was said: how much it is, how far its part hangs free under it, how far that sags. */
final class Carrying {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Map<Origin, Mass> whole = new LinkedHashMap<>();
    private final Map<Carries, Carried> carried = new LinkedHashMap<>();

    private final List<String> withoutLoad = new ArrayList<>();

    Carrying(Sketch sketch, Assembly assembly) {
        this.sketch = sketch;
        this.assembly = assembly;
        for (Carries said : sketch.all(Carries.class)) {
            List<Piece> pieces = assembly.of(said.what());
            if (!pieces.isEmpty()) {
                load(said, pieces)
                        .ifPresentOrElse(
                                load -> carried.put(said, carried(said, pieces, load)),
                                () -> withoutLoad.add(pieces.get(0).part()));
            }
        }
    }

    /** Every load with what was said of it. */
    Map<Carries, Carried> all() {
        return carried;
    }

    /** Parts that carry things of which nobody said what they weigh. */
    List<String> withoutLoad() {
        return withoutLoad;
    }

    /** All of a load that was said earlier; nothing if it lies nowhere. */
    Mass whole(Origin load) {
        return whole.getOrDefault(load, Mass.ZERO);
    }

    private Carried carried(Carries said, List<Piece> pieces, Figure<Mass> load) {
        Box one = pieces.get(0).box();
        Axis run = run(one);
        whole.put(said.origin(), load.value());
        Mass each = load.value().times(1.0 / pieces.size());
        String part = pieces.get(0).part();
        Optional<Bending> bending = span(said, one, run)
                .flatMap(span -> Bends.stiffness(sketch, part).map(stiff -> {
                    CrossSection section =
                            new CrossSection(one.extent(run == Axis.X ? Axis.Y : Axis.X), one.extent(Axis.Z));
                    return Bends.under(span, section, stiff, one.extent(run), each, said.middle());
                }));
        return new Carried(
                part, Figure.of(area(pieces), "length · width, seen from above", Reason.GEOMETRY), load, bending);
    }

    private static Area area(List<Piece> pieces) {
        return floors(pieces).stream()
                .map(floor -> floor.extent(Axis.X).by(floor.extent(Axis.Y)))
                .reduce(Area.ZERO, Area::plus);
    }

    /** What lies side by side is one floor; what lies on another level is another. */
    private static List<Box> floors(List<Piece> pieces) {
        Map<Length, List<Box>> byHeight = new LinkedHashMap<>();
        pieces.forEach(p -> byHeight.computeIfAbsent(p.box().low(Axis.Z), z -> new ArrayList<>())
                .add(p.box()));
        return byHeight.values().stream().map(Box::hull).toList();
    }

    /** Empty where it carries things of which nobody said what they weigh. */
    private Optional<Figure<Mass>> load(Carries said, List<Piece> pieces) {
        if (said.share().isPresent()) {
            Mass other = whole(said.share().get().of());
            return Optional.of(Figure.of(
                    other.times(said.share().get().share()),
                    "its share of the load",
                    Reason.GEOMETRY,
                    given("load", other),
                    given("share", Ratio.of(said.share().get().share()))));
        }
        if (said.load().isEmpty()) {
            return things(said);
        }
        Axis run = run(pieces.get(0).box());
        Length along = floors(pieces).stream().map(f -> f.extent(run)).reduce(Length.ZERO, Length::plus);
        return Optional.of(Figure.of(
                said.load().orElseThrow().on(along, area(pieces)),
                "the load, over all it lies on",
                Reason.GEOMETRY,
                given("load", said.load().orElseThrow()),
                given("length", along),
                given("area", area(pieces))));
    }

    private Optional<Figure<Mass>> things(Carries said) {
        List<Contents> things = sketch.all(Contents.class).stream()
                .filter(one -> said.things().contains(one.origin()))
                .toList();
        if (things.isEmpty() || things.stream().anyMatch(one -> one.weight().isEmpty())) {
            return Optional.empty();
        }
        Mass all = things.stream()
                .map(one -> one.weight().orElseThrow().times(one.count()))
                .reduce(Mass.ZERO, Mass::plus);
        return Optional.of(Figure.of(
                all,
                "what stands on it, all together",
                Reason.GEOMETRY,
                things.stream()
                        .map(one -> given(
                                one.count() + " of " + one.name() + ", each",
                                one.weight().orElseThrow()))
                        .toArray(Given[]::new)));
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
}
