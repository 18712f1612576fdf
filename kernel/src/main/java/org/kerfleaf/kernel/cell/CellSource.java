package org.kerfleaf.kernel.cell;

/**
 * One cell of a workbook.
 *
 * @param ordinal which cell of the document, from 0
 * @param text its Java text without the fence; line ends are made {@code \n}
 * @param line the line of the workbook file on which the text begins, from 1 (the line after the fence)
 * @param step the number of the build step it stands under, 0 above the first
 */
public record CellSource(int ordinal, String text, int line, int step) {
    public CellSource {
        text = text.replace("\r\n", "\n").replace('\r', '\n');
    }
}
