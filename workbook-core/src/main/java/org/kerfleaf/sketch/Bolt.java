package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A carriage bolt of a diameter; its length follows from what it goes through. */
public record Bolt(Origin origin, Length diameter, Metal metal, int packOf, Optional<Money> price) implements Fastener {
    public Bolt stainless() {
        return new Bolt(origin, diameter, Metal.STAINLESS, packOf, price);
    }

    public Bolt hotDipGalvanised() {
        return new Bolt(origin, diameter, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    public Bolt costs(String each) {
        return new Bolt(origin, diameter, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.empty();
    }
}
