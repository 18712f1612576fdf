package org.kerfleaf.kernel.compile;

import java.util.List;
import org.kerfleaf.kernel.cell.Passage;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.wire.ClassCode;
import org.kerfleaf.kernel.wire.Unit;

/** A compiled workbook without its places in the file: prose may have moved its cells up or down since. */
record CacheEntry(List<ClassCode> classes, List<Kept> units) {
    /**
     * One unit.
     *
     * @param live the ordinal of the live value it is, -1 in a cell
     * @param offset where its piece begins in the cell or expression
     * @param text its piece
     * @param names what that declares
     * @param offsets its line table
     */
    record Kept(Unit unit, int live, int offset, String text, List<Declared> names, int[] offsets) {}

    static CacheEntry of(CompiledWorkbook compiled) {
        return new CacheEntry(
                compiled.classes(),
                compiled.units().stream().map(CompiledUnit::kept).toList());
    }

    /** The workbook, in the places of a source of the same text. */
    CompiledWorkbook at(WorkbookSource source) {
        List<CompiledUnit> placed =
                units.stream().map(kept -> placed(kept, source)).toList();
        return new CompiledWorkbook(classes, placed, List.of(), List.of());
    }

    private static CompiledUnit placed(Kept kept, WorkbookSource source) {
        Unit unit = kept.unit();
        Passage passage = kept.live() < 0
                ? Passage.of(source.cells().get(unit.cell()))
                : Passage.of(source.liveValues().get(kept.live()));
        Piece piece = new Piece(passage, unit.step(), kept.live(), kept.offset(), kept.text(), kept.names());
        Unit placed = new Unit(
                unit.index(),
                unit.className(),
                unit.home(),
                unit.invoked(),
                unit.value(),
                unit.field(),
                unit.cell(),
                piece.line(),
                unit.step(),
                unit.needs());
        return new CompiledUnit(placed, piece, kept.offsets());
    }
}
