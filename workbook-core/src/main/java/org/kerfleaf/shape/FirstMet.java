package org.kerfleaf.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a straight line meets first among pieces that stand there; openings count as closed. */
public final class FirstMet {
    /** A line begins so far before the face it starts on, in millimetres. */
    private static final double BEFORE = 0.3;

    private final Map<PlacedSolid, SightBody> bodies = new LinkedHashMap<>();

    /** @param there every piece that stands there */
    public FirstMet(List<PlacedSolid> there) {
        there.forEach(solid -> bodies.put(solid, new SightBody(solid)));
    }

    /** A piece and how far away it is met, in millimetres. */
    public record Met(PlacedSolid solid, double away) {}

    /**
     * The first piece on the way from a face.
     *
     * @param from on the face
     * @param way away from it, one long
     */
    public Optional<Met> along(Vector from, Vector way) {
        Vector start = from.plus(way.times(BEFORE));
        Optional<Met> first = Optional.empty();
        double nearest = Double.POSITIVE_INFINITY;
        for (Map.Entry<PlacedSolid, SightBody> body : bodies.entrySet()) {
            double hit = body.getValue().nearest(start, way, nearest);
            if (hit < nearest) {
                nearest = hit;
                first = Optional.of(new Met(body.getKey(), hit + BEFORE));
            }
        }
        return first;
    }
}
