package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.shape.OpenFaces;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.sketch.Coat;

/**
 * What one coat covers of one part.
 *
 * @param side which wide face; empty for cut ends and edges
 * @param narrow what it is called if it is no wide face
 * @param pieces how many pieces this is of
 * @param piece which it is, where it is in place when it is coated
 * @param place where on it, of a piece in place
 */
record Coated(
        Coat coat,
        String part,
        Optional<SheetSide> side,
        String narrow,
        int pieces,
        Area area,
        Optional<Piece> piece,
        Optional<OpenFaces.Place> place) {
    static final String ENDS = "cut ends";
    static final String EDGES = "edges";

    /** Of a wide face. */
    static Coated face(
            Coat coat,
            String part,
            SheetSide side,
            int pieces,
            Area area,
            Optional<Piece> piece,
            Optional<OpenFaces.Place> place) {
        return new Coated(coat, part, Optional.of(side), "", pieces, area, piece, place);
    }

    /** Of cut ends or edges. */
    static Coated narrow(Coat coat, String part, String narrow, int pieces, Area area) {
        return new Coated(coat, part, Optional.empty(), narrow, pieces, area, Optional.empty(), Optional.empty());
    }

    /** How much paint it takes, as area: edges drink more. */
    Area drinks() {
        return narrow.equals(EDGES) ? area.times(Painting.EDGES_DRINK) : area;
    }

    /** The same with so much of it left bare. */
    Coated less(Area bare) {
        return new Coated(coat, part, side, narrow, pieces, area.minus(bare), piece, place);
    }
}
