/**
 * Lays parts out on sheets and boards, cut edge to edge, and says how few would do.
 *
 * <p>Start at {@link org.kerfleaf.cutting.SheetCutting} and {@link org.kerfleaf.cutting.BoardCutting}. A sheet's origin
 * is its lower left corner, x along its length (with the grain), y across; lengths are exact nanometres, so there is no
 * tolerance anywhere. Every layout comes with the order of its cuts, and every stock with a lower bound.
 */
package org.kerfleaf.cutting;
