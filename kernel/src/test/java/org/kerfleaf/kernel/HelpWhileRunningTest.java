package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.help.Completion;

/** Help comes from the kernel that runs the workbook, while it runs, and without changing what comes out. */
class HelpWhileRunningTest {
    private static final String SIZES = "measureIn(INCHES);\nLength width = size(\"Width\", \"22 in\");";

    @Test
    void complete_betweenTwoRuns_changesNothing() {
        WorkbookSource source = Book.of(SIZES, "Length half = width.half();").source();
        try (Kernel kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)))) {
            KernelOutcome before = kernel.run(source, Map.of());
            assertThat(kernel.complete(source, 1, "Length half = width.h".length())
                            .all())
                    .extracting(Completion::name)
                    .containsExactly("half");
            assertThat(kernel.explain(source, 0, SIZES.length() - 3)).isPresent();
            KernelOutcome after = kernel.run(source, Map.of());

            assertThat(before.stands()).isTrue();
            assertThat(after).isEqualTo(before);
        }
    }

    @Test
    @Timeout(120)
    void complete_whileACellNeverEnds_answers() throws Exception {
        WorkbookSource endless =
                Book.of(SIZES, "for (;;) {}", "Length half = width.half();").source();
        try (Kernel kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(8)))) {
            kernel.complete(endless, 0, 0);
            CompletableFuture<KernelOutcome> run = CompletableFuture.supplyAsync(() -> kernel.run(endless, Map.of()));
            List<Completion> all = kernel.complete(endless, 2, "Length half = width.ha".length())
                    .all();

            assertThat(run.isDone()).isFalse();
            assertThat(all).extracting(Completion::name).containsExactly("half");
            assertThat(run.get(100, TimeUnit.SECONDS).stands()).isFalse();
        }
    }
}
