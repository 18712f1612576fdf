package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.plan.Loads.Filled;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Hollow;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.sketch.Fill;
import org.kerfleaf.sketch.Sketch;

/** Measures what builds are filled with, and how heavy they are then. */
final class Fillings {
    private final Assembly assembly;
    private final Bodies bodies;
    private final Lifting lifting;
    private final MeasureStyle style;
    private final List<Filled> filled = new ArrayList<>();

    Fillings(Sketch sketch, Assembly assembly, Bodies bodies, Lifting lifting, MeasureStyle style, Problems problems) {
        this.assembly = assembly;
        this.bodies = bodies;
        this.lifting = lifting;
        this.style = style;
        for (Fill fill : sketch.all(Fill.class)) {
            problems.trying(fill.origin(), () -> filled(fill)).ifPresent(filled::add);
        }
    }

    List<Filled> all() {
        return List.copyOf(filled);
    }

    private Filled filled(Fill fill) {
        List<Piece> build =
                assembly.buildOf(fill.ring()).stream().filter(bodies::has).toList();
        if (build.isEmpty()) {
            throw new Unplannable(fill.origin(), "What is filled has no place in the build yet. Place it first.");
        }
        Length top = fill.upTo()
                .orElseThrow(() -> new Unplannable(fill.origin(), "Filled up to where? Say .upTo(\"11 in\")."));
        Length low = fill.from()
                .orElseThrow(() -> new Unplannable(fill.origin(), "Filled from where? Say .from(\"1 in\")."));
        if (!top.isLongerThan(low)) {
            throw new Unplannable(
                    fill.origin(),
                    "Filled from %s up to %s: a higher end would be right.".formatted(low.in(style), top.in(style)));
        }
        Length foot = Assembly.hull(build).low(Axis.Z);
        List<PlacedSolid> solids = build.stream().map(bodies::of).toList();
        Volume volume = Hollow.between(
                solids, foot.plus(low).inMillimetres(), foot.plus(top).inMillimetres());
        if (volume.cubicMillimetres() <= 0) {
            throw new Unplannable(
                    fill.origin(),
                    "From %s up to %s nothing stands all round: %s would run out at the side."
                            .formatted(low.in(style), top.in(style), fill.what()));
        }
        Figure<Volume> room = Figure.of(
                volume,
                "what the pieces enclose all round, level by level",
                Reason.GEOMETRY,
                given("from", low),
                given("up to", top));
        Optional<Figure<Mass>> weight = fill.density()
                .map(density -> Figure.of(
                        density.of(volume),
                        "volume · density",
                        Reason.THE_WORKBOOK,
                        given("volume", volume),
                        given("density", density)));
        return new Filled(
                build.get(0).part(),
                fill.what(),
                room,
                weight,
                weight.flatMap(filling -> lifting.weightOf(build)
                        .map(wood -> Figure.of(
                                filling.value().plus(wood),
                                "filling + wood",
                                Reason.GEOMETRY,
                                given("filling", filling.value()),
                                given("wood", wood)))));
    }
}
