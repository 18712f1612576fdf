package org.kerfleaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** What one run of a sketch of 30 pieces costs, warm and without planning: one after the other, and many at once. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 3, time = 4)
@Fork(1)
@State(Scope.Benchmark)
public class RunsBenchmark {
    private static final int MANY = 500;
    private static final int PIECES = 30;

    private final WorkbookSource source = thirtyPieces();
    private final List<Map<String, String>> sizes = new ArrayList<>();
    private Kernel kernel;
    private int next;

    private static WorkbookSource thirtyPieces() {
        StringBuilder cell = new StringBuilder("""
                measureIn(INCHES);
                Length width = size("Width", "22 in", "16 in to 30 in");
                Sheet ply = sheet("plywood", "48 in", "96 in").soldAs("3/4 in").measured("23/32 in");
                """);
        for (int i = 3; i < PIECES; i += 3) {
            cell.append("""
                    Length deep%1$d = width.minus(ply.thickness()).half();
                    var shelves%1$d = repeat(2, i -> panel("Shelf %1$d." + (i + 1), ply).wide(width).deep(deep%1$d));
                    place(shelves%1$d.get(0));
                    """.formatted(i));
        }
        return new WorkbookSource(
                "Thirty pieces", List.of(), List.of(new CellSource(0, cell.toString(), 1, 0)), List.of());
    }

    /** Starts a kernel. @throws IllegalStateException if the workbook does not run */
    @Setup(Level.Trial)
    public void start() {
        for (int i = 0; i < MANY; i++) {
            sizes.add(Map.of("Width", 16 + i % 14 + " in"));
        }
        kernel = Kernel.start(KernelLimits.DEFAULT);
        if (!kernel.run(source, Map.of()).stands()) {
            throw new IllegalStateException("The workbook of this benchmark does not run.");
        }
    }

    @TearDown(Level.Trial)
    public void close() {
        kernel.close();
    }

    /** One size tried. */
    @Benchmark
    public KernelOutcome oneRun() {
        return kernel.run(source, sizes.get(next++ % MANY));
    }

    /** One of 500 sizes tried together. */
    @Benchmark
    @OperationsPerInvocation(MANY)
    public long oneOfManyRuns() {
        try (Stream<KernelOutcome> many = kernel.variants(source, sizes)) {
            return many.filter(KernelOutcome::stands).count();
        }
    }
}
