package org.kerfleaf.rules;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;

/** How limits are said: to 1/64 in or 0.1 mm, since what a sheet may lack is often less than a tape shows. */
public final class Tolerances {
    private Tolerances() {}

    /** A length, fine enough for a limit. */
    public static String fine(Length length, MeasureStyle style) {
        return Say.fine(length, style);
    }

    /** {@code 23/32 in to 25/32 in}, or that no standard has limits for it. */
    public static String thickness(Optional<Figure<Length>> least, Optional<Figure<Length>> most, MeasureStyle style) {
        return least.isEmpty() || most.isEmpty()
                ? "no limits known"
                : Say.fine(least.get().value(), style) + " to "
                        + Say.fine(most.get().value(), style);
    }
}
