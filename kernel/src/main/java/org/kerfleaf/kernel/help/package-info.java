/**
 * Help while a cell is being written: what can stand here, and what a word takes and means. Start at
 * {@link org.kerfleaf.kernel.help.CellHelp}.
 *
 * <p>No cell runs for it, and what is compiled is not touched: the compiler's own syntax tree of the cells above and of the cell up
 * to the cursor answers, also where that does not compile. What words mean comes from {@link org.kerfleaf.words.WordIndex}.
 */
package org.kerfleaf.kernel.help;
