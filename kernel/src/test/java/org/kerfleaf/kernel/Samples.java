package org.kerfleaf.kernel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.workbook.Workbook;

/** The workbooks people start from. */
enum Samples {
    COLD_FRAME("cold-frame.md"),
    CABINET("seed-swap-cabinet.md");

    private final String file;

    Samples(String file) {
        this.file = file;
    }

    WorkbookSource source() {
        return sourceOf(workbook());
    }

    Workbook workbook() {
        try {
            return Workbook.read(Files.readAllBytes(Path.of("..", "sample-workbooks", file)));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    static WorkbookSource sourceOf(Workbook book) {
        List<CellSource> cells = book.cells().stream()
                .map(cell -> new CellSource(cell.ordinal(), cell.text(), cell.line(), cell.step()))
                .toList();
        List<ProseSource> live = book.liveValues().stream()
                .map(value -> new ProseSource(value.ordinal(), value.expression(), value.line()))
                .toList();
        return new WorkbookSource(book.title(), book.steps(), cells, live);
    }
}
