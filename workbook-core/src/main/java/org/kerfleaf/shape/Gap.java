package org.kerfleaf.shape;

import org.kerfleaf.measure.Length;

/**
 * How far two solids that do not touch are apart.
 *
 * @param direction from a to b, one long
 * @param facing whether two faces look at each other across it; else it is the distance of the boxes round them
 */
public record Gap(Vector direction, Length size, boolean facing) {}
