package org.kerfleaf.plan;

import org.kerfleaf.shape.PlacedSolid;

/**
 * One piece of a part in its place in the finished build.
 *
 * @param letter of the part
 * @param step the build step that puts it there, 0 above the first
 * @param seeThrough whether one looks through it: a pane
 * @param solid what it is and where; x to the right, y to the back, z up, in millimetres
 */
public record PlacedPart(String letter, int step, boolean seeThrough, PlacedSolid solid) {}
