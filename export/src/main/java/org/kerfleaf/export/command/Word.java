package org.kerfleaf.export.command;

import java.util.concurrent.Callable;
import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.command.Planned.Withheld;
import org.kerfleaf.export.command.Planned.Wrong;
import picocli.CommandLine.Mixin;

/** A word of the command: runs the workbook, then does something with its plan. */
abstract class Word implements Callable<Integer> {
    private final Bench bench;

    @Mixin
    private WorkbookArguments arguments = new WorkbookArguments();

    Word(Bench bench) {
        this.bench = bench;
    }

    Bench bench() {
        return bench;
    }

    WorkbookArguments arguments() {
        return arguments;
    }

    @Override
    public Integer call() {
        checkArguments();
        Planned planned = bench.planner().plan(arguments.file(bench), arguments.wishes(bench));
        if (planned instanceof Wrong wrong) {
            wrong.faults().forEach(this::tell);
            return ExitStatus.DOES_NOT_RUN;
        }
        if (planned instanceof Withheld withheld) {
            throw new Refused(ReachText.notAllowed(arguments.fileName(), withheld.reached()));
        }
        Made made = (Made) planned;
        made.notes().forEach(this::tell);
        return with(made);
    }

    private void tell(Fault fault) {
        bench.err().println(fault.in(arguments.fileName()));
    }

    /** Refuses what can be refused before the workbook runs. */
    void checkArguments() {}

    /** Does what the word says. @return the exit status */
    abstract int with(Made made);
}
