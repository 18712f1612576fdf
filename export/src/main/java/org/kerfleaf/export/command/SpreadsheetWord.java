package org.kerfleaf.export.command;

import java.nio.file.Path;
import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.spreadsheet.Spreadsheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "spreadsheet",
        header = "Keep the plan as a spreadsheet, with prices that may be changed and totals that follow.",
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:if the spreadsheet is kept", "2:if the workbook does not run or the file cannot be kept"})
final class SpreadsheetWord extends Word {
    @Option(
            names = "--out",
            paramLabel = "WHERE",
            description = "A file or a folder. Without it, NAME.xlsx in this folder.")
    private String out;

    SpreadsheetWord(Bench bench) {
        super(bench);
    }

    @Override
    int with(Made made) {
        Path file = arguments().file(bench());
        Kept.keep(bench(), file, out, WorkbookFile.name(file) + ".xlsx", to -> Spreadsheet.write(made.plan(), to));
        return ExitStatus.FINE;
    }
}
