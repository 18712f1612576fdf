package org.kerfleaf.sketch;

import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Temperature;

/**
 * Air in which wood lies for weeks and comes to its moisture.
 *
 * @param warm how warm it is
 * @param humidity its relative humidity, from 0 to 100 %
 * @group what we buy
 */
public record Air(Temperature warm, Percent humidity) {
    private static final double COLDEST = -20;
    private static final double WARMEST = 60;
    private static final double DAMPEST = 98;

    /** Reads {@code 70 F} and {@code 65 %}. @throws SketchException if wood is not known in such air */
    public static Air of(String temperature, String humidity) {
        Air air = new Air(Temperature.parse(temperature), Percent.parse(humidity));
        double celsius = air.warm.celsius();
        if (celsius < COLDEST || celsius > WARMEST) {
            throw new SketchException("“%s”: what moisture wood comes to is known from -4 F to 140 F (-20 C to 60 C)."
                    .formatted(temperature));
        }
        if (air.humidity.number() > DAMPEST) {
            throw new SketchException(
                    "“%s”: a humidity up to 98 %% would be right; in wetter air wood has no end.".formatted(humidity));
        }
        return air;
    }
}
