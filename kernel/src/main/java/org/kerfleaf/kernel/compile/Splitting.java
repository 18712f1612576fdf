package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.SourceCodeAnalysis;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.Passage;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;

/** Splits a workbook into its pieces. A cell whose text was there the last time is not read again. */
final class Splitting {
    private final SourceCodeAnalysis analysis;
    private Map<String, List<Piece>> known = Map.of();

    Splitting(SourceCodeAnalysis analysis) {
        this.analysis = analysis;
    }

    /** All pieces in document order, live values last. */
    List<Piece> split(WorkbookSource source) {
        List<Piece> pieces = new ArrayList<>();
        Map<String, List<Piece>> read = new HashMap<>();
        for (CellSource cell : source.cells()) {
            Passage passage = Passage.of(cell);
            List<Piece> own = read.computeIfAbsent(
                    cell.text(), text -> known.containsKey(text) ? known.get(text) : read(passage));
            own.forEach(piece -> pieces.add(piece.in(passage, cell.step())));
        }
        known = read;
        for (ProseSource live : source.liveValues()) {
            pieces.add(Piece.ofLive(Passage.of(live), live.ordinal()));
        }
        return pieces;
    }

    private List<Piece> read(Passage passage) {
        int open = Masked.openComment(passage.text());
        if (open < 0) {
            return Piece.of(analysis, passage);
        }
        // JShell takes such a comment for the end of the cell, and a maker's lines would be gone without a word.
        String good = passage.text().substring(0, open);
        List<Piece> pieces = new ArrayList<>(Piece.of(analysis, new Passage(passage.cell(), good, passage.line())));
        pieces.add(new Piece(passage, 0, -1, open, passage.text().substring(open), List.of()));
        return pieces;
    }
}
