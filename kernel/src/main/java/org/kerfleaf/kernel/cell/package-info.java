/**
 * The text of a workbook as the kernel takes it, and places in it. Start at {@link org.kerfleaf.kernel.cell.WorkbookSource}.
 * Lines and columns count from 1; a column is a character of the line, a tab being one.
 */
package org.kerfleaf.kernel.cell;
