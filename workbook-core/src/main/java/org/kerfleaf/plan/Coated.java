package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.shape.OpenFaces;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.sketch.Coat;

/**
 * What one coat covers of one part.
 *
 * @param side which wide face; empty for the cut ends
 * @param pieces how many pieces this is of
 * @param piece which it is, where it is in place when it is coated
 * @param place where on it, of a piece in place
 */
record Coated(
        Coat coat,
        String part,
        Optional<SheetSide> side,
        int pieces,
        Area area,
        Optional<Piece> piece,
        Optional<OpenFaces.Place> place) {
    /** The same with so much of it left bare. */
    Coated less(Area bare) {
        return new Coated(coat, part, side, pieces, area.minus(bare), piece, place);
    }
}
