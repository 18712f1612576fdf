/**
 * Paints what the plan holds on {@link java.awt.Graphics2D}: the build in views, sliced, taken apart and step by step, sheet and
 * board layouts, signs, text with built fractions.
 *
 * <p>All drawings of a plan, by name: {@link org.kerfleaf.export.drawing.Drawings}. To paint, start at {@link org.kerfleaf.export.drawing.Ink}, which carries a graphics object and counts in millimetres of paper:
 * x to the right, y down. Text is measured before it is set, with the figures of the very fonts that are printed.
 * Nothing here knows what the graphics object writes to.
 */
package org.kerfleaf.export.drawing;
