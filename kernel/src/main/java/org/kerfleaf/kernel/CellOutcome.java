package org.kerfleaf.kernel;

import java.util.List;
import org.kerfleaf.kernel.cell.CellProblem;

/**
 * What became of one cell. Each of its top-level pieces stands or falls by itself; a cell is called by the worst of them,
 * in the order stopped, rejected, threw, waits, and lists the problems of all.
 */
public sealed interface CellOutcome {
    /** The cell's ordinal. */
    int cell();

    /** What is wrong, by line; empty where the cell stands. One problem for each piece that has one. */
    List<CellProblem> problems();

    /** All of it ran. */
    record Stands(int cell) implements CellOutcome {
        @Override
        public List<CellProblem> problems() {
            return List.of();
        }
    }

    /** Some of it is not Java, or breaks a rule of the workbook; that piece did not run and its names are not there. */
    record Rejected(int cell, List<CellProblem> problems) implements CellOutcome {
        public Rejected {
            problems = List.copyOf(problems);
        }
    }

    /** Some of it ran and failed. */
    record Threw(int cell, List<CellProblem> problems) implements CellOutcome {
        public Threw {
            problems = List.copyOf(problems);
        }
    }

    /** Nothing is wrong with it, but it needs a name that has no value, because that one's cell failed. */
    record Waits(int cell, String name, List<CellProblem> problems) implements CellOutcome {
        public Waits {
            problems = List.copyOf(problems);
        }
    }

    /** The process ended while it ran, or before it could. */
    record Stopped(int cell, StopReason reason, List<CellProblem> problems) implements CellOutcome {
        public Stopped {
            problems = List.copyOf(problems);
        }
    }
}
