package org.kerfleaf.export.command;

import java.util.List;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.workbook.Prose;

/** What came of running and planning a workbook. */
sealed interface Planned {
    /**
     * A plan.
     *
     * @param notes what reads like a slip of the pen, and live values of the prose that have none; the plan stands
     */
    record Made(Plan plan, Prose prose, List<Fault> notes) implements Planned {
        public Made {
            notes = List.copyOf(notes);
        }
    }

    /** No plan: the workbook does not run, for these reasons, at least one. */
    record Wrong(List<Fault> faults) implements Planned {
        public Wrong {
            faults = List.copyOf(faults);
        }
    }
}
