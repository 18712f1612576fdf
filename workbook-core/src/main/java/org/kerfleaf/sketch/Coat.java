package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Faces that are painted or oiled.
 *
 * @param faces which
 * @param layers with what, in order
 */
public record Coat(Origin origin, List<Faces> faces, List<Layer> layers) implements Declaration {
    public Coat {
        faces = List.copyOf(faces);
        layers = List.copyOf(layers);
    }

    /**
     * A set of faces: INSIDE or OUTSIDE faces of what is put together, or both wide faces of one part.
     *
     * @param side INSIDE or OUTSIDE, or empty for all wide faces of {@code part}
     * @param part the part's name, if the faces of one part are meant
     */
    public record Faces(Optional<Side> side, Optional<String> part) {}

    /** One paint in so many coats. */
    public record Layer(Paint paint, int coats) {}

    /** One coat of it. */
    public Coat with(Paint paint) {
        return with(paint, new Coats(1));
    }

    /** So many coats of it. */
    public Coat with(Paint paint, Coats coats) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(new Layer(paint, coats.number()));
        return new Coat(origin, faces, more);
    }
}
