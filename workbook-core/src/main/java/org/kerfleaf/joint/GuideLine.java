package org.kerfleaf.joint;

import org.kerfleaf.shape.Vector;

/**
 * A line to be drawn on a part before it is put together.
 *
 * @param from in the marking's (u, v), in millimetres
 * @param to in the marking's (u, v), in millimetres
 * @param words what it is for: {@code middle of Shelf}; may be empty
 */
public record GuideLine(Vector from, Vector to, String words) {}
