package org.kerfleaf.kernel.cell;

/**
 * What is wrong at one place of a workbook, in a maker's words.
 *
 * @param cell the ordinal of the cell, or {@link #PROSE} for a live value in prose
 * @param line the line of the workbook file, from 1
 * @param column the column of that line, from 1; in prose counted from the beginning of the expression
 * @param text the words of that line
 * @param words what is wrong, and what would be right
 */
public record CellProblem(int cell, int line, int column, String text, String words) {
    /** The cell of a problem in prose. */
    public static final int PROSE = -1;
}
