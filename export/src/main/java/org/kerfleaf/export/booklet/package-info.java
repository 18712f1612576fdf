/**
 * The build booklet, a PDF to print and take to the bench. Start at {@link org.kerfleaf.export.booklet.Booklet}.
 *
 * <p>A page kind is one class that fills a {@link org.kerfleaf.export.booklet.Flow} with blocks; the flow breaks pages, and
 * only when every page is known are they painted, so that each can say how many there are. All lengths are millimetres of
 * paper, y down from a page's upper edge.
 */
package org.kerfleaf.export.booklet;
