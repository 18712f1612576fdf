package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.Passage;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.compile.Refusal;
import org.kerfleaf.kernel.reach.Reaching;

/** The outcome of a workbook that reaches for more than the words and has not been allowed to: nothing of it ran. */
final class Withheld {
    private final Prepared book;
    private final String words;

    private Withheld(Prepared book) {
        this.book = book;
        this.words = "Not run: this workbook reaches for more than the words (%s), and that is not allowed yet."
                .formatted(book.reached().inWords());
    }

    static KernelOutcome outcome(Prepared book) {
        Withheld withheld = new Withheld(book);
        List<CellOutcome> cells =
                book.source().cells().stream().map(withheld::cell).toList();
        return new KernelOutcome(
                cells, Optional.empty(), List.of(), withheld.liveValues(), "", Optional.of(book.reached()));
    }

    private CellOutcome cell(CellSource cell) {
        List<CellProblem> wrong = book.compiled().refusals().stream()
                .filter(refusal -> refusal.live() < 0)
                .map(Refusal::problem)
                .filter(problem -> problem.cell() == cell.ordinal())
                .toList();
        List<CellProblem> reaching = book.reached().all().stream()
                .map(Reaching::place)
                .filter(place -> place.cell() == cell.ordinal())
                .toList();
        if (!wrong.isEmpty()) {
            List<CellProblem> both = new ArrayList<>(wrong);
            both.addAll(reaching);
            return new CellOutcome.Rejected(cell.ordinal(), both);
        }
        return new CellOutcome.Stopped(
                cell.ordinal(),
                StopReason.NOT_ALLOWED,
                reaching.isEmpty() ? List.of(Passage.of(cell).problem(0, words)) : reaching);
    }

    private Map<Integer, LiveOutcome> liveValues() {
        Map<Integer, LiveOutcome> values = new TreeMap<>();
        for (ProseSource live : book.source().liveValues()) {
            values.put(live.ordinal(), new LiveOutcome.Failed(Passage.of(live).problem(0, words)));
        }
        return values;
    }
}
