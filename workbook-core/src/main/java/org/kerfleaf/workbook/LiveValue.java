package org.kerfleaf.workbook;

/**
 * A {@code ${expression}} in the prose.
 *
 * @param ordinal from 0, in document order
 * @param expression what stands between the braces, without blanks around it; an expression that runs over several
 *     lines has {@code \n} between them
 * @param line the line on which the expression begins, from 1
 * @param column the column at which the expression begins, from 1
 * @param offset where the expression begins in the workbook's text
 * @param length how many chars of the workbook's text it takes; on one line, exactly {@code expression.length()}
 */
public record LiveValue(int ordinal, String expression, int line, int column, int offset, int length) {}
