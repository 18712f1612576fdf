package org.kerfleaf.kernel.reach;

import java.util.List;
import org.kerfleaf.kernel.cell.CellProblem;

/**
 * One place of a workbook that reaches for more than the words.
 *
 * @param reach for what
 * @param things what the code names there, such as {@code java.nio.file.Files.readString}; at least one
 * @param place where, in words that say both
 */
public record Reaching(Reach reach, List<String> things, CellProblem place) {
    public Reaching {
        things = List.copyOf(things);
    }
}
