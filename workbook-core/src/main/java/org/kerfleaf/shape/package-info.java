/**
 * Placed solids and what follows from where they are.
 *
 * <p>One right-handed frame: x to the right, y to the back, z up, standing before the door. Here a solid is its
 * {@link org.kerfleaf.shape.Box}, and boxes touch in {@link org.kerfleaf.shape.Contact}s; all of it is exact, in
 * nanometres. Start at {@link org.kerfleaf.shape.Box}.
 */
package org.kerfleaf.shape;
