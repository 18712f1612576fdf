package org.kerfleaf.shape;

import org.kerfleaf.measure.Length;

/**
 * Wood taken out from one side, not through: a rabbet, groove, dado or recess.
 *
 * @param name its floor is the face {@code NAME FLOOR}, its walls are {@code NAME EDGE}
 * @param shape in the part's (u, v), without openings; it may reach past the part's outline
 * @param depth from that side, more than nothing and less than the thickness
 */
public record Pocket(String name, Outline shape, Length depth, SheetSide side) {
    /** @throws IllegalArgumentException if the depth is not more than nothing or the shape has openings */
    public Pocket {
        if (!depth.isPositive()) {
            throw new IllegalArgumentException(
                    "Pocket (%s) is %s deep: it should be deeper than nothing.".formatted(name, depth));
        }
        if (!shape.openings().isEmpty()) {
            throw new IllegalArgumentException(
                    "Pocket (%s) has openings %s: say it as several pockets.".formatted(name, shape.openings()));
        }
    }
}
