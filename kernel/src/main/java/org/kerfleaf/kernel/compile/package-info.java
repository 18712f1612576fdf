/**
 * Compiles the cells of a workbook in this process and runs nothing of them. Start at
 * {@link org.kerfleaf.kernel.compile.CellCompiler}; it answers with a
 * {@link org.kerfleaf.kernel.compile.CompiledWorkbook}.
 *
 * <p>Inside, a <em>piece</em> is one top-level piece of Java in a cell, and offsets count characters of the cell's text.
 */
package org.kerfleaf.kernel.compile;
