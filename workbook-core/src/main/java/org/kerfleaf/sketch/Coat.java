package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Faces that are painted or oiled.
 *
 * @param faces which
 * @param layers with what, in order
 * @param masked whether faces that are glued later are masked
 * @group sealing and paint
 */
public record Coat(Origin origin, List<Faces> faces, List<Layer> layers, boolean masked) implements Declaration {
    public Coat {
        faces = List.copyOf(faces);
        layers = List.copyOf(layers);
    }

    /** Which faces a set of faces holds. */
    public enum Which {
        /** The inside faces. */
        INSIDE,
        /** The outside faces. */
        OUTSIDE,
        /** Both wide faces of one part. */
        BOTH_OF,
        /** The underside of one part that lies or slopes. */
        UNDERSIDE_OF,
        /** Both cut ends of one part. */
        ENDS_OF,
        /** All edges of one part that lie open, its openings' too. */
        EDGES_OF;

        /** Whether the ends of a part are among them. */
        public boolean holdsEnds() {
            return this == ENDS_OF || this == EDGES_OF;
        }
    }

    /**
     * A set of faces: the inside or outside faces of what is put together, or both wide faces, the underside, both cut ends
     * or the edges of one part.
     *
     * @param part the part's name, for {@code BOTH_OF}, {@code UNDERSIDE_OF}, {@code ENDS_OF} and {@code EDGES_OF}
     * @group sealing and paint
     */
    public record Faces(Which which, Optional<String> part) {}

    /** One paint in so many coats. */
    public record Layer(Paint paint, int coats) {}

    /** One coat of it. */
    public Coat with(Paint paint) {
        return with(paint, new Coats(1));
    }

    /** So many coats of it. @example coat(outsideFaces()).with(primer).with(colour, times(2)) */
    public Coat with(Paint paint, Coats coats) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(new Layer(paint, coats.number()));
        return new Coat(origin, faces, more, masked);
    }

    /** Faces that are glued later are masked and stay bare: glue does not hold on paint. @example coat(facesOf(shelf)).with(primer).maskedWhereGlued() */
    public Coat maskedWhereGlued() {
        return new Coat(origin, faces, layers, true);
    }
}
