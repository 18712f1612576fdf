package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CompiledUnit;
import org.kerfleaf.kernel.compile.CompiledWorkbook;
import org.kerfleaf.kernel.compile.Refusal;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Unit;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.Size;
import org.kerfleaf.sketch.Sketch;

/** Collects what was compiled and what the child reported into an outcome. */
final class Outcomes {
    private static final Comparator<CellProblem> BY_PLACE =
            Comparator.comparingInt(CellProblem::line).thenComparingInt(CellProblem::column);

    private final WorkbookSource source;
    private final CompiledWorkbook compiled;
    private final RunLog log;
    private final Map<Integer, RunLog.Ending> stops;
    private final KernelLimits limits;
    private final List<Finding> findings = new ArrayList<>();

    /** One thing wrong. */
    private record Finding(
            Kind kind, int live, Optional<String> name, Optional<StopReason> reason, CellProblem problem) {
        /** From worst to mildest. */
        enum Kind {
            STOPPED,
            REJECTED,
            THREW,
            WAITS
        }
    }

    Outcomes(
            WorkbookSource source,
            CompiledWorkbook compiled,
            RunLog log,
            Map<Integer, RunLog.Ending> stops,
            KernelLimits limits) {
        this.source = source;
        this.compiled = compiled;
        this.log = log;
        this.stops = stops;
        this.limits = limits;
    }

    KernelOutcome collect(Map<String, String> sizes) {
        compiled.refusals().forEach(this::refused);
        compiled.units().forEach(this::look);
        List<CellOutcome> cells = source.cells().stream().map(this::outcome).toList();
        Optional<Sketch> sketch = log.gathered().flatMap(Report.Gathered::sketch);
        List<Problem> problems = new ArrayList<>();
        log.gathered().ifPresent(gathered -> problems.addAll(gathered.problems()));
        compiled.notes().stream().map(this::note).forEach(problems::add);
        boolean all = cells.stream().allMatch(CellOutcome.Stands.class::isInstance);
        sketch.filter(whole -> all).ifPresent(whole -> problems.addAll(unknownSizes(whole, sizes)));
        return new KernelOutcome(cells, sketch, problems, liveValues(), log.printed(), Optional.empty());
    }

    private void refused(Refusal refusal) {
        Finding.Kind kind = refusal.waitsFor().isPresent() ? Finding.Kind.WAITS : Finding.Kind.REJECTED;
        findings.add(new Finding(kind, refusal.live(), refusal.waitsFor(), Optional.empty(), refusal.problem()));
    }

    private void look(CompiledUnit one) {
        Unit unit = one.unit();
        int index = unit.index();
        if (stops.containsKey(index)) {
            RunLog.Ending ending = stops.get(index);
            stopped(one, ending.reason(), StopWords.of(ending, limits));
        } else if (log.threw().containsKey(index)) {
            CellProblem problem = ThrownWords.problem(compiled, one, log.threw().get(index));
            findings.add(new Finding(Finding.Kind.THREW, one.live(), Optional.empty(), Optional.empty(), problem));
        } else if (log.skipped().containsKey(index)) {
            CompiledUnit needs = root(index);
            CellProblem problem = direct(one)
                    .map(CompiledUnit::called)
                    .map(name -> one.problemAtName(name, waits(needs)))
                    .orElseGet(() -> one.problem(waits(needs)));
            findings.add(new Finding(
                    Finding.Kind.WAITS, one.live(), Optional.of(needs.called()), Optional.empty(), problem));
        } else if (!log.isDone() && !log.began(index) && (unit.invoked() || one.live() >= 0)) {
            stopped(
                    one,
                    StopReason.NOT_REACHED,
                    "Not run: other cells stopped the run %d times.".formatted(stops.size()));
        }
    }

    private static String waits(CompiledUnit needs) {
        return "Waits for “%s”, line %d.".formatted(needs.called(), needs.unit().line());
    }

    /** The unit at whose failing a skipped one and all between wait. */
    private CompiledUnit root(int skipped) {
        int at = skipped;
        while (log.skipped().containsKey(at)) {
            at = log.skipped().get(at);
        }
        return compiled.units().get(at);
    }

    /** The failed unit that a skipped one speaks of itself. */
    private Optional<CompiledUnit> direct(CompiledUnit one) {
        return one.unit().needs().stream()
                .filter(index ->
                        log.skipped().containsKey(index) || log.threw().containsKey(index) || stops.containsKey(index))
                .map(compiled.units()::get)
                .filter(failed -> one.mentions(failed.called()))
                .findFirst();
    }

    private void stopped(CompiledUnit one, StopReason reason, String words) {
        findings.add(new Finding(
                Finding.Kind.STOPPED, one.live(), Optional.empty(), Optional.of(reason), one.problem(words)));
    }

    private CellOutcome outcome(CellSource cell) {
        List<Finding> own = findings.stream()
                .filter(finding -> finding.live() < 0 && finding.problem().cell() == cell.ordinal())
                .sorted(Comparator.comparing(Finding::kind).thenComparing(Finding::problem, BY_PLACE))
                .toList();
        if (own.isEmpty()) {
            return new CellOutcome.Stands(cell.ordinal());
        }
        Finding worst = own.get(0);
        List<CellProblem> problems =
                own.stream().map(Finding::problem).sorted(BY_PLACE).toList();
        return switch (worst.kind()) {
            case STOPPED ->
                new CellOutcome.Stopped(cell.ordinal(), worst.reason().orElseThrow(), problems);
            case REJECTED -> new CellOutcome.Rejected(cell.ordinal(), problems);
            case THREW -> new CellOutcome.Threw(cell.ordinal(), problems);
            case WAITS -> new CellOutcome.Waits(cell.ordinal(), worst.name().orElseThrow(), problems);
        };
    }

    private Map<Integer, LiveOutcome> liveValues() {
        Map<Integer, LiveOutcome> values = new TreeMap<>();
        for (CompiledUnit one : compiled.units()) {
            if (log.said().containsKey(one.unit().index())) {
                values.put(
                        one.live(),
                        new LiveOutcome.Value(log.said().get(one.unit().index())));
            }
        }
        findings.stream()
                .filter(finding -> finding.live() >= 0)
                .forEach(finding -> values.put(finding.live(), new LiveOutcome.Failed(finding.problem())));
        return values;
    }

    private Problem note(CellProblem note) {
        int step = note.cell() < 0 ? 0 : source.cells().get(note.cell()).step();
        return new Problem(new Origin(note.cell(), 0, note.line(), step), note.words());
    }

    private static List<Problem> unknownSizes(Sketch sketch, Map<String, String> sizes) {
        List<String> known = sketch.all(Size.class).stream().map(Size::label).toList();
        return new TreeMap<>(sizes)
                .keySet().stream()
                        .filter(label -> !known.contains(label))
                        .map(label -> "No size is called “%s”. The sizes are: %s."
                                .formatted(label, known.isEmpty() ? "none" : String.join(", ", known)))
                        .map(words -> new Problem(Origin.NOWHERE, words))
                        .toList();
    }
}
