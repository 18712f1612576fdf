package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.finish.LeastWarm;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.DryChecks;
import org.kerfleaf.rules.SealChecks;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Coldest;
import org.kerfleaf.sketch.Damp;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Sheet;

/** Whether what is painted is dry, it is warm enough for what dries, and beads of caulk are as thick as they should be. */
final class DryChecking {
    private final Planned planned;

    /** How cold it may be for something, and in which steps it is used. */
    private record Use(Optional<Temperature> said, Optional<Temperature> usual, Set<Integer> steps) {}

    DryChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        painted().forEach(stock -> dry(stock).ifPresent(checks::add));
        uses().forEach((name, use) -> checks.add(warm(name, use)));
        Set<String> beads = new LinkedHashSet<>();
        for (Seal seal : planned.sketch().all(Seal.class)) {
            if (seal.caulk().isPresent()
                    && seal.bead().isPresent()
                    && beads.add(seal.caulk().get().name() + seal.bead().get())) {
                checks.add(SealChecks.bead(
                        seal.caulk().get().name(),
                        seal.bead().get().across(),
                        seal.bead().get().deep(),
                        planned.style()));
            }
        }
        return checks;
    }

    // ---- dry
    // ---------------------------------------------------------------------------------------------------------

    /** The stocks of all parts that are painted; preservative is brushed on wood as it is. */
    private Set<String> painted() {
        Set<String> stocks = new LinkedHashSet<>();
        for (Paintwork.CoatedFace face : planned.paintwork().faces()) {
            if (face.with().stream().anyMatch(paint -> !isPreservative(paint))) {
                planned.parts().stream()
                        .filter(part -> part.name().equals(face.part()))
                        .map(PlannedPart::stock)
                        .forEach(stocks::add);
            }
        }
        return stocks;
    }

    private static boolean isPreservative(String paint) {
        return paint.toLowerCase(Locale.ROOT).contains("preservative");
    }

    private Optional<Check> dry(String stock) {
        Optional<Lumber> lumber = planned.sketch().lumber(stock);
        Optional<Damp> damp =
                lumber.map(Lumber::damp).or(() -> planned.sketch().sheet(stock).map(Sheet::damp));
        boolean preserved = lumber.map(Lumber::preserved).orElse(false);
        return damp.map(known ->
                DryChecks.dryEnough(stock, Movements.moistureOf(known), preserved, known.drinks(), planned.style()));
    }

    // ---- warm
    // --------------------------------------------------------------------------------------------------------

    /** Everything that dries, by its name, in the order of its first use. */
    private Map<String, Use> uses() {
        Map<String, Use> uses = new LinkedHashMap<>();
        for (PlannedJoint joint : planned.joints()) {
            joint.said()
                    .glue()
                    .ifPresent((Glue glue) -> add(
                            uses,
                            glue.name(),
                            glue.notBelow(),
                            LeastWarm.ofGlue(glue.name()),
                            joint.said().origin().step()));
        }
        for (Seal seal : planned.sketch().all(Seal.class)) {
            seal.caulk()
                    .ifPresent(caulk -> add(
                            uses,
                            caulk.name(),
                            caulk.notBelow(),
                            Optional.empty(),
                            seal.origin().step()));
        }
        for (Coat coat : planned.sketch().all(Coat.class)) {
            coat.layers().stream()
                    .map(Coat.Layer::paint)
                    .forEach(paint -> add(
                            uses,
                            paint.name(),
                            paint.notBelow(),
                            LeastWarm.ofPaint(paint.name()),
                            coat.origin().step()));
        }
        return uses;
    }

    private static void add(
            Map<String, Use> uses, String name, Optional<Temperature> said, Optional<Temperature> usual, int step) {
        uses.computeIfAbsent(name, n -> new Use(said, usual, new LinkedHashSet<>()))
                .steps()
                .add(step);
    }

    private Check warm(String name, Use use) {
        List<Optional<Temperature>> all =
                use.steps().stream().map(this::coldest).toList();
        Optional<Temperature> coldest = all.stream().allMatch(Optional::isPresent)
                ? all.stream().flatMap(Optional::stream).min(Temperature::compareTo)
                : Optional.empty();
        return DryChecks.warmEnough(
                name,
                coldest,
                use.said().or(use::usual),
                use.said().isPresent() || use.usual().isEmpty() ? DryChecks.byItsMaker() : DryChecks.usual(),
                planned.style());
    }

    /** What was said in a step, or else above the steps. */
    private Optional<Temperature> coldest(int step) {
        return said(step).or(() -> said(0));
    }

    private Optional<Temperature> said(int step) {
        return planned.sketch().all(Coldest.class).stream()
                .filter(cold -> cold.origin().step() == step)
                .map(Coldest::temperature)
                .min(Temperature::compareTo);
    }
}
