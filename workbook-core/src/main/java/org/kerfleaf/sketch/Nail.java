package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A finish nail of a length. */
public record Nail(Origin origin, Length length, Metal metal, int packOf, Optional<Money> price) implements Fastener {
    public Nail stainless() {
        return new Nail(origin, length, Metal.STAINLESS, packOf, price);
    }

    public Nail hotDipGalvanised() {
        return new Nail(origin, length, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    public Nail box(int of) {
        return new Nail(origin, length, metal, SketchRun.atLeastOne("A box of nails", of), price);
    }

    public Nail costs(String each) {
        return new Nail(origin, length, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.of(length);
    }
}
