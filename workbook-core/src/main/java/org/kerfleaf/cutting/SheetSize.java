package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/**
 * A sheet as it can be had.
 *
 * @param stock the stock's name
 * @param length along the grain, before trimming
 * @param width across the grain, before trimming
 * @param trim what is trimmed off each of the four edges first, kerf included; may be zero
 * @param kerf the width of every saw cut
 * @param available how many there are at most; {@link Integer#MAX_VALUE} for what a shop sells
 */
public record SheetSize(String stock, Length length, Length width, Length trim, Length kerf, int available) {
    /** The length left after trimming. */
    public Length usableLength() {
        return length.minus(trim.times(2));
    }

    /** The width left after trimming. */
    public Length usableWidth() {
        return width.minus(trim.times(2));
    }
}
