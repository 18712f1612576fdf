package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.wire.Packing;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Workbook;

/** What you see is what a fresh run would give. */
class SameAgainTest {
    private static final KernelLimits LIMITS = KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60));
    private static final String WIDTH = "Length width = size(\"Width\", \"22 in\", \"16 in to 30 in\");\n";

    private static byte[] bytes(KernelOutcome outcome) {
        return Packing.pack(Sketch.class, outcome.sketch().orElseThrow());
    }

    private static WorkbookSource cabinet() throws Exception {
        return WorkbookSource.of(
                Workbook.read(Files.readAllBytes(Path.of("..", "sample-workbooks", "seed-swap-cabinet.md"))));
    }

    @Test
    void run_sameWorkbookInTwoKernels_givesTheSameToTheLastByte() throws Exception {
        KernelOutcome first;
        KernelOutcome again;
        KernelOutcome other;
        try (Kernel one = Kernel.start(LIMITS);
                Kernel two = Kernel.start(LIMITS)) {
            first = one.run(cabinet(), Map.of());
            again = one.run(cabinet(), Map.of());
            other = two.run(cabinet(), Map.of());
        }

        assertThat(first.stands()).isTrue();
        assertThat(again).isEqualTo(first);
        assertThat(other).isEqualTo(first);
        assertThat(bytes(again)).isEqualTo(bytes(first));
        assertThat(bytes(other)).isEqualTo(bytes(first));
    }

    @Test
    void run_sizeTriedAndGivenUp_leavesNothingBehind() {
        try (Kernel kernel = Kernel.start(LIMITS)) {
            WorkbookSource source = Book.of(WIDTH).saying("width").source();
            KernelOutcome before = kernel.run(source, Map.of());
            KernelOutcome tried = kernel.run(source, Map.of("Width", "20 in"));

            assertThat(tried.liveValues())
                    .containsEntry(0, new LiveOutcome.Value(new Live.OfLength(Length.parse("20 in"))));
            assertThat(kernel.run(source, Map.of())).isEqualTo(before);
        }
    }

    @Test
    void run_textEdited_givesWhatAFreshKernelGives() {
        String[] edits = {WIDTH, "int width = 3;", "int widht = 3;\nint width = widht;", "int width = ;", "", WIDTH};
        try (Kernel kernel = Kernel.start(LIMITS)) {
            for (String edit : edits) {
                WorkbookSource source = Book.of("int a = 1;", edit, "var b = width;")
                        .saying("b")
                        .source();
                try (Kernel fresh = Kernel.start(LIMITS)) {
                    assertThat(kernel.run(source, Map.of())).as(edit).isEqualTo(fresh.run(source, Map.of()));
                }
            }
        }
    }

    @Test
    void run_staticsOfACell_beginAgainInEveryRun() {
        try (Kernel kernel = Kernel.start(LIMITS)) {
            WorkbookSource source = Book.of("class Made { static int n; }", "int n() { return ++Made.n; }")
                    .saying("n()")
                    .saying("n()")
                    .source();
            KernelOutcome first = kernel.run(source, Map.of());

            assertThat(first.liveValues()).containsEntry(1, new LiveOutcome.Value(new Live.OfText("2")));
            assertThat(kernel.run(source, Map.of())).isEqualTo(first);
        }
    }
}
