package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A lag screw of a diameter and length: a coarse screw with a bolt's head, turned in with a wrench. @group what we buy */
public record Lag(Origin origin, Length diameter, Length length, Metal metal, int packOf, Optional<Money> price)
        implements Fastener {
    /** @throws SketchException if it is not thicker or not longer than nothing */
    public Lag {
        SketchRun.positive("A lag screw with a diameter", diameter);
        SketchRun.positive("A lag screw", length);
    }

    /** Of stainless steel. @example lagScrew("3/8 in", "4 in").stainless() */
    public Lag stainless() {
        return new Lag(origin, diameter, length, Metal.STAINLESS, packOf, price);
    }

    /** Hot-dip galvanised: a thick coat of zinc, for outdoors. @example lagScrew("3/8 in", "4 in").hotDipGalvanised() */
    public Lag hotDipGalvanised() {
        return new Lag(origin, diameter, length, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    /** The price of one lag screw. @example lagScrew("3/8 in", "4 in").costs("1.45") */
    public Lag costs(String each) {
        return new Lag(origin, diameter, length, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.of(length);
    }
}
