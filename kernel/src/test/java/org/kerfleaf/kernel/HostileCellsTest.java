package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.reach.Trust;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Part;

/**
 * Cells that would bring a program down, in real child processes. Whatever the third cell of the book does, it is that
 * cell's outcome, the others keep theirs, and the next run knows nothing of it.
 */
@Timeout(300)
class HostileCellsTest {
    private static final Duration TIME = Machine.scaled(2);
    private static final String STOCK = """
            measureIn(INCHES);
            Sheet ply = sheet("exterior plywood", "48 in", "96 in").soldAs("3/4 in");
            """;
    private static final String BEFORE = "Part floor = panel(\"Floor\", ply).wide(\"22 in\").deep(\"11 in\");";
    private static final String AFTER = "Part shelf = panel(\"Shelf\", ply).wide(\"22 in\").deep(\"8 in\");";
    private static final int HOSTILE = 2;

    private static final Map<ProcessHandle, Path> CHILDREN = new LinkedHashMap<>();
    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(TIME).withHeapMegabytes(96), Trust.EVERYTHING);
    }

    /** With the last run over and the kernel closed, nothing of any of its children is left. */
    @AfterAll
    static void close() {
        kernel.close();
        assertThat(CHILDREN).hasSizeGreaterThan(5);
        assertThat(CHILDREN.keySet()).noneMatch(ProcessHandle::isAlive);
        assertThat(CHILDREN.values()).noneMatch(Files::exists);
    }

    @BeforeEach
    @AfterEach
    void remember() {
        CHILDREN.put(kernel.child().process(), kernel.child().folder());
    }

    private static Book around(String hostile) {
        return Book.of(STOCK, BEFORE, hostile, AFTER).saying("floor.name()");
    }

    private static KernelOutcome run(String hostile) {
        return kernel.run(around(hostile).source(), Map.of());
    }

    /** Runs a book around the cell, checks all that should be left alone, and gives what became of the cell. */
    private static CellOutcome outcomeOf(String hostile) {
        return othersStand(run(hostile)).cells().get(HOSTILE);
    }

    private static KernelOutcome othersStand(KernelOutcome outcome) {
        assertThat(outcome.cells())
                .filteredOn(cell -> cell.cell() != HOSTILE)
                .allMatch(CellOutcome.Stands.class::isInstance);
        assertThat(outcome.sketch().orElseThrow().all(Part.class))
                .extracting(Part::name)
                .contains("Floor", "Shelf");
        assertThat(outcome.liveValues()).containsValue(new LiveOutcome.Value(new Live.OfText("Floor")));
        assertThat(run("int good = 1;").stands()).isTrue();
        return outcome;
    }

    private static CellProblem stoppedBy(StopReason reason, String hostile) {
        CellOutcome outcome = outcomeOf(hostile);
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        CellOutcome.Stopped.class,
                        stopped -> assertThat(stopped.reason()).isEqualTo(reason));
        assertThat(outcome.problems()).hasSize(1);
        return outcome.problems().get(0);
    }

    private static CellProblem thrownBy(String hostile) {
        CellOutcome outcome = outcomeOf(hostile);
        assertThat(outcome).isInstanceOf(CellOutcome.Threw.class);
        assertThat(outcome.problems()).hasSize(1);
        return outcome.problems().get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "int a = 1;\n\nfor (;;) {}",
                "int a = 1;\n\nfor (;;) { try { Thread.sleep(60_000); } catch (Throwable any) { continue; } }",
            })
    void run_endlessLoop_isStoppedAfterTheTime(String hostile) {
        CellProblem problem = stoppedBy(StopReason.TIME, hostile);

        assertThat(problem.words())
                .isEqualTo("Stopped after %d s. A loop that never ends would do that.", TIME.toSeconds());
        assertThat(problem.line()).isEqualTo(11);
        assertThat(problem.text()).isEqualTo(hostile.lines().toList().get(2));
    }

    @Test
    void run_exit_isThatCellsDoing() {
        assertThat(stoppedBy(StopReason.EXIT, "System.exit(3);").words())
                .isEqualTo("This ended the process that runs the cells (code 3). A cell does not end the workbook.");
    }

    @Test
    void run_halt_isThatCellsDoing() {
        assertThat(stoppedBy(StopReason.EXIT, "Runtime.getRuntime().halt(9);").words())
                .contains("(code 9)");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "List<long[]> all = new ArrayList<>(); for (;;) { all.add(new long[1_000_000]); }",
                "long[] much = new long[Integer.MAX_VALUE];",
                "{ String text = \"x\"; for (;;) { try { text += text; } catch (Throwable any) { } } }",
            })
    void run_heapExhausted_saysHowMuchThereIs(String hostile) {
        assertThat(stoppedBy(StopReason.MEMORY, hostile).words())
                .startsWith("Stopped: it needs more memory than the 96 MB a workbook has.");
    }

    @Test
    void run_endlessRecursion_isThrown() {
        CellProblem problem = thrownBy("int sink(int n) { return sink(n + 1) + 1; }\nint deep = sink(1);\n");

        assertThat(problem.words()).isEqualTo("This calls itself without end.");
    }

    @Test
    void run_twoMillionLinesPrinted_areCutAndSaidToBe() {
        KernelOutcome outcome = othersStand(run("for (int i = 0; i < 2_000_000; i++) { System.out.println(i); }"));

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.printed())
                .startsWith("0\n1\n2\n")
                .endsWith("… cut here: 20000 bytes of print are kept\n")
                .hasSizeBetween(20_000, 20_100);
    }

    @Test
    void run_hundredMegabytesPrinted_areCutAndSaidToBe() {
        KernelOutcome outcome = othersStand(run(
                "String much = \"x\".repeat(1_000_000); for (int i = 0; i < 100; i++) { System.out.print(much); }"));

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.printed())
                .startsWith("xxx")
                .endsWith("… cut here: 20000 bytes of print are kept\n")
                .hasSizeBetween(20_000, 20_100);
    }

    @Test
    void run_readsInput_findsNone() {
        KernelOutcome outcome = othersStand(run("System.out.println(System.in.read());"));

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.printed()).isEqualTo("-1\n");
    }

    @Test
    void run_waitsForALineOfInput_isThrown() {
        assertThat(thrownBy("String line = new Scanner(System.in).nextLine();").words())
                .isEqualTo("There is none of it here.");
    }

    @Test
    void run_outputTakenAway_isBackForTheNextCell() {
        KernelOutcome outcome = kernel.run(
                Book.of("System.setOut(null);", "System.out.println(\"still here\");")
                        .source(),
                Map.of());

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.printed()).isEqualTo("still here\n");
        assertThat(thrownBy("{ System.setOut(null); System.out.println(1); }").words())
                .contains("no value");
    }

    @Test
    void run_threadLeftRunning_costsTheProcessOnly() {
        ProcessHandle before = kernel.child().process();

        assertThat(outcomeOf("new Thread(() -> { for (;;) { Thread.onSpinWait(); } }).start();"))
                .isInstanceOf(CellOutcome.Stands.class);

        assertThat(before.onExit()).succeedsWithin(120, TimeUnit.SECONDS);
    }

    @Test
    void run_processStarted_endsWithTheRun() {
        KernelOutcome outcome =
                othersStand(run("System.out.print(new ProcessBuilder(\"sleep\", \"600\").start().pid());"));

        assertThat(outcome.stands()).isTrue();
        ProcessHandle.of(Long.parseLong(outcome.printed()))
                .ifPresent(started -> assertThat(started.onExit()).succeedsWithin(120, TimeUnit.SECONDS));
    }

    @Test
    void run_writesPastAllStreams_disturbsNothing() {
        assertThat(
                        outcomeOf(
                                "var raw = new java.io.FileOutputStream(java.io.FileDescriptor.out);\nraw.write(new byte[100_000]);"))
                .isInstanceOf(CellOutcome.Stands.class);
    }

    @Test
    void run_surroundingsChanged_areBackForTheNextRun() {
        run(
                "Locale.setDefault(Locale.GERMANY); System.setProperty(\"mine\", \"yes\"); System.clearProperty(\"java.version\");");

        KernelOutcome outcome = run(
                "System.out.print(Locale.getDefault() + \" \" + System.getProperty(\"mine\") + \" \" + (System.getProperty(\"java.version\") == null));");

        assertThat(outcome.printed()).isEqualTo("en null false");
    }

    @Test
    void run_exceptionThatCannotSayWhat_isThrown() {
        String hostile = """
                class Odd extends RuntimeException {
                    public String getMessage() { throw new Error(); }
                    public StackTraceElement[] getStackTrace() { throw new Error(); }
                }
                throw new Odd();
                """;

        assertThat(thrownBy(hostile).words()).isEqualTo("This stopped: odd.");
    }

    @Test
    void run_collectionThatThrowsWhenLookedInto_isThrown() {
        String hostile = """
                class Odd extends AbstractList<Part> {
                    public Part get(int i) { throw new IllegalStateException("I am odd."); }
                    public int size() { return 3; }
                }
                var odd = new Odd();
                """;

        assertThat(thrownBy(hostile).words()).isEqualTo("I am odd.");
    }

    @Test
    void run_collectionWithoutEnd_isStopped() {
        String hostile = "Iterable<Integer> i = null;\n"
                + "var odd = new AbstractCollection<Integer>() {\n"
                + "    public Iterator<Integer> iterator() { for (;;) {} }\n"
                + "    public int size() { return 3; }\n"
                + "};\n";

        assertThat(stoppedBy(StopReason.TIME, hostile).line()).isEqualTo(10);
    }

    @Test
    void run_endlessLiveValue_isThatValuesProblem() {
        KernelOutcome outcome = kernel.run(
                Book.of(STOCK, BEFORE, "int forever() { for (;;) {} }")
                        .saying("forever()")
                        .saying("floor.name()")
                        .source(),
                Map.of());

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.liveValues().get(0))
                .isInstanceOfSatisfying(
                        LiveOutcome.Failed.class,
                        failed -> assertThat(failed.problem().words())
                                .startsWith("Stopped after %d s.".formatted(TIME.toSeconds())));
        assertThat(outcome.liveValues()).containsEntry(1, new LiveOutcome.Value(new Live.OfText("Floor")));
    }

    @Test
    void run_threeCellsThatStop_theRestIsNotReached() {
        KernelOutcome outcome = kernel.run(
                Book.of(STOCK, "System.exit(1);", "System.exit(2);", "System.exit(3);", "int a = 1;")
                        .source(),
                Map.of());

        assertThat(outcome.cells())
                .extracting(cell -> cell instanceof CellOutcome.Stopped stopped ? stopped.reason() : null)
                .containsExactly(null, StopReason.EXIT, StopReason.EXIT, StopReason.EXIT, StopReason.NOT_REACHED);
        assertThat(outcome.cells().get(4).problems().get(0).words())
                .isEqualTo("Not run: other cells stopped the run 3 times.");
        assertThat(outcome.sketch()).isEmpty();
    }

    /** The process that makes the next run was ready before the one that is lost was. */
    @Test
    void run_childLost_theSpareTakesItsPlace() {
        assertThat(outcomeOf("int a = 1;")).isInstanceOf(CellOutcome.Stands.class);
        ProcessHandle spare = kernel.spare().join().process();

        KernelOutcome outcome = kernel.run(Book.of("System.exit(3);").source(), Map.of());

        assertThat(outcome.cells().get(0)).isInstanceOf(CellOutcome.Stopped.class);
        assertThat(kernel.child().process()).isEqualTo(spare);
        assertThat(kernel.spare().join().process()).isNotEqualTo(spare).matches(ProcessHandle::isAlive);
    }

    @Test
    void run_spareLost_isNotUsed() {
        ProcessHandle spare = kernel.spare().join().process();
        spare.destroyForcibly();
        spare.onExit().join();

        assertThat(stoppedBy(StopReason.EXIT, "System.exit(3);").words()).contains("(code 3)");
    }

    @Test
    void run_childKilledBetweenRuns_isReplaced() {
        ProcessHandle child = kernel.child().process();
        child.destroyForcibly();
        child.onExit().join();

        assertThat(outcomeOf("int a = 1;")).isInstanceOf(CellOutcome.Stands.class);
    }

    @Test
    void run_childKilledDuringARun_saysSo() throws InterruptedException {
        ProcessHandle child = kernel.child().process();
        Path mark = kernel.child().folder().resolve("here");
        CompletableFuture<KernelOutcome> running = CompletableFuture.supplyAsync(
                // One piece: ended between two, the second would be run again and wait.
                () -> run("synchronized (ply) { new java.io.File(\"here\").createNewFile(); ply.wait(); }"));
        Machine.await(() -> Files.exists(mark) || running.isDone());
        child.destroyForcibly();

        KernelOutcome outcome = othersStand(running.join());

        assertThat(outcome.cells().get(HOSTILE).problems())
                .extracting(CellProblem::words)
                .containsExactly(
                        "The process that runs the cells was ended from outside while this ran. Run it again.");
    }

    @ParameterizedTest
    @ValueSource(ints = {500, 20_000})
    void run_deepParentheses_costAtMostThatCell(int depth) {
        CellOutcome outcome = outcomeOf("int a = " + "(".repeat(depth) + "1" + ")".repeat(depth) + ";");

        if (!(outcome instanceof CellOutcome.Stands)) {
            assertThat(outcome.problems())
                    .extracting(CellProblem::words)
                    .isEqualTo(List.of("This is nested too deep to be read."));
        }
    }

    @Test
    void run_deepParenthesesInProse_costThatValueOnly() {
        KernelOutcome outcome = kernel.run(
                Book.of(STOCK, BEFORE)
                        .saying("(".repeat(20_000) + "1" + ")".repeat(20_000))
                        .saying("floor.name()")
                        .source(),
                Map.of());

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.liveValues()).containsEntry(1, new LiveOutcome.Value(new Live.OfText("Floor")));
    }

    @Test
    void run_textTooLongToShow_isThatValuesProblem() {
        KernelOutcome outcome = kernel.run(
                Book.of(STOCK, BEFORE, "String much = \"x\".repeat(5_000_000);")
                        .saying("much")
                        .saying("floor.name()")
                        .source(),
                Map.of());

        assertThat(outcome.liveValues().get(0))
                .isInstanceOfSatisfying(
                        LiveOutcome.Value.class,
                        value -> assertThat(((Live.OfText) value.live()).text().substring(9_000))
                                .endsWith("x…")
                                .hasSizeLessThan(20_000));
        assertThat(outcome.liveValues()).containsEntry(1, new LiveOutcome.Value(new Live.OfText("Floor")));
    }
}
