package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/**
 * One edge-to-edge cut of the piece in hand.
 *
 * @param number in the order of cutting, from 1
 * @param across true if the cut runs across the sheet (parallel to y), false if along it (parallel to x)
 * @param at where the kerf begins on the axis the cut crosses, from the sheet's lower left corner: the kept side ends here
 * @param from where the cut starts on the axis it runs along
 * @param to where it ends
 * @param set the distance to set: from the edge of the piece in hand to the line
 * @param frees what it sets free: part names in words, or {@code the offcut}
 */
public record SheetCut(int number, boolean across, Length at, Length from, Length to, Length set, String frees) {}
