package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/**
 * A nail of a length.
 *
 * @param sort what it is asked for by in the shop: {@code finish nail}, {@code common nail 8d}
 * @param diameter of its shank, if it is known
 * @group what we buy
 */
public record Nail(
        Origin origin,
        String sort,
        Length length,
        Optional<Length> diameter,
        Metal metal,
        int packOf,
        Optional<Money> price)
        implements Fastener {
    /** @throws SketchException if it is not longer than nothing */
    public Nail {
        SketchRun.positive("A nail", length);
    }

    /** A nail of which its sort and its length are said, and its diameter if that is known. */
    public static Nail of(Origin origin, String sort, Length length, Optional<Length> diameter) {
        return new Nail(origin, sort, length, diameter, Metal.NOT_SAID, 1, Optional.empty());
    }

    /** A common nail by its penny: {@code 8d}. @throws SketchException for one that is not made */
    public static Nail common(Origin origin, String penny) {
        return CommonNails.of(origin, penny);
    }

    /** Of stainless steel. @example finishNail("1 1/2 in").stainless() */
    public Nail stainless() {
        return new Nail(origin, sort, length, diameter, Metal.STAINLESS, packOf, price);
    }

    /** Hot-dip galvanised: a thick coat of zinc, for outdoors. @example finishNail("1 1/2 in").hotDipGalvanised() */
    public Nail hotDipGalvanised() {
        return new Nail(origin, sort, length, diameter, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    /** Sold in boxes of so many. @example finishNail("1 1/2 in").box(50).costs("5.80") */
    public Nail box(int of) {
        return new Nail(origin, sort, length, diameter, metal, SketchRun.atLeastOne("A box of nails", of), price);
    }

    /** The price of one box, or of one nail where no box was said. @example finishNail("1 1/2 in").box(50).costs("5.80") */
    public Nail costs(String each) {
        return new Nail(origin, sort, length, diameter, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.of(length);
    }
}
