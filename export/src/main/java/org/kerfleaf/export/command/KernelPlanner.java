package org.kerfleaf.export.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.kernel.CellOutcome;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelException;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.kernel.LiveOutcome;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CellCompiler;
import org.kerfleaf.kernel.compile.CompiledCache;
import org.kerfleaf.kernel.compile.ReachScan;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.plan.Answers;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Changes;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.plan.Substitutes;
import org.kerfleaf.sketch.Size;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Prose;
import org.kerfleaf.workbook.Workbook;
import org.kerfleaf.workbook.WorkbookFileException;

/** Reads the file, runs its cells in a process of their own, and plans what they declare. */
final class KernelPlanner implements WorkbookPlanner, ReachReader {
    /** What stands in prose for a live value that failed. */
    private static final String NO_VALUE = "not known";

    /** How the kernel begins what it says of a piece that needs a name without a value. */
    private static final String WAITS = "Waits for ";

    private static final Fault NOT_AS_WRITTEN =
            new Fault(0, 0, "", "As written the workbook does not run, so what the sizes tried change cannot be told.");

    private final Allowances allowances;

    /** @param allowances asked before a workbook runs that reaches for more than the words */
    KernelPlanner(Allowances allowances) {
        this.allowances = allowances;
    }

    @Override
    public Reached reached(Path file) {
        WorkbookSource source = WorkbookSource.of(withCells(file));
        try (CellCompiler compiler = new CellCompiler()) {
            return ReachScan.of(compiler.compile(source));
        }
    }

    private static Workbook withCells(Path file) {
        Workbook workbook = read(file);
        if (workbook.cells().isEmpty()) {
            throw new Refused(
                    "“%s” has no cells, so there is nothing to plan. A cell is a fence that begins with ```java."
                            .formatted(file.getFileName()));
        }
        return workbook;
    }

    @Override
    public Planned plan(Path file, Wishes wishes) {
        try (Kernel kernel =
                Kernel.start(wishes.limits(), reached -> allowances.has(reached.content()), CompiledCache.ofUser())) {
            // Read while the process for its cells starts.
            Workbook workbook = withCells(file);
            WorkbookSource source = WorkbookSource.of(workbook);
            KernelOutcome outcome = kernel.run(source, wishes.sizes());
            if (outcome.withheld().isPresent()) {
                return new Planned.Withheld(outcome.withheld().get());
            }
            if (!outcome.stands()) {
                return new Planned.Wrong(faults(outcome));
            }
            refuseUnknownSizes(outcome.sketch().orElseThrow(), wishes.sizes());
            Plan plan = Substitutes.compared(
                    plan(outcome, wishes),
                    outcome.sketch().orElseThrow(),
                    other -> with(other, kernel, source, wishes));
            List<Fault> notes = notes(workbook, outcome);
            Optional<List<Change>> changes = Optional.empty();
            if (!wishes.sizes().isEmpty()) {
                // The kernel has it compiled: this costs a run and a plan.
                KernelOutcome asWritten = kernel.run(source, Map.of());
                changes = Optional.of(asWritten)
                        .filter(KernelOutcome::stands)
                        .map(written -> Changes.between(plan(written, wishes), plan));
                if (changes.isEmpty()) {
                    notes.add(NOT_AS_WRITTEN);
                }
            }
            return new Planned.Made(plan, prose(workbook, outcome, plan), changes, notes);
        } catch (KernelException cannotRun) {
            throw new Refused(cannotRun.getMessage());
        }
    }

    /** With other values of some sizes; empty if it does not run with them. */
    private static Optional<Plan> with(Map<String, String> other, Kernel kernel, WorkbookSource source, Wishes wishes) {
        Map<String, String> sizes = new HashMap<>(wishes.sizes());
        sizes.putAll(other);
        return Optional.of(kernel.run(source, sizes))
                .filter(KernelOutcome::stands)
                .map(outcome -> plan(outcome, wishes));
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

    /** What waits for something else is told only if nothing else is wrong: the other place tells it already. */
    private static List<Fault> faults(KernelOutcome outcome) {
        List<CellProblem> all = outcome.cells().stream()
                .flatMap(cell -> cell.problems().stream().map(problem -> withOption(cell, problem)))
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

    /** Where a limit stopped a cell, it is also said how to give more. */
    private static CellProblem withOption(CellOutcome cell, CellProblem problem) {
        if (!(cell instanceof CellOutcome.Stopped stopped)) {
            return problem;
        }
        String words = problem.words()
                + switch (stopped.reason()) {
                    case TIME -> " More can be given, as in --time-limit \"60 s\".";
                    case MEMORY -> " More can be given, as in --memory-limit \"512 MB\".";
                    default -> "";
                };
        return new CellProblem(problem.cell(), problem.line(), problem.column(), problem.text(), words);
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

    private static Plan plan(KernelOutcome outcome, Wishes wishes) {
        Sketch sketch = outcome.sketch().orElseThrow();
        return wishes.unit()
                .map(unit -> Planner.plan(sketch, wishes.day(), unit))
                .orElseGet(() -> Planner.plan(sketch, wishes.day()))
                .withProblems(outcome.problems());
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
