package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Percent;

/**
 * How damp a stock is when it is worked.
 *
 * @param moisture water by the weight of the dry wood, as a meter shows it, if said
 * @param dried the air it lay in for weeks, if said
 * @param drinks whether a drop of water was said to soak into it
 */
public record Damp(Optional<Percent> moisture, Optional<Air> dried, boolean drinks) {
    /** Nothing was said. */
    public static final Damp NOT_SAID = new Damp(Optional.empty(), Optional.empty(), false);

    private static final double WETTEST = 200;

    Damp moisture(String percent) {
        Percent said = Percent.parse(percent);
        if (said.number() > WETTEST) {
            throw new SketchException("“%s”: no wood holds more than 200 %%; 12 %% would be dry.".formatted(percent));
        }
        return new Damp(Optional.of(said), Optional.empty(), drinks);
    }

    Damp dried(Air air) {
        return new Damp(Optional.empty(), Optional.of(air), drinks);
    }

    Damp drinking() {
        return new Damp(moisture, dried, true);
    }
}
