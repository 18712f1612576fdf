package org.kerfleaf.export.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelException;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.kernel.LiveOutcome;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.plan.Answers;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.sketch.Size;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Prose;
import org.kerfleaf.workbook.Workbook;
import org.kerfleaf.workbook.WorkbookFileException;

/** Reads the file, runs its cells in a process of their own, and plans what they declare. */
final class KernelPlanner implements WorkbookPlanner {
    /** What stands in prose for a live value that failed. */
    private static final String NO_VALUE = "not known";

    /** How the kernel begins what it says of a piece that needs a name without a value. */
    private static final String WAITS = "Waits for ";

    @Override
    public Planned plan(Path file, Wishes wishes) {
        Workbook workbook = read(file);
        if (workbook.cells().isEmpty()) {
            throw new Refused(
                    "“%s” has no cells, so there is nothing to plan. A cell is a fence that begins with ```java."
                            .formatted(file.getFileName()));
        }
        KernelOutcome outcome = run(workbook, wishes.sizes());
        if (!outcome.stands()) {
            return new Planned.Wrong(faults(outcome));
        }
        Sketch sketch = outcome.sketch().orElseThrow();
        refuseUnknownSizes(sketch, wishes.sizes());
        Plan plan = plan(sketch, wishes).withProblems(outcome.problems());
        return new Planned.Made(plan, prose(workbook, outcome, plan), notes(workbook, outcome));
    }

    private static Workbook read(Path file) {
        try {
            return Workbook.read(Files.readAllBytes(file));
        } catch (WorkbookFileException noWorkbook) {
            throw new Refused("“%s” is no workbook. %s".formatted(file.getFileName(), noWorkbook.getMessage()));
        } catch (IOException unreadable) {
            throw new Refused("“%s” cannot be read: %s.".formatted(file.getFileName(), unreadable.getMessage()));
        }
    }

    private static KernelOutcome run(Workbook workbook, Map<String, String> sizes) {
        try (Kernel kernel = Kernel.start(KernelLimits.DEFAULT)) {
            return kernel.run(WorkbookSource.of(workbook), sizes);
        } catch (KernelException cannotRun) {
            throw new Refused(cannotRun.getMessage());
        }
    }

    /** What waits for something else is told only if nothing else is wrong: the other place tells it already. */
    private static List<Fault> faults(KernelOutcome outcome) {
        List<CellProblem> all = outcome.cells().stream()
                .flatMap(cell -> cell.problems().stream())
                .toList();
        List<CellProblem> causes = all.stream()
                .filter(problem -> !problem.words().startsWith(WAITS))
                .toList();
        List<Fault> faults = (causes.isEmpty() ? all : causes)
                .stream().map(KernelPlanner::fault).collect(Collectors.toCollection(ArrayList::new));
        outcome.problems().stream()
                .map(problem -> new Fault(problem.origin().line(), 0, "", problem.words()))
                .forEach(faults::add);
        return faults;
    }

    private static Fault fault(CellProblem problem) {
        return new Fault(problem.line(), problem.column(), problem.text(), problem.words());
    }

    private static void refuseUnknownSizes(Sketch sketch, Map<String, String> tried) {
        List<String> labels = sketch.all(Size.class).stream().map(Size::label).toList();
        for (String label : tried.keySet()) {
            if (!labels.contains(label)) {
                String known = labels.isEmpty()
                        ? "It has none."
                        : "Its sizes are %s."
                                .formatted(
                                        labels.stream().map("“%s”"::formatted).collect(Collectors.joining(", ")));
                throw new Refused("--size: the workbook has no size “%s”. %s".formatted(label, known));
            }
        }
    }

    private static Plan plan(Sketch sketch, Wishes wishes) {
        return wishes.unit()
                .map(unit -> Planner.plan(sketch, wishes.day(), unit))
                .orElseGet(() -> Planner.plan(sketch, wishes.day()));
    }

    private static Prose prose(Workbook workbook, KernelOutcome outcome, Plan plan) {
        return workbook.tell(ordinal -> outcome.liveValues().get(ordinal) instanceof LiveOutcome.Value known
                ? Answers.words(plan, known.live())
                : NO_VALUE);
    }

    private static List<Fault> notes(Workbook workbook, KernelOutcome outcome) {
        List<Fault> notes = workbook.slips().stream()
                .map(slip -> new Fault(slip.line(), slip.column(), "", slip.words()))
                .collect(Collectors.toCollection(ArrayList::new));
        for (LiveOutcome live : outcome.liveValues().values()) {
            if (live instanceof LiveOutcome.Failed failed) {
                notes.add(new Fault(
                        failed.problem().line(), 0, "", failed.problem().words()));
            }
        }
        return notes;
    }
}
