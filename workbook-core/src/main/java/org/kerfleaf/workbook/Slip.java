package org.kerfleaf.workbook;

/**
 * Something in the file that reads like a slip of the pen. The workbook is still read.
 *
 * @param line the line of the file, from 1
 * @param column the column, from 1
 * @param words what is there and what would be right
 */
public record Slip(int line, int column, String words) {}
