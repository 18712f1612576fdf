package org.kerfleaf.sketch;

/**
 * Where in the workbook something was said; also the identity of what has no name.
 *
 * @param cell the cell's ordinal in the document, from 0
 * @param ordinal how many things this cell had made before, from 0
 * @param line the line of the workbook file, from 1
 * @param step the number of the build step the cell stands under, 0 above the first
 */
public record Origin(int cell, int ordinal, int line, int step) implements Comparable<Origin> {
    /** Of what no cell said: a problem of the workbook as a whole. */
    public static final Origin NOWHERE = new Origin(-1, 0, 0, 0);

    @Override
    public int compareTo(Origin other) {
        return cell != other.cell ? Integer.compare(cell, other.cell) : Integer.compare(ordinal, other.ordinal);
    }
}
