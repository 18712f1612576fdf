package org.kerfleaf.export.command;

import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.terminal.TerminalText;
import org.kerfleaf.rules.Check.Verdict;
import picocli.CommandLine.Command;

@Command(
        name = "check",
        header = "Show the checks, what falls short first.",
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {
            "0:if no check falls short",
            "1:if a check falls short, or the plan does not make sense yet",
            "2:if the workbook does not run"
        })
final class CheckWord extends Word {
    CheckWord(Bench bench) {
        super(bench);
    }

    @Override
    int with(Made made) {
        bench().out().print(TerminalText.checks(made.plan(), bench().columns()));
        boolean isShort = made.plan().checks().stream().anyMatch(check -> check.verdict() == Verdict.SHORT);
        return isShort || !made.plan().problems().isEmpty() ? ExitStatus.FALLS_SHORT : ExitStatus.FINE;
    }
}
