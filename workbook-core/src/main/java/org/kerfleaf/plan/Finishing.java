package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.finish.FinishNeed;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Caulk;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Paint;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Supply;

/** Adds up paint, caulk and glue over all their uses in all kits. */
final class Finishing {
    private final Sketch sketch;
    private final Painting painting;
    private final Raining raining;
    private final List<PlannedJoint> joints;
    private final Batch batch;
    private final Problems problems;
    private final List<Bought> bought = new ArrayList<>();
    private final List<Supply> unmeasured = new ArrayList<>();

    Finishing(
            Sketch sketch,
            Painting painting,
            Raining raining,
            List<PlannedJoint> joints,
            Batch batch,
            Problems problems) {
        this.sketch = sketch;
        this.painting = painting;
        this.raining = raining;
        this.joints = joints;
        this.batch = batch;
        this.problems = problems;
        glue();
        caulk();
        paint();
    }

    /** A line with the price of one pack. */
    record Bought(FinishLine line, Optional<Money> each) {
        /** How much of what is bought goes on the work. */
        Figure<Ratio> share() {
            double whole = line.pack().times(line.packs().value()).cubicMillimetres();
            return Figure.of(
                    Ratio.of(whole == 0 ? 0 : line.need().value().cubicMillimetres() / whole),
                    "need / what is bought",
                    Reason.GEOMETRY,
                    given("need", line.need().value()),
                    given("packs", line.packs().value()),
                    given("pack", line.pack()));
        }
    }

    List<Bought> all() {
        return bought;
    }

    List<FinishLine> lines() {
        return bought.stream().map(Bought::line).toList();
    }

    /** What is used but cannot be counted, because its pack or its coverage was not said. */
    List<Supply> unmeasured() {
        return unmeasured;
    }

    private void glue() {
        Map<String, Glue> glues = new LinkedHashMap<>();
        Map<String, Area> areas = new LinkedHashMap<>();
        for (PlannedJoint joint : joints) {
            joint.said().glue().ifPresent(glue -> {
                glues.putIfAbsent(glue.name(), glue);
                areas.merge(glue.name(), joint.area(), Area::plus);
            });
        }
        glues.forEach((name, glue) -> {
            Figure<Area> contact =
                    inAll(Figure.of(areas.get(name), "the contacts of all glued joints", Reason.GEOMETRY));
            keep(glue, glue.pack().map(pack -> FinishNeed.glue(name, contact, Gluing.spread(glue), pack)));
        });
    }

    private void caulk() {
        Map<String, Seal> seals = new LinkedHashMap<>();
        Map<String, Length> runs = new LinkedHashMap<>();
        Map<String, Reason> reasons = new LinkedHashMap<>();
        for (Seal seal : sketch.all(Seal.class)) {
            if (seal.caulk().isEmpty() || seal.bead().isEmpty()) {
                problems.add(seal.origin(), "Sealed with what? Say .with(sealer, bead(\"1/4 in\")).");
                continue;
            }
            Figure<Length> run = switch (seal.seams().which()) {
                case SAID -> Figure.said(seal.seams().length().orElseThrow(), "seams");
                case INSIDE -> painting.insideSeams(seal.origin());
                case WET -> raining.wetSeams();
            };
            String key = seal.caulk().get().name() + seal.bead().get();
            seals.putIfAbsent(key, seal);
            reasons.putIfAbsent(key, run.reason());
            runs.merge(key, run.value(), Length::plus);
        }
        seals.forEach((key, seal) -> {
            Caulk caulk = seal.caulk().orElseThrow();
            Figure<Length> run = batch.all(new Figure<>(runs.get(key), reasons.get(key)), Length::times);
            keep(
                    caulk,
                    caulk.pack()
                            .map(pack -> FinishNeed.caulk(
                                    caulk.name(), run, seal.bead().orElseThrow(), pack)));
        });
    }

    private void paint() {
        Map<String, Paint> paints = new LinkedHashMap<>();
        Map<String, Map<Integer, Area>> areas = new LinkedHashMap<>();
        for (Coat coat : sketch.all(Coat.class)) {
            Optional<Figure<Area>> area = problems.trying(coat.origin(), () -> painting.area(coat));
            if (area.isPresent()) {
                for (Coat.Layer layer : coat.layers()) {
                    paints.putIfAbsent(layer.paint().name(), layer.paint());
                    areas.computeIfAbsent(layer.paint().name(), name -> new LinkedHashMap<>())
                            .merge(layer.coats(), area.get().value(), Area::plus);
                }
            }
        }
        paints.forEach((name, paint) ->
                areas.get(name).forEach((coats, area) -> keep(paint, paintLine(paint, coats, area))));
    }

    private Optional<FinishLine> paintLine(Paint paint, int coats, Area area) {
        Volume per = paint.per().orElse(Volume.ofLitres(1));
        Optional<Figure<Area>> covers = paint.covers()
                .map(said -> Figure.said(said, "what its can says it covers"))
                .or(() -> paint.film().map(film -> FinishNeed.coverage(film, per)));
        if (covers.isEmpty() || paint.pack().isEmpty()) {
            return Optional.empty();
        }
        Volume can = paint.pack().get();
        Figure<Area> faces = inAll(Figure.of(
                area,
                "all that is coated; openings and hidden faces taken off, edges only where they are said and then twice",
                Reason.GEOMETRY));
        return Optional.of(FinishNeed.paint(paint.name(), faces, coats, covers.get(), per, can));
    }

    private Figure<Area> inAll(Figure<Area> one) {
        return batch.all(one, Area::times);
    }

    private void keep(Supply supply, Optional<FinishLine> line) {
        if (line.isPresent()) {
            bought.add(new Bought(line.get(), supply.price()));
        } else {
            unmeasured.add(supply);
        }
    }
}
