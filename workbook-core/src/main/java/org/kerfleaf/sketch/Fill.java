package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.stock.Density;

/**
 * What a build is filled with, between two heights above its underside.
 *
 * @param ring of the pieces that stand round it
 * @param what fills it
 * @param density of that, if said
 * @param from where it begins
 * @param upTo where it ends, if said
 * @group what it carries
 */
public record Fill(
        Origin origin, Origin ring, String what, Optional<Density> density, Length from, Optional<Length> upTo)
        implements Declaration {
    /** What {@code fill} says. */
    public static Fill of(Placing ring, String what) {
        return new Fill(
                SketchRun.current().next(), ring.origin(), what, Optional.empty(), Length.ZERO, Optional.empty());
    }

    /** How heavy it is for its volume. @example fill(floorIn, "potting soil").weighs("1.4 kg/L").upTo("275 mm") */
    public Fill weighs(String perVolume) {
        return new Fill(origin, ring, what, Optional.of(Density.parse(perVolume)), from, upTo);
    }

    /** How far above the build's underside it begins. @example fill(floorIn, "potting soil").from("38 mm").upTo("275 mm") */
    public Fill from(String height) {
        return new Fill(origin, ring, what, density, Length.parse(height), upTo);
    }

    /** How far above the build's underside it ends. @example fill(floorIn, "potting soil").upTo("11 in") */
    public Fill upTo(String height) {
        return upTo(Length.parse(height));
    }

    /** How far above the build's underside it ends. @example fill(floorIn, "potting soil").upTo(length("11 in")) */
    public Fill upTo(Length height) {
        return new Fill(origin, ring, what, density, from, Optional.of(height));
    }
}
