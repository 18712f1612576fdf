package org.kerfleaf.finish;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.kerfleaf.measure.Temperature;

/**
 * How cold it may be for what its name says it is, where its maker's figure was not said: white wood glue 55 °F (13 °C), yellow
 * 50 °F (10 °C) (glue makers, seen in a copy); latex paint 50 °F (10 °C) (common practice, no source). Of a glue whose name says PVA
 * and no colour the warmer counts. Everything else is not known.
 */
public final class LeastWarm {
    private static final Temperature WHITE = Temperature.ofCelsius(13);
    private static final Temperature MILD = Temperature.ofCelsius(10);

    private LeastWarm() {}

    /** Of a glue by its name. */
    public static Optional<Temperature> ofGlue(String name) {
        if (has(name, "yellow", "aliphatic")) {
            return Optional.of(MILD);
        }
        return has(name, "white", "pva") ? Optional.of(WHITE) : Optional.empty();
    }

    /** Of a paint by its name. */
    public static Optional<Temperature> ofPaint(String name) {
        return has(name, "latex", "acrylic") ? Optional.of(MILD) : Optional.empty();
    }

    private static boolean has(String name, String... words) {
        String small = name.toLowerCase(Locale.ROOT);
        return List.of(words).stream().anyMatch(small::contains);
    }
}
