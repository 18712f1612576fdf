package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/**
 * What to cut from a sheet: a rectangle, so many times.
 *
 * @param part the part's name
 * @param length along the part's grain
 * @param width across it
 * @param count how many, one or more
 * @param mayTurn whether its grain may lie across the sheet's
 */
public record SheetPiece(String part, Length length, Length width, int count, boolean mayTurn) {}
