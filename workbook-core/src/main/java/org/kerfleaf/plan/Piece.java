package org.kerfleaf.plan;

import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.Origin;

/**
 * One piece of a part, in its place.
 *
 * @param part the part's name
 * @param placing where it was said
 * @param index which of the placing's pieces, from 0
 * @param box the space it takes up
 */
record Piece(String part, Origin placing, int index, Box box) {
    Piece at(Box moved) {
        return new Piece(part, placing, index, moved);
    }
}
