package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A wood screw of a gauge and length. */
public record Screw(Origin origin, int gauge, Length length, Metal metal, int packOf, Optional<Money> price)
        implements Fastener {
    public Screw stainless() {
        return new Screw(origin, gauge, length, Metal.STAINLESS, packOf, price);
    }

    public Screw hotDipGalvanised() {
        return new Screw(origin, gauge, length, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    public Screw plated() {
        return new Screw(origin, gauge, length, Metal.PLATED, packOf, price);
    }

    /** Sold in boxes of so many. */
    public Screw box(int of) {
        return new Screw(origin, gauge, length, metal, SketchRun.atLeastOne("A box of screws", of), price);
    }

    public Screw costs(String each) {
        return new Screw(origin, gauge, length, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.of(length);
    }
}
