package org.kerfleaf.samples;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What an edit of a workbook of thirty pieces costs until its new sketch is there, warm, beside what the JDK's own JShell
 * takes for the same text with less behind its words, running it in this process ({@code local}) or in one of its own
 * ({@code jdi}, the default).
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class KernelBenchmark {
    private static final int SNIPPETS = 30;
    private static final String SIZE = "size(\"Width\", \"22 in\", \"16 in to 40 in\")";

    /** A kernel that has the workbook open. */
    @State(Scope.Benchmark)
    public static class Open {
        private static final WorkbookSource AS_WRITTEN = Snippets.source(Snippets.of(SNIPPETS, SIZE, 7));

        private Kernel kernel;
        private int turn;

        @Setup
        public void open() {
            kernel = Kernel.start(KernelLimits.DEFAULT);
            stands(kernel.run(AS_WRITTEN, Map.of()));
        }

        @TearDown
        public void close() {
            kernel.close();
        }

        private static KernelOutcome stands(KernelOutcome outcome) {
            if (!outcome.stands()) {
                throw new IllegalStateException(outcome.cells().toString());
            }
            return outcome;
        }
    }

    /** A JShell of the JDK's that has evaluated the workbook. */
    @State(Scope.Benchmark)
    public static class Stock {
        @Param({"local", "jdi"})
        String engine;

        private JShell shell;
        private int turn;

        @Setup
        public void open() {
            shell = opened();
        }

        @TearDown(Level.Trial)
        public void close() {
            shell.close();
        }

        private JShell opened() {
            JShell made = JShell.builder().executionEngine(engine).build();
            made.addToClasspath(System.getProperty("java.class.path"));
            made.eval("import java.util.*;");
            made.eval("import org.kerfleaf.samples.PlainWords.*;");
            made.eval("import static org.kerfleaf.samples.PlainWords.*;");
            evaluate(made, 22);
            return made;
        }

        private static void evaluate(JShell shell, int width) {
            for (String text : Snippets.of(SNIPPETS, "length(\"%d in\")".formatted(width), 7)) {
                for (SnippetEvent event : shell.eval(text)) {
                    if (event.exception() != null || event.status() == Snippet.Status.REJECTED) {
                        throw new IllegalStateException(text + event);
                    }
                }
            }
        }
    }

    /** A size changed: nothing is compiled. */
    @Benchmark
    @Warmup(iterations = 100)
    @Measurement(iterations = 200)
    public KernelOutcome changedSize(Open open) {
        String width = 20 + open.turn++ % 15 + " in";
        return Open.stands(open.kernel.run(Open.AS_WRITTEN, Map.of("Width", width)));
    }

    /** A cell in the middle edited. */
    @Benchmark
    @Warmup(iterations = 100)
    @Measurement(iterations = 200)
    public KernelOutcome editedCell(Open open) {
        List<String> cells = Snippets.of(SNIPPETS, SIZE, 7 + open.turn++ % 15);
        return Open.stands(open.kernel.run(Snippets.source(cells), Map.of()));
    }

    /** The first cell edited, on which all others build. */
    @Benchmark
    @Warmup(iterations = 100)
    @Measurement(iterations = 200)
    public KernelOutcome editedFirstCell(Open open) {
        String size = SIZE.replace("22", "" + (20 + open.turn++ % 15));
        return Open.stands(open.kernel.run(Snippets.source(Snippets.of(SNIPPETS, size, 7)), Map.of()));
    }

    /** Every piece evaluated again in the same JShell. */
    @Benchmark
    @Warmup(iterations = 3)
    @Measurement(iterations = 5)
    public int stockEvaluatedAgain(Stock stock) {
        Stock.evaluate(stock.shell, 20 + stock.turn++ % 15);
        return stock.turn;
    }

    /** A new JShell for every edit. */
    @Benchmark
    @Warmup(iterations = 2)
    @Measurement(iterations = 4)
    public int stockAnew(Stock stock) {
        stock.opened().close();
        return stock.turn++;
    }
}
