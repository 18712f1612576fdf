package org.kerfleaf.kernel;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.Sketch;

/**
 * What a run gave.
 *
 * @param cells what became of each cell, in document order
 * @param sketch what the cells that stand declare, also where others failed: ask {@link #stands()} before planning it.
 *     Empty if there are too many pieces, or no run came to its end
 * @param problems what does not make sense in the sketch, or is probably not meant
 * @param liveValues what became of each live value, by its ordinal
 * @param printed what the cells printed, within the limit
 * @param withheld what the workbook reaches for and has not been allowed, for which reason nothing of it ran
 */
public record KernelOutcome(
        List<CellOutcome> cells,
        Optional<Sketch> sketch,
        List<Problem> problems,
        Map<Integer, LiveOutcome> liveValues,
        String printed,
        Optional<Reached> withheld) {
    public KernelOutcome {
        cells = List.copyOf(cells);
        problems = List.copyOf(problems);
        liveValues = Collections.unmodifiableMap(new TreeMap<>(liveValues));
    }

    /** Whether every cell ran and there is a sketch. Problems and live values do not matter for this. */
    public boolean stands() {
        return sketch.isPresent() && cells.stream().allMatch(CellOutcome.Stands.class::isInstance);
    }
}
