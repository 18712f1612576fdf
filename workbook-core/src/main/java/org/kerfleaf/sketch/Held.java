package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;

/**
 * A size that stays as it is said, inside or outside, while what follows takes up every change of the walls.
 *
 * @param label of the size
 * @param value as it holds in this run
 * @param at {@link Side#INSIDE} or {@link Side#OUTSIDE}, as it holds in this run
 * @group sizes
 */
public record Held(String label, Length value, Side at) {
    private static final String IS_HELD = " is held";

    /**
     * Asks the run for a size and for where it is held; the second is a size of its own, {@code Width is held}, inside or
     * outside.
     *
     * @param range of what is said, wherever it is held
     * @throws SketchException if it is held neither inside nor outside, or the value is out of the range
     */
    public static Held ask(Side at, String label, String value, Optional<String> range) {
        if (at != Side.INSIDE && at != Side.OUTSIDE) {
            throw new SketchException(
                    "%s is held inside or outside, not at the %s. Say held(INSIDE, ...) or held(OUTSIDE, ...)."
                            .formatted(label, at.words()));
        }
        Length said = Sizes.length(label, value, range);
        String where = Sizes.choice(label + IS_HELD, at.words(), Side.INSIDE.words(), Side.OUTSIDE.words());
        return new Held(label, said, Side.valueOf(where.toUpperCase(Locale.ROOT)));
    }

    /**
     * The clear inside between walls of these thicknesses: what was said where the inside is held, else what the walls leave of
     * it (geometry: inside = outside − walls).
     *
     * @throws SketchException if the walls leave nothing
     */
    public Length between(Length... walls) {
        Length inside = at == Side.INSIDE ? value : value.minus(walls);
        if (!inside.isPositive()) {
            throw new SketchException(
                    "%s, %s outside, leaves nothing between walls of %s. More than that would be right."
                            .formatted(
                                    label,
                                    value,
                                    Arrays.stream(walls).map(Length::toString).collect(Collectors.joining(" and "))));
        }
        return inside;
    }

    /**
     * The clear inside between a wall of one sheet and a wall of the other.
     *
     * @example Length clear = held(OUTSIDE, "Whole width", "24 in").between(ply, ply)
     */
    public Length between(Sheet one, Sheet other) {
        return between(one.thickness(), other.thickness());
    }
}
