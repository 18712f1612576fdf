package org.kerfleaf.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CompiledCache;
import org.kerfleaf.kernel.reach.Trust;

/**
 * How long it takes from the start of a process until a workbook of fifty pieces has run: the first time, when it is
 * compiled, and again, when it is in the cache. Every measurement is a process of its own with the launcher's options.
 */
public final class Opening {
    private static final int TIMES = 10;
    private static final int SNIPPETS = 50;

    private Opening() {}

    /** Without an argument measures; with a folder opens the workbook once with its cache there. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 0) {
            measure();
        } else {
            open(Path.of(arguments[0]));
        }
    }

    private static void open(Path cache) {
        WorkbookSource source = Snippets.source(Snippets.of(SNIPPETS, "size(\"Width\", \"22 in\")", 7));
        try (Kernel kernel = Kernel.start(KernelLimits.DEFAULT, Trust.WORDS_ONLY, CompiledCache.in(cache))) {
            if (!kernel.run(source, Map.of()).stands()) {
                throw new IllegalStateException("The workbook does not stand.");
            }
            ProcessHandle.Info process = ProcessHandle.current().info();
            Instant start = process.startInstant().orElseThrow();
            System.out.println(Duration.between(start, Instant.now()).toMillis() + " "
                    + process.totalCpuDuration().orElse(Duration.ZERO).toMillis());
        }
    }

    private static void measure() throws IOException, InterruptedException {
        Path cache = Files.createTempDirectory("opening");
        List<long[]> first = new ArrayList<>();
        List<long[]> again = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            clear(cache);
            first.add(timed(cache));
            again.add(timed(cache));
        }
        clear(cache);
        Files.delete(cache);
        System.out.printf("%nmilliseconds from process start to the end of the first run, %d snippets%n", SNIPPETS);
        System.out.printf("%-36s %9s %9s %9s%n", "", "least", "median", "least CPU");
        print("opened for the first time", first);
        print("opened again", again);
    }

    private static void print(String name, List<long[]> times) {
        List<Long> elapsed = times.stream().map(time -> time[0]).sorted().toList();
        long processor = Collections.min(times.stream().map(time -> time[1]).toList());
        System.out.printf("%-36s %9d %9d %9d%n", name, elapsed.get(0), elapsed.get(elapsed.size() / 2), processor);
    }

    private static void clear(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder())
                    .filter(Files::isRegularFile)
                    .toList()) {
                Files.delete(file);
            }
        }
    }

    /** Elapsed and processor time of one opening; the child process's own is not in the latter. */
    private static long[] timed(Path cache) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Opening.class.getName(),
                        cache.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String[] said =
                new String(process.getInputStream().readAllBytes()).strip().split(" ");
        if (process.waitFor() != 0) {
            throw new IOException("A process ended with " + process.exitValue() + ".");
        }
        return new long[] {Long.parseLong(said[0]), Long.parseLong(said[1])};
    }
}
