package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A finish nail of a length. @group what we buy */
public record Nail(Origin origin, Length length, Metal metal, int packOf, Optional<Money> price) implements Fastener {
    /** @throws SketchException if it is not longer than nothing */
    public Nail {
        SketchRun.positive("A nail", length);
    }

    /** Of stainless steel. @example finishNail("1 1/2 in").stainless() */
    public Nail stainless() {
        return new Nail(origin, length, Metal.STAINLESS, packOf, price);
    }

    /** Hot-dip galvanised: a thick coat of zinc, for outdoors. @example finishNail("1 1/2 in").hotDipGalvanised() */
    public Nail hotDipGalvanised() {
        return new Nail(origin, length, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    /** Sold in boxes of so many. @example finishNail("1 1/2 in").box(50).costs("5.80") */
    public Nail box(int of) {
        return new Nail(origin, length, metal, SketchRun.atLeastOne("A box of nails", of), price);
    }

    /** The price of one box, or of one nail where no box was said. @example finishNail("1 1/2 in").box(50).costs("5.80") */
    public Nail costs(String each) {
        return new Nail(origin, length, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.of(length);
    }
}
