package org.kerfleaf.export.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** The usual work, done on a workbook of ours in a folder for nobody to see: what it loads is what an {@link Archive} holds. */
final class Rehearsal {
    private static final String WORKBOOK = "seed-swap-cabinet.md";

    private Rehearsal() {}

    /** Ends with 0 if all of it went well. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        System.setProperty("kerfleaf.cache", folder.resolve("cache").toString());
        try (InputStream workbook = Rehearsal.class.getResourceAsStream(WORKBOOK)) {
            Files.write(folder.resolve(WORKBOOK), workbook.readAllBytes());
        }
        PrintWriter nobody = new PrintWriter(Writer.nullWriter());
        Allowances allowances = new Allowances(folder.resolve("allowed"));
        KernelPlanner planner = new KernelPlanner(allowances);
        Bench bench = new Bench(
                planner, planner, allowances, new Booklets(), nobody, nobody, folder, 80, () -> LocalDate.EPOCH);
        int status = ExitStatus.FINE;
        // The first compiles, the second finds that in the cache.
        for (List<String> words : List.of(
                List.of("plan", WORKBOOK), List.of("plan", WORKBOOK, "--units", "mm"), List.of("booklet", WORKBOOK))) {
            status = Math.max(status, Kerfleaf.run(bench, words.toArray(String[]::new)));
        }
        Files.deleteIfExists(folder.resolve(WORKBOOK));
        System.exit(status);
    }
}
