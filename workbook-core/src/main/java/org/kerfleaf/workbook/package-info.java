/**
 * The workbook file: prose, live values, cells, views and build steps, with exact positions, and a save that changes
 * only the bytes that changed. Start at {@link org.kerfleaf.workbook.Workbook}.
 *
 * <p>Positions: offsets and lengths count Java chars in {@link org.kerfleaf.workbook.Workbook#text()} from 0, so an
 * emoji counts two; lines and columns count from 1, columns in the same chars, a tab being one. Ordinals count from 0
 * in document order, build steps from 1.
 */
package org.kerfleaf.workbook;
