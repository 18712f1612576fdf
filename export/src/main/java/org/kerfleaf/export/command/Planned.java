package org.kerfleaf.export.command;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.workbook.Prose;

/** What came of running and planning a workbook. */
sealed interface Planned {
    /**
     * A plan.
     *
     * @param changes what is otherwise than in the workbook as written; empty if no size is tried, or nothing can be told
     * @param notes what reads like a slip of the pen, and live values of the prose that have none; the plan stands
     */
    record Made(Plan plan, Prose prose, Optional<List<Change>> changes, List<Fault> notes) implements Planned {
        public Made {
            notes = List.copyOf(notes);
        }
    }

    /** No plan: the workbook reaches for more than the words, and its owner has not allowed it; nothing of it ran. */
    record Withheld(Reached reached) implements Planned {}

    /** No plan: the workbook does not run, for these reasons, at least one. */
    record Wrong(List<Fault> faults) implements Planned {
        public Wrong {
            faults = List.copyOf(faults);
        }
    }
}
