package org.kerfleaf.sketch;

import org.kerfleaf.measure.Temperature;

/** How cold it gets in the step that this is said in, and until what is done in it has dried. @group the work */
public record Coldest(Origin origin, Temperature temperature) implements Declaration {
    /** Reads {@code 50 F}, {@code 10 C}. @throws org.kerfleaf.measure.MeasureTextException if it is no temperature */
    public static Coldest of(String text) {
        Temperature read = Temperature.parse(text);
        return new Coldest(SketchRun.current().next(), read);
    }
}
