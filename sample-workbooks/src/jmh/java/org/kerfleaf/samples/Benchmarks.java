package org.kerfleaf.samples;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/** Runs the benchmarks and prints one table; ratios are within this run, since a machine's speed is not the same tomorrow. */
public final class Benchmarks {
    private static final String UNIT = "solidsAndContacts,  60 parts";

    /** What those run that have no number of parts. */
    private static final Map<String, String> BUILDS =
            Map.of("wholePlan", "cabinet", "oneRun", "30 pieces", "oneOfManyRuns", "30 pieces");

    private Benchmarks() {}

    /** @throws RunnerException if a benchmark does not run */
    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> runs = new Runner(new OptionsBuilder()
                        .include(GeometryBenchmark.class.getSimpleName())
                        .include(RunsBenchmark.class.getSimpleName())
                        .verbosity(VerboseMode.SILENT)
                        .shouldFailOnError(true)
                        .build())
                .run();
        TreeMap<String, Statistics> table = new TreeMap<>();
        for (RunResult run : runs) {
            Result<?> result = run.getPrimaryResult();
            String parts = run.getParams().getParam("parts");
            String build = parts == null ? BUILDS.get(result.getLabel()) : "%3s parts".formatted(parts);
            table.put(result.getLabel() + ", " + build, result.getStatistics());
        }
        double one = table.get(UNIT).getPercentile(50);
        System.out.printf("%-36s %9s %9s %9s %18s%n", "milliseconds", "least", "median", "90 %", "60 parts = 1");
        table.forEach((name, times) -> System.out.printf(
                "%-36s %9.2f %9.2f %9.2f %18.2f%n",
                name, times.getMin(), times.getPercentile(50), times.getPercentile(90), times.getPercentile(50) / one));
    }
}
