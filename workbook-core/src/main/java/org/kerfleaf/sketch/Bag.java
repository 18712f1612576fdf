package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Mass;

/**
 * A bag of dry mix.
 *
 * @param holds its mass
 * @param price of one, if said
 * @group the place
 */
public record Bag(Mass holds, Optional<Money> price) {
    /** The price of one bag. @example dig(across("10 in"), deep("36 in")).setInConcrete(bag("60 lb").costs("5.80")) */
    public Bag costs(String each) {
        return new Bag(holds, Optional.of(SketchRun.price(each)));
    }
}
