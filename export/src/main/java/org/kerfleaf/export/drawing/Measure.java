package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Bounds;

/**
 * A size to be given in a view.
 *
 * @param axis along which
 * @param from where it begins on that axis of the build
 * @param to where it ends, beyond {@code from}
 */
public record Measure(Axis axis, Length from, Length to) {
    /** @throws IllegalArgumentException if it does not end beyond its beginning */
    public Measure {
        if (!to.isLongerThan(from)) {
            throw new IllegalArgumentException(
                    "A size from %s to %s: its end should lie beyond its beginning.".formatted(from, to));
        }
    }

    /** How long that is. */
    public Length size() {
        return to.minus(from);
    }

    /** The three sizes of the box round all pieces. */
    public static List<Measure> overall(List<Shown> shown) {
        Bounds all = shown.stream()
                .map(s -> s.drawn().bounds())
                .reduce(Bounds::and)
                .orElseThrow(
                        () -> new IllegalArgumentException("The sizes of no pieces: there should be one at least."));
        List<Measure> sizes = new ArrayList<>();
        sizes.add(of(Axis.X, all.low().x(), all.high().x()));
        sizes.add(of(Axis.Y, all.low().y(), all.high().y()));
        sizes.add(of(Axis.Z, all.low().z(), all.high().z()));
        return sizes;
    }

    private static Measure of(Axis axis, double from, double to) {
        return new Measure(axis, Length.ofMillimetres(from), Length.ofMillimetres(to));
    }
}
