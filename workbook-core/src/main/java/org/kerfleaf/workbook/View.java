package org.kerfleaf.workbook;

/**
 * A part of the plan that the workbook shows at this place: one line of a fence with info string {@code view}.
 *
 * @param ordinal from 0, in document order
 * @param what its name, without blanks around it
 * @param line the line of the file, from 1
 * @param offset where the name begins in the workbook's text
 * @param length how many chars the name takes there
 * @param step the number of the build step it stands under, 0 outside the build steps
 */
public record View(int ordinal, String what, int line, int offset, int length, int step) {}
