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
 * @param from where it begins, if said
 * @param upTo where it ends, if said
 * @group what it carries
 */
public record Fill(
        Origin origin,
        Origin ring,
        String what,
        Optional<Density> density,
        Optional<Length> from,
        Optional<Length> upTo)
        implements Declaration {
    /** What {@code fill} says. */
    public static Fill of(Placing ring, String what) {
        return new Fill(
                SketchRun.current().next(), ring.origin(), what, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** How heavy it is for its volume. @example fill(floorIn, "potting soil").from("1 in").upTo("2 1/2 in").weighs("1.4 kg/L") */
    public Fill weighs(String perVolume) {
        return new Fill(origin, ring, what, Optional.of(Density.parse(perVolume)), from, upTo);
    }

    /** How far above the build's underside it begins. @example fill(floorIn, "potting soil").from("25 mm").upTo("65 mm") */
    public Fill from(String height) {
        return new Fill(origin, ring, what, density, Optional.of(Length.parse(height)), upTo);
    }

    /** How far above the build's underside it ends. @example fill(floorIn, "potting soil").from("1 in").upTo("2 1/2 in") */
    public Fill upTo(String height) {
        return upTo(Length.parse(height));
    }

    /** How far above the build's underside it ends. @example fill(floorIn, "potting soil").from("1 in").upTo(length("2 1/2 in")) */
    public Fill upTo(Length height) {
        return new Fill(origin, ring, what, density, from, Optional.of(height));
    }
}
