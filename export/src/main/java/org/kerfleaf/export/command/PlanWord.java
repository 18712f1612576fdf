package org.kerfleaf.export.command;

import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.planform.PlanForm;
import org.kerfleaf.export.terminal.TerminalText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
        name = "plan",
        header = "Show the plan here: cut list, layouts, settings, hardware, cost, checks, steps.",
        exitCodeListHeading = "%nIt ends with%n",
        exitCodeList = {"0:if there is a plan", "2:if the workbook does not run"})
final class PlanWord extends Word {
    @Option(names = "--json", description = "Show it in a form for other programs, lengths in millimetres.")
    private boolean json;

    @Option(names = "--reasons", description = "Say of every figure why it is what it is.")
    private boolean reasons;

    PlanWord(Bench bench) {
        super(bench);
    }

    @Override
    int with(Made made) {
        String text = json
                ? PlanForm.json(made.plan(), made.changes(), reasons)
                : TerminalText.of(made.plan(), made.changes(), bench().columns(), reasons);
        bench().out().print(text);
        return ExitStatus.FINE;
    }
}
