package org.kerfleaf.export.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.kerfleaf.kernel.compile.Nearest;
import org.kerfleaf.words.WordIndex;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "words",
        header = "Show the words a cell can say: all of them, a group, or one in full.",
        synopsisHeading = "%n",
        customSynopsis = "kerfleaf words    or: kerfleaf words shapes, kerfleaf words rabbet",
        optionListHeading = "%nIt can be asked%n",
        parameterListHeading = "%nIt takes%n",
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:if there are such words", "2:if there are none"})
final class WordsWord implements Callable<Integer> {
    private final Bench bench;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this.")
    private boolean help;

    @Parameters(
            paramLabel = "WORD-OR-GROUP",
            arity = "0..*",
            description = "One word, or the name of a group of words.")
    private List<String> asked = new ArrayList<>();

    WordsWord(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        String name = String.join(" ", asked).strip();
        bench.out().print(name.isEmpty() ? Vocabulary.all(bench.columns()) : about(name));
        return ExitStatus.FINE;
    }

    private String about(String name) {
        String bare = name.replaceFirst("^\\.", "").replaceFirst("\\(.*", "");
        return group(name)
                .map(group -> Vocabulary.group(group, bench.columns()))
                .or(() -> Vocabulary.word(bare, bench.columns()))
                .orElseThrow(() -> new Refused(notKnown(bare)));
    }

    private static Optional<String> group(String name) {
        return WordIndex.GROUPS.stream()
                .filter(one -> one.equalsIgnoreCase(name))
                .findFirst();
    }

    private static String notKnown(String name) {
        List<String> known = Stream.concat(WordIndex.GROUPS.stream(), Vocabulary.names().stream())
                .toList();
        String near =
                Nearest.to(name, known).map("Did you mean “%s”? "::formatted).orElse("");
        return "“%s” is neither a word of a cell nor a group of words. %sThe groups are %s."
                .formatted(name, near, String.join(", ", WordIndex.GROUPS));
    }
}
