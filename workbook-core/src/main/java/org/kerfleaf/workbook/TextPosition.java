package org.kerfleaf.workbook;

/**
 * A place in the workbook file.
 *
 * @param line from 1
 * @param column from 1, in Java chars; a tab is one
 */
public record TextPosition(int line, int column) {
    @Override
    public String toString() {
        return "line " + line + ", column " + column;
    }
}
