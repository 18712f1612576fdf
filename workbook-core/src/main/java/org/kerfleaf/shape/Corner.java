package org.kerfleaf.shape;

import org.kerfleaf.measure.Length;

/**
 * A corner of an outline.
 *
 * @param edge the name of the edge that leaves it, going counter-clockwise
 */
public record Corner(String edge, Length u, Length v) {}
