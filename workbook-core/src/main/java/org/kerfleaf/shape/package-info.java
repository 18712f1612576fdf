/**
 * Solids, where they are placed, and what follows from it: faces, volume, contact, clash, seams, what lies open.
 *
 * <p>Start at {@link org.kerfleaf.shape.Solid} (an outline, as thick as its stock, less cuts and pockets) and
 * {@link org.kerfleaf.shape.PlacedSolid}; {@link org.kerfleaf.shape.Touching} says how two of them are to each other. One
 * right-handed frame: x to the right, y to the back, z up, standing before the door, in millimetres as doubles; sizes are exact
 * nanometres up to a part's own frame. {@link org.kerfleaf.shape.Box} is what a part that stands square is placed by, exactly.
 */
package org.kerfleaf.shape;
