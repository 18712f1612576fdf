/**
 * Runs a workbook's cells and hands back a sketch. Start at {@link org.kerfleaf.kernel.Kernel}.
 *
 * <p>Cells are compiled in this process and run in a child process, always from the top, so what a run gives is what a
 * fresh run would give. What a cell does wrong is an outcome, never an exception; an exception means that the child could
 * not be started or that this program is wrong. Nothing here is a jail: a cell can do what a Java program can.
 */
package org.kerfleaf.kernel;
