package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/**
 * One part on a sheet.
 *
 * @param part the part's name
 * @param x of its lower left corner, from the sheet's untrimmed lower left corner along the length
 * @param y of that corner across
 * @param length its extent along x
 * @param width its extent along y
 * @param turned whether its grain lies across the sheet's, so that {@code length} is the part's width
 */
public record SheetPlacement(String part, Length x, Length y, Length length, Length width, boolean turned) {}
