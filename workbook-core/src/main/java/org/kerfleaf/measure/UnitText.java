package org.kerfleaf.measure;

import java.util.function.DoubleFunction;

/** Reads a number with a unit: areas, volumes, masses, temperature differences. */
enum UnitText {
    AREA,
    VOLUME,
    MASS,
    TEMPERATURE_CHANGE;

    <T> T read(String text, DoubleFunction<T> make) {
        throw new MeasureTextException(text, 1, "not read yet", "");
    }
}
