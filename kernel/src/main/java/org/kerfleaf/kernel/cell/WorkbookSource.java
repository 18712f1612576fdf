package org.kerfleaf.kernel.cell;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Workbook;

/**
 * Everything of a workbook that the kernel needs to run it.
 *
 * @param title the workbook's title
 * @param steps its build steps, in document order
 * @param cells its cells, in document order, ordinals 0, 1, 2 ...
 * @param liveValues its live values, in document order, ordinals 0, 1, 2 ...
 */
public record WorkbookSource(
        String title, List<Sketch.Step> steps, List<CellSource> cells, List<ProseSource> liveValues) {
    /** @throws IllegalArgumentException if ordinals do not count 0, 1, 2 ... */
    public WorkbookSource {
        steps = List.copyOf(steps);
        cells = List.copyOf(cells);
        liveValues = List.copyOf(liveValues);
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).ordinal() != i) {
                throw new IllegalArgumentException(
                        "Cell %d has ordinal %d.".formatted(i, cells.get(i).ordinal()));
            }
        }
        for (int i = 0; i < liveValues.size(); i++) {
            if (liveValues.get(i).ordinal() != i) {
                throw new IllegalArgumentException("Live value %d has ordinal %d."
                        .formatted(i, liveValues.get(i).ordinal()));
            }
        }
    }

    /** What the kernel needs of a workbook file. */
    public static WorkbookSource of(Workbook workbook) {
        return new WorkbookSource(
                workbook.title(),
                workbook.steps(),
                workbook.cells().stream()
                        .map(cell -> new CellSource(cell.ordinal(), cell.text(), cell.line(), cell.step()))
                        .toList(),
                workbook.liveValues().stream()
                        .map(live -> new ProseSource(live.ordinal(), live.expression(), live.line()))
                        .toList());
    }

    /** The same with a live value as one more cell below all others, where it sees what it sees in prose. */
    public WorkbookSource withLastCell(int live) {
        ProseSource prose = liveValues.get(live);
        List<CellSource> more = new ArrayList<>(cells);
        more.add(new CellSource(cells.size(), prose.expression(), prose.line(), 0));
        return new WorkbookSource(title, steps, more, liveValues);
    }

    /** Whether both have the same text in the same places, so that what was compiled for one serves the other. */
    public boolean sameText(WorkbookSource other) {
        return cells.equals(other.cells) && liveValues.equals(other.liveValues);
    }
}
