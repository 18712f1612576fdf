package org.kerfleaf.shape;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Volume;

/**
 * The space two solids share.
 *
 * <p>A face of one with all of the other beyond it settles most pairs; the rest are clipped, convex piece by convex piece.
 */
final class ClashSearch {
    private static final double NEAR = Touching.TOLERANCE.inMillimetres();

    /** Less than this is no clash, in mm³. */
    private static final double LEAST = 0.5;

    private ClashSearch() {}

    static boolean areApart(PlacedSolid a, PlacedSolid b) {
        return !a.bounds().isNear(b.bounds(), -NEAR) || hasBeyond(a, b) || hasBeyond(b, a);
    }

    private static boolean hasBeyond(PlacedSolid a, PlacedSolid b) {
        return a.hullFaces().stream().anyMatch(face -> b.corners().stream().allMatch(c -> face.inFront(c) >= -NEAR));
    }

    static Optional<Clash> between(PlacedSolid a, PlacedSolid b) {
        if (areApart(a, b)) {
            return Optional.empty();
        }
        List<ConvexPiece> others = b.solid().pieces().stream()
                .map(p -> p.seenFrom(b.pose(), a.pose()))
                .toList();
        List<ConvexPiece> mine = a.solid().pieces();
        List<Bounds> boxes = others.stream().map(ConvexPiece::bounds).toList();
        double volume = 0;
        Bounds box = null;
        for (ConvexPiece piece : mine) {
            Bounds own = piece.bounds();
            for (int i = 0; i < others.size(); i++) {
                Optional<ConvexPiece> shared =
                        own.isNear(boxes.get(i), 0) ? piece.shared(others.get(i)) : Optional.empty();
                if (shared.isPresent()) {
                    double part = shared.get().volume();
                    volume += part;
                    // What is thinner than the tolerance, as at faces that only touch, is no part of the clash's size.
                    if (part > NEAR * shared.get().largestFace()) {
                        Bounds at = shared.get().bounds();
                        box = box == null ? at : box.and(at);
                    }
                }
            }
        }
        return box != null && volume > LEAST
                ? Optional.of(new Clash(Volume.ofCubicMillimetres(volume), a.pose(), box))
                : Optional.empty();
    }
}
