package org.kerfleaf.export.command;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.export.command.Kerfleaf.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command as a whole: its words, and how it tells what goes wrong. */
@Command(
        name = "kerfleaf",
        header = "A workbook for people who build things out of sheets and boards.",
        synopsisHeading = "%n",
        customSynopsis = "kerfleaf WORD FILE    for example: kerfleaf plan shelf.md",
        commandListHeading = "%nThe words%n",
        optionListHeading = "%nBesides%n",
        footer = {"", "kerfleaf WORD --help says what can be asked of a word."},
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:if all is well",
            "1:if a check falls short (check only)",
            "2:if the workbook does not run, or what was asked for cannot be done"
        },
        versionProvider = Version.class)
final class Kerfleaf implements Runnable {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Show which version this is.")
    private boolean version;

    @Spec
    private CommandSpec spec;

    private Kerfleaf() {}

    /** Does what the arguments say and returns the exit status. Whatever goes wrong is told on the bench's err. */
    static int run(Bench bench, String... arguments) {
        try {
            return commandLine(bench).execute(arguments);
        } catch (OutOfMemoryError | StackOverflowError exhausted) {
            bench.err().println("The plan is too large for the memory there is. Fewer pieces would be right.");
            return ExitStatus.DOES_NOT_RUN;
        } finally {
            bench.out().flush();
            bench.err().flush();
        }
    }

    private static CommandLine commandLine(Bench bench) {
        CommandLine line = new CommandLine(new Kerfleaf());
        for (Object word : List.of(
                new PlanWord(bench),
                new BookletWord(bench),
                new DrawingsWord(bench),
                new SpreadsheetWord(bench),
                new CheckWord(bench),
                new AllowWord(bench))) {
            line.addSubcommand(word);
        }
        for (CommandLine word : line.getSubcommands().values()) {
            CommandSpec spec = word.getCommandSpec();
            spec.usageMessage()
                    .synopsisHeading("%n")
                    .customSynopsis("kerfleaf %s FILE, then what is asked of it".formatted(spec.name()))
                    .optionListHeading("%nIt can be asked%n")
                    .parameterListHeading("%nIt needs%n");
        }
        line.addSubcommand(new WordsWord(bench));
        return line.setOut(bench.out())
                .setErr(bench.err())
                .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
                .setUsageHelpWidth(Math.max(80, bench.columns()))
                .setParameterExceptionHandler((wrong, given) -> refuse(bench, Complaints.about(wrong)))
                .setExecutionExceptionHandler((failed, on, parsed) -> refuse(bench, words(failed)));
    }

    private static int refuse(Bench bench, String words) {
        bench.err().println(words);
        return ExitStatus.DOES_NOT_RUN;
    }

    private static String words(Exception failed) {
        return failed instanceof Refused ? failed.getMessage() : ownFault(failed);
    }

    /** A fault of the program itself; the place is shown, so that it can be reported and found. */
    private static String ownFault(Exception failed) {
        Optional<StackTraceElement> place = List.of(failed.getStackTrace()).stream()
                .filter(frame -> frame.getClassName().startsWith("org.kerfleaf."))
                .findFirst();
        String where = place.map(frame -> " (%s, line %d)".formatted(frame.getFileName(), frame.getLineNumber()))
                .orElse("");
        String what = failed.getMessage() == null ? "no more is known" : failed.getMessage();
        return "Kerfleaf itself went wrong here, not the workbook: %s%s. The workbook is unharmed."
                .formatted(what, where);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "");
    }

    /** The version the jar was built as. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String built = Kerfleaf.class.getPackage().getImplementationVersion();
            return new String[] {"kerfleaf " + (built == null ? "(not packed)" : built)};
        }
    }
}
