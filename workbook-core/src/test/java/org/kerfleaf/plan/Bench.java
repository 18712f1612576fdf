package org.kerfleaf.plan;

import static org.kerfleaf.measure.LengthUnit.INCHES;
import static org.kerfleaf.words.Words.*;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.SketchRun;
import org.kerfleaf.words.Gathering;

/** Says a small sketch with the vocabulary, and plans it. */
final class Bench {
    static final LocalDate DAY = LocalDate.of(2026, 4, 12);

    private final List<Object> values = new ArrayList<>();
    private Sheet ply;

    private Bench() {}

    /** The plan of what is said, with a sheet and a saw at hand. */
    static Plan plan(Consumer<Bench> said) {
        return Planner.plan(sketch(said), DAY);
    }

    static Sketch sketch(Consumer<Bench> said) {
        return gathered(said).sketch();
    }

    static Gathering.Gathered gathered(Consumer<Bench> said) {
        return new SketchRun(Map.of()).doing(() -> {
            Bench bench = new Bench();
            bench.keep(measureIn(INCHES));
            bench.keep(pricesIn("USD", "2026-04-12"));
            bench.ply = bench.keep(sheet("plywood", "48 in", "96 in")
                    .soldAs("3/4 in")
                    .measured("3/4 in")
                    .costs("60.00"));
            bench.keep(circularSaw().kerf("1/8 in"));
            said.accept(bench);
            return Gathering.gather("A try", List.of(new Sketch.Step(1, "Build")), bench.values);
        });
    }

    <T> T keep(T value) {
        values.add(value);
        return value;
    }

    /** The first placing kept of that part. */
    Placing placed(String part) {
        return values.stream()
                .filter(Placing.class::isInstance)
                .map(Placing.class::cast)
                .filter(p -> p.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    Sheet ply() {
        return ply;
    }

    /** The words of what does not make sense in what is said. */
    static List<String> problems(Consumer<Bench> said) {
        return plan(said).problems().stream().map(p -> p.words()).toList();
    }
}
