package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A wood screw of a gauge and length. @group what we buy */
public record Screw(Origin origin, int gauge, Length length, Metal metal, int packOf, Optional<Money> price)
        implements Fastener {
    private static final int THICKEST = 24;

    /** @throws SketchException if there is no such gauge, or it is not longer than nothing */
    public Screw {
        if (gauge < 0 || gauge > THICKEST) {
            throw new SketchException("A screw No. %d: No. 0 to No. %d would be right.".formatted(gauge, THICKEST));
        }
        SketchRun.positive("A screw", length);
    }

    /** Of stainless steel. @example woodScrew(8, "2 in").stainless() */
    public Screw stainless() {
        return new Screw(origin, gauge, length, Metal.STAINLESS, packOf, price);
    }

    /** Hot-dip galvanised: a thick coat of zinc, for outdoors. @example woodScrew(8, "2 in").hotDipGalvanised() */
    public Screw hotDipGalvanised() {
        return new Screw(origin, gauge, length, Metal.HOT_DIP_GALVANISED, packOf, price);
    }

    /** Plated: a thin coat of zinc, for indoors. @example woodScrew(8, "2 in").plated() */
    public Screw plated() {
        return new Screw(origin, gauge, length, Metal.PLATED, packOf, price);
    }

    /** Sold in boxes of so many. @example woodScrew(8, "2 in").box(100).costs("9.40") */
    public Screw box(int of) {
        return new Screw(origin, gauge, length, metal, SketchRun.atLeastOne("A box of screws", of), price);
    }

    /** The price of one box, or of one screw where no box was said. @example woodScrew(8, "2 in").box(100).costs("9.40") */
    public Screw costs(String each) {
        return new Screw(origin, gauge, length, metal, packOf, Optional.of(SketchRun.price(each)));
    }

    @Override
    public Optional<Length> said() {
        return Optional.of(length);
    }
}
