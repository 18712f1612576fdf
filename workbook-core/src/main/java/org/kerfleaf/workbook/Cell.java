package org.kerfleaf.workbook;

import java.util.List;

/**
 * A fence whose info string's first word is {@code java}.
 *
 * @param ordinal from 0, in document order
 * @param text the lines of the cell joined by {@code \n}, without what a list or a quote puts before them and without a
 *     line end after the last; no line and one blank line are both the empty text
 * @param line the line of the file on which the text begins, from 1; of a cell without lines, the line where one would go
 * @param column the column at which the text begins, from 1
 * @param offset where the text begins in the workbook's text
 * @param length how many chars it takes there, up to and without the last line's end
 * @param step the number of the build step it stands under, 0 outside the build steps
 * @param section the text of the nearest heading above, empty where there is none
 * @param starts for each line of the text, where it begins in the file
 */
public record Cell(
        int ordinal,
        String text,
        int line,
        int column,
        int offset,
        int length,
        int step,
        String section,
        List<Start> starts) {
    public Cell {
        starts = List.copyOf(starts);
    }

    /**
     * Returns where in the file a char of this cell's text stands.
     *
     * @param at an offset in {@link #text()}, from 0 to its length
     * @throws IndexOutOfBoundsException if it is outside the text
     */
    public TextPosition positionOf(int at) {
        if (at < 0 || at > text.length()) {
            throw new IndexOutOfBoundsException("Offset %d is outside the text of cell %d, which has %d chars"
                    .formatted(at, ordinal, text.length()));
        }
        int lineStart = text.lastIndexOf('\n', at - 1) + 1;
        int index = (int)
                text.substring(0, lineStart).chars().filter(c -> c == '\n').count();
        return new TextPosition(line + index, starts.get(index).columnOf(at - lineStart));
    }

    /**
     * Where a line of a cell begins in the file.
     *
     * @param column its column, from 1
     * @param fromTab how many blanks at its beginning are, in the file, the rest of one tab that a list or a quote before
     *     it used up in part; mostly 0
     */
    public record Start(int column, int fromTab) {
        private int columnOf(int at) {
            return fromTab == 0 ? column + at : column + Math.max(0, at - fromTab + 1);
        }
    }
}
