package org.kerfleaf.export.command;

import java.nio.file.Path;
import org.kerfleaf.kernel.reach.Reached;

/** Reads what a workbook's cells reach for beyond the words; nothing of it runs. */
@FunctionalInterface
interface ReachReader {
    /** @throws Refused if the file cannot be read, or is no workbook with cells */
    Reached reached(Path file);
}
