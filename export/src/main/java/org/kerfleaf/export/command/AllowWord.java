package org.kerfleaf.export.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.kerfleaf.kernel.reach.Reached;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "allow",
        header = "Show what a workbook reaches for beyond the words, and let it.",
        description = {
            "Cells that only use the words run without being asked. Cells that reach for files, the network, other programs or the "
                    + "like wait until you have read them and said this. It holds for what the cells say: change one, other than "
                    + "a size's value, and it is asked again."
        },
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:if it is allowed, or nothing needs to be", "2:if it cannot be read or kept"})
final class AllowWord implements Callable<Integer> {
    private final Bench bench;

    @Parameters(index = "0", paramLabel = "FILE", description = "The workbook, for example shelf.md.")
    private String file;

    @Option(names = "--forget", description = "Take back what was allowed.")
    private boolean forget;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show what this word does.")
    private boolean help;

    AllowWord(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        Path path = WorkbookFile.find(bench.folder(), file);
        Reached reached = bench.reach().reached(path);
        if (forget) {
            boolean was = bench.allowances().forget(reached.content(), path);
            bench.out()
                    .println(
                            was
                                    ? "Forgotten: %s is not allowed any more.".formatted(file)
                                    : "%s was not allowed, so there is nothing to forget.".formatted(file));
        } else if (reached.isNothing()) {
            bench.out()
                    .println("%s reaches for nothing beyond the words. It runs without being allowed.".formatted(file));
        } else {
            bench.out().println(ReachText.of(file, reached));
            bench.allowances().allow(reached.content(), path);
            bench.out()
                    .println("Allowed, as long as its cells say this. To take it back: kerfleaf allow %s --forget"
                            .formatted(ReachText.typed(file)));
        }
        return ExitStatus.FINE;
    }
}
