package org.kerfleaf.saw;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;

/**
 * One more number to set, to mark or to know at a set-up.
 *
 * @param what {@code stop block, G, 4 pieces}
 * @param value with its reason
 */
public record Reading(String what, Figure<? extends Quantity> value) {
    /** The value as printed; a length that no tape shows is {@code under 1/64 in}. */
    public String in(MeasureStyle style) {
        MeasureStyle finest = style.toTheFinest();
        boolean hidden =
                value.value() instanceof Length length && length.isPositive() && length.isShorterThan(finest.step());
        return hidden ? "under " + finest : value.value().in(style);
    }
}
