package org.kerfleaf.samples;

import java.io.IOException;
import java.util.Collection;
import java.util.TreeMap;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/** Runs the benchmarks and prints their tables; ratios are within this run, since a machine's speed is not the same tomorrow. */
public final class Benchmarks {
    private Benchmarks() {}

    /**
     * Runs {@code geometry}, {@code edits}, {@code runs}, {@code opening}, the {@code kernel}'s three, or {@code all}.
     *
     * @throws RunnerException if a benchmark does not run
     */
    public static void main(String[] arguments) throws RunnerException, IOException, InterruptedException {
        String wanted = arguments.length == 0 ? "all" : arguments[0];
        boolean all = wanted.equals("all");
        if (all || wanted.equals("geometry")) {
            print(run(GeometryBenchmark.class), "solidsAndContacts,  60 parts", "60 parts = 1");
        }
        boolean kernel = all || wanted.equals("kernel");
        if (kernel || wanted.equals("edits")) {
            print(run(KernelBenchmark.class), "changedSize", "changed size = 1");
        }
        if (kernel || wanted.equals("runs")) {
            print(run(RunsBenchmark.class), "oneRun", "one run = 1");
        }
        if (kernel || wanted.equals("opening")) {
            Opening.main(new String[0]);
        }
    }

    private static TreeMap<String, Statistics> run(Class<?> benchmark) throws RunnerException {
        Collection<RunResult> runs = new Runner(new OptionsBuilder()
                        .include(benchmark.getSimpleName())
                        .verbosity(VerboseMode.SILENT)
                        .shouldFailOnError(true)
                        .build())
                .run();
        TreeMap<String, Statistics> table = new TreeMap<>();
        for (RunResult run : runs) {
            Result<?> result = run.getPrimaryResult();
            String parts = run.getParams().getParam("parts");
            String engine = run.getParams().getParam("engine");
            String with = parts != null ? ", %3s parts".formatted(parts) : engine != null ? ", " + engine : "";
            table.put(result.getLabel() + with, result.getStatistics());
        }
        return table;
    }

    private static void print(TreeMap<String, Statistics> table, String unit, String last) {
        double one = table.get(unit).getPercentile(50);
        System.out.printf("%n%-36s %9s %9s %9s %9s %18s%n", "milliseconds", "least", "median", "90 %", "95 %", last);
        table.forEach((name, times) -> System.out.printf(
                "%-36s %9.2f %9.2f %9.2f %9.2f %18.2f%n",
                name,
                times.getMin(),
                times.getPercentile(50),
                times.getPercentile(90),
                times.getPercentile(95),
                times.getPercentile(50) / one));
    }
}
