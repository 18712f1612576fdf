package org.kerfleaf.export.command;

import java.nio.file.Path;
import org.kerfleaf.export.command.Planned.Made;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "booklet",
        header = "Keep the build booklet, to be printed and taken to the bench.",
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:if the booklet is kept", "2:if the workbook does not run or the file cannot be kept"})
final class BookletWord extends Word {
    @Option(
            names = "--out",
            paramLabel = "WHERE",
            description = "A file or a folder. Without it, NAME-booklet.pdf in this folder.")
    private String out;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "What it is printed on. Without it, letter for inches and a4 for millimetres.")
    private String paper;

    BookletWord(Bench bench) {
        super(bench);
    }

    @Override
    void checkArguments() {
        PaperSaid.check(paper);
    }

    @Override
    int with(Made made) {
        Path file = arguments().file(bench());
        Kept.keep(
                bench(),
                file,
                out,
                WorkbookFile.name(file) + "-booklet.pdf",
                to -> bench().booklets()
                        .write(
                                made.plan(),
                                made.prose(),
                                PaperSaid.of(paper, made.plan().style().unit()),
                                to));
        return ExitStatus.FINE;
    }
}
