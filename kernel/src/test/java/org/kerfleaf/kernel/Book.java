package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.sketch.Sketch;

/** Builds sources as they would come out of a file in which every cell stands between fences. */
final class Book {
    private final List<CellSource> cells = new ArrayList<>();
    private final List<ProseSource> live = new ArrayList<>();
    private int line = 1;

    /** A workbook of these cells: the first begins in line 2, between two cells are two lines of fences. */
    static Book of(String... texts) {
        Book book = new Book();
        for (String text : texts) {
            book.cells.add(new CellSource(book.cells.size(), text, book.line + 1, 0));
            book.line += (int) text.lines().count() + 2;
        }
        return book;
    }

    /** With this expression in prose, in the line after all before. */
    Book saying(String expression) {
        live.add(new ProseSource(live.size(), expression, line++));
        return this;
    }

    WorkbookSource source() {
        return new WorkbookSource("A box", List.of(new Sketch.Step(1, "Cut")), cells, live);
    }
}
