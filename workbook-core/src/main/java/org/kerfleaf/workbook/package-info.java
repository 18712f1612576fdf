/**
 * The workbook file: prose, live values, cells, views and build steps, with exact positions, and a save that changes
 * only the bytes that changed. Start at {@link org.kerfleaf.workbook.Workbook}.
 */
package org.kerfleaf.workbook;
