package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.kernel.LiveOutcome;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.plan.Answers;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Prose;
import org.kerfleaf.workbook.Workbook;

/** A workbook that people start from, run the way the product runs it. */
final class Sample {
    private static final Map<String, Sample> OF_TESTS = new ConcurrentHashMap<>();

    /** The day the samples' prices are of, so that plans do not depend on the day the tests run. */
    static final LocalDate DAY = LocalDate.of(2026, 4, 12);

    static final Sample CABINET = new Sample("seed-swap-cabinet.md");
    static final Sample COLD_FRAME = new Sample("cold-frame.md");

    static final Sample SHELF = new Sample("shed-shelf.md");
    static final Sample NEST_BOX = new Sample("nest-box.md");
    static final Sample PLANTER = new Sample("splayed-planter.md");
    static final Sample BENCH = new Sample("potting-bench.md");
    static final List<Sample> ALL = List.of(CABINET, COLD_FRAME, SHELF, NEST_BOX, PLANTER, BENCH);

    /** Braces, eave corners and a measured corner; no sample to start from while a brace has no place in the drawings. */
    static final Sample CANOPY = ofTests("door-canopy.md");

    /** A door of one wide board between its sides, for the checks that no sample to start from has a case for. */
    private static final Kernel KERNEL = Kernel.start(KernelLimits.DEFAULT);

    private final String file;

    private Sample(String file) {
        this.file = file;
    }

    /** A workbook that only tests use, each the same one for one name. */
    static Sample ofTests(String file) {
        return OF_TESTS.computeIfAbsent(file, name -> new Sample("src/test/resources/" + name));
    }

    Path path() {
        return Path.of(file);
    }

    Workbook workbook() {
        try {
            return Workbook.read(Files.readAllBytes(path()));
        } catch (IOException failed) {
            throw new UncheckedIOException(file, failed);
        }
    }

    /** The plan of the workbook as it stands. */
    Plan plan() {
        return plan(workbook(), Map.of());
    }

    /** The plan with other values for some of its sizes. */
    Plan plan(Map<String, String> sizes) {
        return plan(workbook(), sizes);
    }

    /** What its cells declare. */
    Sketch sketch() {
        return sketch(Map.of());
    }

    /** What its cells declare with other values for some of its sizes. */
    Sketch sketch(Map<String, String> sizes) {
        return outcome(workbook(), sizes).sketch().orElseThrow();
    }

    @Override
    public String toString() {
        return file;
    }

    /** The plan after one text of the workbook is replaced by another, as a maker edits it. */
    Plan planWith(String text, String replacement) {
        String before = workbook().text();
        assertThat(before).contains(text);
        return plan(Workbook.parse(before.replace(text, replacement)), Map.of());
    }

    /** The workbook's prose with its live values. */
    Prose prose() {
        Workbook workbook = workbook();
        KernelOutcome outcome = outcome(workbook, Map.of());
        Plan plan = Planner.plan(outcome.sketch().orElseThrow(), DAY);
        return workbook.tell(ordinal ->
                Answers.words(plan, ((LiveOutcome.Value) outcome.liveValues().get(ordinal)).live()));
    }

    static Plan plan(Workbook workbook, Map<String, String> sizes) {
        return Planner.plan(outcome(workbook, sizes).sketch().orElseThrow(), DAY);
    }

    /** What comes of running a workbook that may have anything wrong with it. */
    static KernelOutcome run(Workbook workbook, Map<String, String> sizes) {
        return KERNEL.run(WorkbookSource.of(workbook), sizes);
    }

    private static KernelOutcome outcome(Workbook workbook, Map<String, String> sizes) {
        KernelOutcome outcome = run(workbook, sizes);
        assertThat(outcome.cells())
                .as("every cell of the workbook runs")
                .allSatisfy(cell -> assertThat(cell.problems()).isEmpty());
        assertThat(outcome.problems()).isEmpty();
        return outcome;
    }
}
