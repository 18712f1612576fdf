package org.kerfleaf.export.command;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;

/** The command {@code kerfleaf}. */
public final class Main {
    /** Where nobody looks on, a pipe or a file: as wide as the text gets. */
    private static final int WIDE = 100;

    private static final int USUAL = 80;

    private Main() {}

    /** Does what the arguments say and ends the process: 0 all is well, 1 a check falls short, 2 it cannot be done. */
    public static void main(String[] arguments) {
        // Drawing must not look for a screen.
        System.setProperty("java.awt.headless", "true");
        int status = Kerfleaf.run(bench(), arguments);
        Archive.keep(System.getenv());
        System.exit(status);
    }

    private static Bench bench() {
        Allowances allowances = new Allowances(
                UserFolder.of(System.getProperty("os.name"), System.getProperty("user.home"), System.getenv()));
        KernelPlanner planner = new KernelPlanner(allowances);
        return new Bench(
                planner,
                planner,
                allowances,
                new Booklets(),
                writer(FileDescriptor.out),
                writer(FileDescriptor.err),
                Path.of("").toAbsolutePath(),
                columns(),
                LocalDate::now);
    }

    private static PrintWriter writer(FileDescriptor to) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(to), charset()), true);
    }

    /** What the terminal reads, so that fractions and rules come out; UTF-8 into pipes and files. */
    private static Charset charset() {
        Console console = System.console();
        boolean plain = console == null || console.charset().equals(StandardCharsets.US_ASCII);
        return plain ? StandardCharsets.UTF_8 : console.charset();
    }

    private static int columns() {
        String said = System.getenv("COLUMNS");
        if (said != null && said.matches("[1-9][0-9]{0,3}")) {
            return Integer.parseInt(said);
        }
        return System.console() == null ? WIDE : USUAL;
    }
}
