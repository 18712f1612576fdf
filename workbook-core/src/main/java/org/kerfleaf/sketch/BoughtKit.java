package org.kerfleaf.sketch;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A kit that could be bought instead.
 *
 * @param lacks what it leaves out that this build has
 * @group the work
 */
public record BoughtKit(Origin origin, String name, Optional<Money> price, Optional<Money> freight, List<String> lacks)
        implements Declaration {
    public BoughtKit {
        lacks = List.copyOf(lacks);
    }

    /** The kit's price. @example boughtKit("A ready-made shelf").costs("129.00") */
    public BoughtKit costs(String each) {
        return new BoughtKit(origin, name, Optional.of(SketchRun.price(each)), freight, lacks);
    }

    /** What it costs to have it brought. @example boughtKit("A ready-made shelf").costs("129.00").freight("48.00") */
    public BoughtKit freight(String each) {
        return new BoughtKit(origin, name, price, Optional.of(SketchRun.price(each)), lacks);
    }

    /** What it leaves out that this build has. @example boughtKit("A ready-made shelf").costs("129.00").lacks("post", "paint") */
    public BoughtKit lacks(String... things) {
        return new BoughtKit(origin, name, price, freight, List.of(things));
    }
}
