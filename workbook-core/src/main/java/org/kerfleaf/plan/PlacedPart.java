package org.kerfleaf.plan;

import org.kerfleaf.shape.PlacedSolid;

/**
 * One piece of a part in its place in the finished build.
 *
 * @param letter of the part
 * @param step the build step that puts it there, 0 above the first
 * @param build which of the builds it belongs to, from 0: what is placed by way of each other is one build
 * @param mounted the step in which its build is moved onto another, 0 if it stays where it was put together
 * @param seeThrough whether one looks through it: a pane
 * @param wayOut how it comes out of its place again
 * @param solid what it is and where; x to the right, y to the back, z up, in millimetres
 */
public record PlacedPart(
        String letter, int step, int build, int mounted, boolean seeThrough, WayOut wayOut, PlacedSolid solid) {}
