package org.kerfleaf.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What of a solid a plane can rest against.
 *
 * @param corners each once
 * @param faces the places, in the solid's list, of those that have all corners behind them
 */
record Hull(List<Vector> corners, int[] faces) {
    private static final double BEHIND = 1e-6;

    static Hull of(List<Face> all) {
        Map<List<Long>, Vector> corners = new LinkedHashMap<>();
        for (Face face : all) {
            for (Vector corner : face.corners()) {
                corners.putIfAbsent(
                        List.of(
                                Math.round(corner.x() * 1e5),
                                Math.round(corner.y() * 1e5),
                                Math.round(corner.z() * 1e5)),
                        corner);
            }
        }
        List<Vector> once = List.copyOf(corners.values());
        int[] outer = IntStream.range(0, all.size())
                .filter(i -> once.stream().allMatch(c -> all.get(i).inFront(c) < BEHIND))
                .toArray();
        return new Hull(once, outer);
    }
}
