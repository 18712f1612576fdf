/**
 * The plan as a spreadsheet (Office Open XML). Start at {@link org.kerfleaf.export.spreadsheet.Spreadsheet}.
 *
 * <p>One class per sheet says what stands on it; {@code Book}, {@code Leaf}, {@code Table} and {@code Line} say where and
 * how. What a reader may change is written in chalk blue, all that follows from it is a formula, so a changed price
 * moves the totals in the spreadsheet itself. Lengths are numbers in the workbook's unit, rounded to its print step.
 * Lookups between sheets go by a line's number or name, never by its place, so that every table can be sorted.
 */
package org.kerfleaf.export.spreadsheet;
