package org.kerfleaf.export.command;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in our words what does not fit in a command line. */
final class Complaints {
    private Complaints() {}

    static String about(ParameterException wrong) {
        CommandLine line = wrong.getCommandLine();
        boolean word = line.getParent() != null;
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return notKnown(line, unmatched.getUnmatched().get(0), word);
        }
        if (wrong instanceof MissingParameterException missing) {
            return missing(line, missing.getMissing());
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            return "%s is given twice. Once is right.".formatted(name(twice.getOverwritten()));
        }
        return word ? wrong.getMessage() : "A word and a workbook belong behind kerfleaf. %s".formatted(words(line));
    }

    private static String notKnown(CommandLine line, String given, boolean word) {
        if (!word) {
            return "“%s” is not a word kerfleaf knows. %s".formatted(given, words(line));
        }
        if (given.startsWith("-")) {
            return "“%s” cannot be asked of %s. It can be asked %s."
                    .formatted(given, line.getCommandName(), options(line));
        }
        return "“%s” is one thing too many: %s takes one workbook. A name with blanks in it belongs in quotes."
                .formatted(given, line.getCommandName());
    }

    private static String words(CommandLine line) {
        return "It knows %s; for example: kerfleaf plan shelf.md"
                .formatted(String.join(", ", line.getSubcommands().keySet()));
    }

    private static String options(CommandLine line) {
        return line.getCommandSpec().options().stream()
                .map(OptionSpec::longestName)
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private static String missing(CommandLine line, List<ArgSpec> missing) {
        ArgSpec first = missing.get(0);
        if (first.isOption()) {
            return "%s needs a value: %s".formatted(name(first), first.paramLabel());
        }
        return "%s needs a workbook; for example: kerfleaf %s shelf.md"
                .formatted(line.getCommandName(), line.getCommandName());
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
