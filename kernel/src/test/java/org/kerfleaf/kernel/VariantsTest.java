package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CellCompiler;
import org.kerfleaf.kernel.reach.Trust;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.Part;

/** One workbook with many sizes at once. */
@Timeout(1200)
class VariantsTest {
    private static final KernelLimits LIMITS = KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60));
    private static final String SIZES = """
            measureIn(INCHES);
            Length width = size("Width", "22 in", "1 in to 1000 in");
            int n = count("Shelves", 2, "1 to 1000");
            Sheet ply = sheet("plywood", "48 in", "96 in").soldAs("3/4 in");
            """;
    private static final String PARTS =
            "var shelves = repeat(3, i -> panel(\"Shelf \" + (i + 1), ply).wide(width.times(i + 1)).deep(\"8 in\"));";

    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(LIMITS, Trust.EVERYTHING);
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    private static List<Map<String, String>> widths(int many) {
        return IntStream.range(0, many)
                .mapToObj(i -> Map.of("Width", (i + 1) + " in"))
                .toList();
    }

    private static String said(KernelOutcome outcome) {
        return outcome.liveValues().toString();
    }

    @Test
    void variants_manySizes_comeInTheOrderAsked() {
        WorkbookSource source = Book.of(SIZES, PARTS).source();
        List<Length> widths;
        try (Stream<KernelOutcome> many = kernel.variants(source, widths(300))) {
            widths = many.map(outcome -> outcome.sketch()
                            .orElseThrow()
                            .all(Part.class)
                            .get(0)
                            .toString())
                    .map(part -> part.replaceFirst("(?s).*?(\\d+ in).*", "$1"))
                    .map(Length::parse)
                    .toList();
        }

        assertThat(widths).hasSize(300).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void variants_eachOutcome_isThatOfARunByItself() {
        WorkbookSource source =
                Book.of(SIZES, PARTS).saying("width + \" \" + n").source();
        List<Map<String, String>> sizes = List.of(
                Map.of(),
                Map.of("Width", "30 in"),
                Map.of("Shelves", "7"),
                Map.of("Width", "wide"),
                Map.of("None", "1"));
        List<KernelOutcome> alone =
                sizes.stream().map(each -> kernel.run(source, each)).toList();

        assertThat(kernel.variants(source, sizes)).isEqualTo(alone);
    }

    /** Each run would see what one before it left: in a static field, an enum, a property, the locale, a file, a thread. */
    @Test
    void variants_cellsThatTryToLeak_findNothingOfTheOthers() {
        String leaking = """
                class Kept { static int runs; static final List<Object> all = new ArrayList<>(); }
                enum Mood { ONLY; int runs; }
                int before() {
                    Kept.runs++; Kept.all.add(n); Mood.ONLY.runs++;
                    return Kept.runs + Kept.all.size() + Mood.ONLY.runs;
                }
                String found = before() + " " + System.getProperty("left") + " " + Locale.getDefault()
                        + " " + TimeZone.getDefault().getID() + " " + new java.io.File("left").exists()
                        + " " + Thread.getDefaultUncaughtExceptionHandler();
                System.setProperty("left", "" + n);
                Locale.setDefault(n % 2 == 0 ? Locale.GERMANY : Locale.JAPAN);
                TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
                new java.io.File("left").createNewFile();
                Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> {});
                System.setOut(null);
                """;
        WorkbookSource source =
                Book.of(SIZES, leaking).saying("found").saying("n").source();
        List<Map<String, String>> sizes = IntStream.range(0, 60)
                .mapToObj(i -> i % 3 == 0 ? Map.<String, String>of() : Map.of("Shelves", "" + (i + 1)))
                .toList();
        List<String> expected = IntStream.range(0, 60)
                .mapToObj(i -> "found=3 null en UTC false null n=" + (i % 3 == 0 ? 2 : i + 1))
                .toList();

        assertThat(kernel.variants(source, sizes))
                .extracting(outcome -> outcome.liveValues().values().toString())
                .extracting(all -> all.replaceAll("(?s).*?text=([^\\]]*)\\].*?text=(\\d+)\\].*", "found=$1 n=$2"))
                .isEqualTo(expected);
    }

    /** Cells that keep nothing but values run again in the same classes, which have to forget the run before. */
    @Test
    void variants_cellsOfValuesAndMethods_beginAnewInTheSameClasses() {
        String filling = """
                List<Integer> all = new ArrayList<>();
                int[] count = {0};
                int found = ++count[0] + all.size();
                int failing = 12 / (n % 4);
                for (int i = 0; i < n; i++) { all.add(i); count[0]++; }
                String last = "last " + failing;
                String late() { return last == null ? "none" : last + count[0]; }
                java.util.function.Supplier<String> later = () -> late();
                record Kept(int n, String text) {}
                var kept = new Kept(all.size(), last);
                """;
        WorkbookSource source = Book.of(SIZES, filling)
                .saying("found + \" \" + later.get()")
                .saying("kept")
                .source();
        List<Map<String, String>> sizes = IntStream.rangeClosed(1, 60)
                .mapToObj(i -> Map.of("Shelves", "" + i))
                .toList();
        List<KernelOutcome> outcomes;
        try (Kernel strict = Kernel.start(LIMITS)) {
            outcomes = strict.variants(source, sizes).toList();
        }

        for (int n = 1; n <= 60; n++) {
            KernelOutcome outcome = outcomes.get(n - 1);
            assertThat(outcome.stands()).as("%d: %s", n, outcome.cells()).isEqualTo(n % 4 != 0);
            String all = said(outcome);
            if (n % 4 == 0) {
                assertThat(all).contains("Waits for “failing”").doesNotContain("text=Kept");
            } else {
                int failing = 12 / (n % 4);
                assertThat(all)
                        .contains("text=1 last %d%d]".formatted(failing, n + 1))
                        .contains("text=Kept[n=%d, text=last %d]".formatted(n, failing));
            }
        }
    }

    /** What prose says and what is declared come from one run: a name that no two runs have is the same in both. */
    @Test
    void run_liveValuesAndSketch_areOfOneRun() {
        WorkbookSource source = Book.of(
                        SIZES,
                        "String once = \"Lid \" + System.nanoTime();",
                        "panel(once, ply).wide(width).deep(\"8 in\")")
                .saying("once")
                .source();
        List<KernelOutcome> outcomes = new ArrayList<>(
                kernel.variants(source, List.of(Map.of(), Map.of())).toList());
        outcomes.add(kernel.run(source, Map.of()));

        assertThat(outcomes).extracting(VariantsTest::said).doesNotHaveDuplicates();
        for (KernelOutcome outcome : outcomes) {
            String name = outcome.sketch().orElseThrow().all(Part.class).get(0).name();
            assertThat(said(outcome)).contains("text=" + name + "]");
        }
    }

    @Test
    void variants_someThatStopTheirProcess_costTheirOwnRunOnly() {
        WorkbookSource source = Book.of(SIZES, "if (n == 7) { System.exit(3); }", PARTS)
                .saying("n")
                .source();
        List<Map<String, String>> sizes = IntStream.rangeClosed(1, 20)
                .mapToObj(i -> Map.of("Shelves", "" + i))
                .toList();

        List<KernelOutcome> outcomes = kernel.variants(source, sizes).toList();

        assertThat(outcomes).extracting(KernelOutcome::stands).containsOnlyOnce(false);
        assertThat(outcomes.get(6).cells().get(1))
                .isInstanceOfSatisfying(
                        CellOutcome.Stopped.class,
                        stopped -> assertThat(stopped.reason()).isEqualTo(StopReason.EXIT));
        for (int i = 0; i < 20; i++) {
            assertThat(said(outcomes.get(i))).contains("text=" + (i + 1) + "]");
        }
    }

    @Test
    void variants_closed_endsWhatIsRunningAndTheKernelGoesOn() throws InterruptedException {
        WorkbookSource source =
                Book.of(SIZES, "while (n == 3) { Thread.onSpinWait(); }").source();
        List<Map<String, String>> sizes = new ArrayList<>(widths(2));
        sizes.addAll(List.of(Map.of("Shelves", "3"), Map.of("Shelves", "3")));
        Stream<KernelOutcome> many = kernel.variants(source, sizes);
        Iterator<KernelOutcome> outcomes = many.iterator();
        assertThat(outcomes.next().stands()).isTrue();
        assertThat(outcomes.next().stands()).isTrue();
        long begin = System.nanoTime();

        many.close();

        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(LIMITS.time());
        assertThatThrownBy(outcomes::next).isInstanceOf(IllegalStateException.class);
        assertThat(kernel.run(source, Map.of()).stands()).isTrue();
    }

    @Test
    void variants_none_isEmpty() {
        assertThat(kernel.variants(Book.of(SIZES).source(), List.of())).isEmpty();
    }

    @Test
    void variants_kernelClosed_isToldToWhoeverReads() {
        Kernel other = Kernel.start(LIMITS);
        Iterator<KernelOutcome> outcomes =
                other.variants(Book.of(SIZES, PARTS).source(), widths(5000)).iterator();
        outcomes.next();
        other.close();

        assertThatThrownBy(() -> outcomes.forEachRemaining(KernelOutcome::stands))
                .isInstanceOf(IllegalStateException.class);
    }

    /**
     * The process holds after many runs what it held after some: every loader is gone, with all that its cells made. How
     * many runs is {@code -Dkernel.runs=10000}.
     */
    @Test
    void run_manyTimes_leavesTheProcessAsItWas() {
        int runs = Integer.getInteger("kernel.runs", 400);
        String keeping = "class Kept { static final ThreadLocal<Object> mine = new ThreadLocal<>(); }\n"
                + "long[] much = new long[10_000]; Kept.mine.set(much);";
        WorkbookSource source = Book.of(SIZES, PARTS, keeping).saying("width").source();
        try (CellCompiler compiler = new CellCompiler();
                Children children = new Children(LIMITS, Launch.USUAL);
                Seat seat = new Seat(children, LIMITS)) {
            Prepared book = Prepared.of(source, compiler.compile(source), LIMITS);
            for (int i = 0; i < 200; i++) {
                assertThat(seat.run(book, Map.of()).stands()).isTrue();
            }
            Report.Weighed before = seat.weigh();
            ProcessHandle child = seat.child().process();
            for (int i = 0; i < runs; i++) {
                assertThat(seat.runQuickly(book, Map.of("Width", i % 900 + 1 + " in"))
                                .stands())
                        .isTrue();
            }
            Report.Weighed after = seat.weigh();

            System.out.printf("After %d runs more: %s, before: %s%n", runs, after, before);
            assertThat(seat.child().process()).isEqualTo(child);
            assertThat(after.classes()).isLessThan(before.classes() + 100);
            assertThat(after.heapBytes()).isLessThan(before.heapBytes() + 1_000_000);
            assertThat(after.classBytes()).isLessThan(before.classBytes() + 1_000_000);
        }
    }
}
