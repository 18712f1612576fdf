package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;

/**
 * Whether each piece still comes to its place past what was put there in earlier steps: along the way it is put on by the words, or
 * straight from one of six sides ({@code Reason.GEOMETRY}). A piece is moved in strides shorter than what it would have to go through.
 */
final class WaysIn {
    private static final double NEAR = Touching.TOLERANCE.inMillimetres();
    private static final List<Vector> SIX =
            List.of(Vector.Z, Vector.Y.negated(), Vector.Y, Vector.X.negated(), Vector.X, Vector.Z.negated());

    private final List<PlacedPart> placed;

    WaysIn(List<PlacedPart> placed) {
        this.placed = placed;
    }

    /** A piece that cannot get in, and what stands in the way it was put. */
    record Shut(PlacedPart piece, List<PlacedPart> by) {}

    /** The pieces that something was there before. */
    List<PlacedPart> late() {
        return placed.stream().filter(piece -> !before(piece).isEmpty()).toList();
    }

    List<Shut> shut() {
        return late().stream().flatMap(piece -> shut(piece).stream()).toList();
    }

    private List<PlacedPart> before(PlacedPart piece) {
        return placed.stream()
                .filter(other -> other.build() == piece.build() && other.step() < piece.step())
                .toList();
    }

    private Optional<Shut> shut(PlacedPart piece) {
        List<PlacedPart> there = before(piece);
        List<Vector> ways = Stream.concat(
                        piece.wayOut().stays()
                                ? Stream.empty()
                                : Stream.of(piece.wayOut().along()),
                        SIX.stream())
                .toList();
        List<PlacedPart> first = null;
        for (Vector along : ways) {
            List<PlacedPart> by = there.stream()
                    .filter(other -> meets(piece.solid(), other.solid(), along))
                    .toList();
            if (by.isEmpty()) {
                return Optional.empty();
            }
            first = first == null ? by : first;
        }
        return Optional.of(new Shut(piece, first));
    }

    /** Whether a solid meets another on its way out along a direction. */
    private static boolean meets(PlacedSolid moved, PlacedSolid other, Vector along) {
        PlacedSolid.Reach own = moved.project(along);
        PlacedSolid.Reach others = other.project(along);
        double far = others.most() - own.least();
        if (far <= NEAR
                || !moved.bounds()
                        .and(shifted(moved.bounds(), along.times(far)))
                        .isNear(other.bounds(), -NEAR)) {
            return false;
        }
        double through = own.most() - own.least() + others.most() - others.least();
        int strides = (int) Math.ceil(far / (through * 0.45));
        for (int i = 1; i <= strides; i++) {
            Vector by = along.times(far * (i - 0.5) / strides);
            if (shifted(moved.bounds(), by).isNear(other.bounds(), -NEAR)
                    && Touching.between(at(moved, by), other).clash().isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static PlacedSolid at(PlacedSolid solid, Vector by) {
        Pose pose = solid.pose();
        return solid.at(pose.moved(by));
    }

    private static Bounds shifted(Bounds bounds, Vector by) {
        return new Bounds(bounds.low().plus(by), bounds.high().plus(by));
    }

    /** The names of pieces with their steps, each once. */
    static List<String> words(List<PlacedPart> pieces) {
        List<String> words = new ArrayList<>();
        for (PlacedPart piece : pieces) {
            String one = "%s (step %d)".formatted(piece.solid().part(), piece.step());
            if (!words.contains(one)) {
                words.add(one);
            }
        }
        return words;
    }
}
