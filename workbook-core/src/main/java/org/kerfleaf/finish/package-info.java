/**
 * Paint, caulk and glue: areas, lengths, cans. Start at {@link org.kerfleaf.finish.FinishNeed}, which says how much is needed
 * and how many packs to buy; {@link org.kerfleaf.finish.FinishLine} is what the plan lists.
 */
package org.kerfleaf.finish;
