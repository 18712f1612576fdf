package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A carriage bolt of a diameter; its length follows from what it goes through. @group what we buy */
public record Bolt(Origin origin, Length diameter, Metal metal, int packOf, Optional<Money> price) implements Fastener {
    /** @throws SketchException if it is not thicker than nothing */
    public Bolt {
        SketchRun.positive("A bolt with a diameter", diameter);
    }

    /** Of stainless steel. @example carriageBolt("3/8 in").stainless() */
    public Bolt stainless() {
        return new Bolt(origin, diameter, Metal.STAINLESS, packOf, price);
    }

    /** Hot-dip galvanised: a thick coat of zinc, for outdoors. @example carriageBolt("3/8 in").hotDipGalvanised() */
    public Bolt hotDipGalvanised() {
        return new Bolt(origin, diameter, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    /** The price of one bolt. @example carriageBolt("3/8 in").costs("2.70") */
    public Bolt costs(String each) {
        return new Bolt(origin, diameter, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.empty();
    }
}
