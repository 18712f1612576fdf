package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CellCompiler;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.reach.Reaching;
import org.kerfleaf.kernel.reach.Trust;
import org.kerfleaf.kernel.wire.Request;

/** What reaches for more than the words runs only where it is allowed. */
class TrustTest {
    private static final KernelLimits LIMITS = KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60));

    @TempDir
    Path folder;

    private WorkbookSource writing() {
        String file = folder.resolve("mark").toString().replace("\\", "\\\\");
        return Book.of("int a = 1;", "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + file + "\"), \"x\");")
                .saying("a")
                .source();
    }

    @Test
    void run_notAllowed_runsNothingAndSaysWhy() {
        KernelOutcome outcome;
        try (Kernel kernel = Kernel.start(LIMITS)) {
            outcome = kernel.run(writing(), Map.of());
        }

        assertThat(folder).isEmptyDirectory();
        assertThat(outcome.stands()).isFalse();
        assertThat(outcome.withheld().orElseThrow().all())
                .extracting(Reaching::place)
                .allSatisfy(place -> assertThat(place.line()).isEqualTo(5))
                .extracting(CellProblem::words)
                .containsExactly(
                        "This reaches for files (java.nio.file.Path.of, java.nio.file.OpenOption, java.nio.file.Files.writeString).");
        assertThat(outcome.cells())
                .allSatisfy(cell -> assertThat(cell)
                        .isInstanceOfSatisfying(
                                CellOutcome.Stopped.class,
                                stopped -> assertThat(stopped.reason()).isEqualTo(StopReason.NOT_ALLOWED)));
        assertThat(outcome.cells().get(0).problems().get(0).words())
                .isEqualTo(
                        "Not run: this workbook reaches for more than the words (files), and that is not allowed yet.");
        assertThat(outcome.liveValues().get(0)).isInstanceOf(LiveOutcome.Failed.class);
    }

    @Test
    void run_allowed_runs() {
        try (Kernel kernel = Kernel.start(LIMITS, Trust.EVERYTHING)) {
            assertThat(kernel.run(writing(), Map.of()).stands()).isTrue();
        }

        assertThat(folder.resolve("mark")).hasContent("x");
    }

    @Test
    void run_trust_isAskedForWhatReachesOnly() {
        List<Reached> asked = new ArrayList<>();
        Trust trust = reached -> {
            asked.add(reached);
            return false;
        };
        try (Kernel kernel = Kernel.start(LIMITS, trust)) {
            assertThat(kernel.run(Book.of("int a = 1;").source(), Map.of()).stands())
                    .isTrue();
            assertThat(asked).isEmpty();

            KernelOutcome outcome = kernel.run(writing(), Map.of());

            assertThat(asked).containsExactly(kernel.reached(writing()));
            assertThat(outcome.withheld()).contains(asked.get(0));
        }
    }

    @Test
    void variants_notAllowed_runNothing() {
        try (Kernel kernel = Kernel.start(LIMITS)) {
            assertThat(kernel.variants(writing(), List.of(Map.of(), Map.of())))
                    .hasSize(2)
                    .allMatch(outcome -> outcome.withheld().isPresent());
        }

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void run_notAllowed_stillSaysWhatIsNoJava() {
        try (Kernel kernel = Kernel.start(LIMITS)) {
            KernelOutcome outcome =
                    kernel.run(Book.of("int a = ;", "System.exit(1);").source(), Map.of());

            assertThat(outcome.cells().get(0)).isInstanceOf(CellOutcome.Rejected.class);
            assertThat(outcome.withheld()).isPresent();
        }
    }

    /** As if the bytecode had been read wrong: the loader is the second lock. */
    @Test
    void run_reachesUnseen_getsNoClassFromTheLoader() {
        WorkbookSource source =
                Book.of("int a = 1;", "new Thread(() -> {}).start();").source();
        try (CellCompiler compiler = new CellCompiler();
                Children children = new Children(LIMITS, Launch.USUAL);
                Seat seat = new Seat(children, LIMITS)) {
            Prepared seen = Prepared.of(source, compiler.compile(source), LIMITS);
            Request.Load load = seen.load();
            Prepared unseen = new Prepared(
                    source,
                    seen.compiled(),
                    seen.reached(),
                    new Request.Load(
                            load.title(),
                            load.steps(),
                            load.classes(),
                            load.units(),
                            load.shared(),
                            false,
                            true,
                            1000,
                            10));

            KernelOutcome outcome = seat.run(unseen, Map.of());

            assertThat(outcome.cells().get(0)).isInstanceOf(CellOutcome.Stands.class);
            assertThat(outcome.cells().get(1).problems())
                    .extracting(CellProblem::words)
                    .containsExactly("This reaches for java.lang.Thread, which is not allowed here.");
        }
    }
}
