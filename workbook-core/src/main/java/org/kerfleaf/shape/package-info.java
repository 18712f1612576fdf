/**
 * Solids, where they stand, and what follows from that.
 *
 * <p>One right-handed frame: x to the right, y to the back, z up, standing before the door.
 *
 * <p>A part is a {@link org.kerfleaf.shape.Solid}: an {@link org.kerfleaf.shape.Outline} as thick as its stock, less named cuts and
 * pockets. Its own frame has w = 0 on the OUTSIDE or lower face and w = thickness on the INSIDE or upper face. Sizes are exact in
 * nanometres there; from the {@link org.kerfleaf.shape.Pose} on, points are doubles in millimetres. Placed as
 * {@link org.kerfleaf.shape.PlacedSolid}s they touch, meet along lines, stand apart or clash
 * ({@link org.kerfleaf.shape.Touching}), all by one tolerance of 0.01 mm, and leave seams
 * ({@link org.kerfleaf.shape.SolidSeams}). Faces are always found by name, never by direction.
 *
 * <p>Beside them {@link org.kerfleaf.shape.Box}, exact in nanometres, is what the planner still places, with its
 * {@link org.kerfleaf.shape.Contact}s and {@link org.kerfleaf.shape.Seams}.
 */
package org.kerfleaf.shape;
