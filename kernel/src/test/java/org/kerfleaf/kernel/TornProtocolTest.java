package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.reach.Trust;

/** Processes that do not start, and processes that answer wrong. The next run has a good one and works. */
@Timeout(300)
class TornProtocolTest {
    private static final Duration LONG = Duration.ofSeconds(100);
    private static final Duration SHORT = Duration.ofMillis(300);
    private static final WorkbookSource BOOK =
            Book.of("int a = 1;", "int b = 2;").saying("a").source();

    /** The first processes are started wrong, all later ones as usual. */
    private static Kernel kernel(int wrong, Launch launch, KernelLimits limits) {
        java.util.concurrent.atomic.AtomicInteger started = new java.util.concurrent.atomic.AtomicInteger();
        return Kernel.start(
                limits,
                Trust.WORDS_ONLY,
                new Launch(
                        all -> (started.getAndIncrement() < wrong ? launch : Launch.USUAL)
                                .command()
                                .apply(all),
                        launch.patience()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"garbage", "no report", "too long", "torn", "no such unit", "weighed"})
    void run_answerThatCannotBeRead_isTheOutcomeOfTheCellThatRan(String manner) {
        try (Kernel kernel = kernel(1, FakeChild.launch(manner, LONG), KernelLimits.DEFAULT.withTime(LONG))) {
            KernelOutcome outcome = kernel.run(BOOK, Map.of());

            assertThat(outcome.cells().get(0))
                    .isInstanceOfSatisfying(
                            CellOutcome.Stopped.class,
                            stopped -> assertThat(stopped.reason()).isEqualTo(StopReason.UNREADABLE));
            assertThat(outcome.cells().get(0).problems().get(0).words())
                    .isEqualTo("What this gave could not be read. It may be too much.");
            assertThat(outcome.cells().get(1)).isInstanceOf(CellOutcome.Stands.class);
            assertThat(kernel.run(BOOK, Map.of()).stands()).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"flood", "half and waiting"})
    void run_answerWithoutEnd_isStoppedAfterTheTime(String manner) {
        KernelLimits limits = KernelLimits.DEFAULT.withTime(Machine.scaled(1));
        try (Kernel kernel = kernel(1, FakeChild.launch(manner, LONG), limits)) {
            KernelOutcome outcome = kernel.run(BOOK, Map.of());

            assertThat(outcome.cells().get(0))
                    .isInstanceOfSatisfying(
                            CellOutcome.Stopped.class,
                            stopped -> assertThat(stopped.reason()).isEqualTo(StopReason.TIME));
            assertThat(outcome.cells().get(1)).isInstanceOf(CellOutcome.Stands.class);
            assertThat(outcome.printed()).hasSizeLessThan(30_000);
            assertThat(kernel.run(BOOK, Map.of()).stands()).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "silent   | The process that runs cells does not start. It does not call back.",
                "stranger | The process that runs cells does not start. It does not call back.",
            })
    void run_processThatNeverCallsBack_isRefused(String manner, String words) {
        try (Kernel kernel = kernel(1000, FakeChild.launch(manner, SHORT), KernelLimits.DEFAULT)) {
            assertThatThrownBy(() -> kernel.run(BOOK, Map.of()))
                    .isInstanceOf(KernelException.class)
                    .hasMessage(words);
        }
    }

    @Test
    void run_processThatEndsAtOnce_isRefusedWithItsLastWords() {
        try (Kernel kernel = kernel(1, FakeChild.launch("gone", LONG), KernelLimits.DEFAULT)) {
            assertThatThrownBy(() -> kernel.run(BOOK, Map.of()))
                    .isInstanceOf(KernelException.class)
                    .hasMessageContaining("does not start. It ended: I had other plans.");
            assertThat(kernel.run(BOOK, Map.of()).stands()).isTrue();
        }
    }

    @Test
    void run_processThatNeverBegins_isRefused() {
        try (Kernel kernel = kernel(1000, FakeChild.launch("mute", Machine.scaled(2)), KernelLimits.DEFAULT)) {
            assertThatThrownBy(() -> kernel.run(BOOK, Map.of()))
                    .isInstanceOf(KernelException.class)
                    .hasMessageContaining("ends before the first cell: time, code 0; then time, code 0.");
        }
    }

    @Test
    void run_noSuchJava_isRefusedAndTheNextRunWorks() {
        Launch nowhere = new Launch(limits -> List.of(Path.of("nowhere", "java").toString()), LONG);
        try (Kernel kernel = kernel(1, nowhere, KernelLimits.DEFAULT)) {
            assertThatThrownBy(() -> kernel.run(BOOK, Map.of()))
                    .isInstanceOf(KernelException.class)
                    .hasMessageStartingWith("The process that runs cells does not start. Cannot run program");
            assertThat(kernel.run(BOOK, Map.of()).stands()).isTrue();
        }
    }

    @Test
    void run_moreMemoryThanThereIs_isRefusedWithWhatJavaSays() {
        try (Kernel kernel = Kernel.start(KernelLimits.DEFAULT.withHeapMegabytes(Integer.MAX_VALUE))) {
            assertThatThrownBy(() -> kernel.run(BOOK, Map.of()))
                    .isInstanceOf(KernelException.class)
                    .hasMessageContaining("It ended: ")
                    .hasMessageContaining("heap");
        }
    }

    @Test
    void close_whileAProcessIsStarting_endsItAtOnce() {
        AtomicBoolean asked = new AtomicBoolean();
        Launch silent = FakeChild.launch("silent", LONG);
        Kernel kernel = Kernel.start(
                KernelLimits.DEFAULT,
                Trust.WORDS_ONLY,
                new Launch(
                        limits -> {
                            asked.set(true);
                            return silent.command().apply(limits);
                        },
                        LONG));
        long begin = System.nanoTime();
        kernel.close();

        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(LONG.dividedBy(2));
        assertThat(asked).isTrue();
    }
}
