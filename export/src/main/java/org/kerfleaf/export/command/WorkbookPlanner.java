package org.kerfleaf.export.command;

import java.nio.file.Path;

/** Runs a workbook and plans what its cells declare. */
interface WorkbookPlanner {
    /**
     * Runs the workbook from the top and plans it.
     *
     * @throws Refused if the file cannot be read, is no workbook, or a size being tried is none of its sizes
     */
    Planned plan(Path file, Wishes wishes);
}
