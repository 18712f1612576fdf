package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;

/**
 * A tool that what is saved might pay for.
 *
 * @param price of it, if said
 * @group the work
 */
public record Tool(Origin origin, String name, Optional<Money> price) implements Declaration {
    /** The tool's price. @example tool("Track saw").costs("389.00") */
    public Tool costs(String each) {
        return new Tool(origin, name, Optional.of(SketchRun.price(each)));
    }
}
