package org.kerfleaf.sketch;

import java.util.Optional;

/**
 * A pane put into a part.
 *
 * @param pane the pane's name
 * @param into the placing it goes into, if said
 * @param bedding what it lies on, if said
 * @param beads what holds it, if said
 */
public record Glazing(Origin origin, String pane, Optional<Origin> into, Optional<Item> bedding, Optional<Item> beads)
        implements Declaration {
    public Glazing into(Placing placing) {
        return new Glazing(origin, pane, Optional.of(placing.origin()), bedding, beads);
    }

    public Glazing bedded(Item tape) {
        return new Glazing(origin, pane, into, Optional.of(tape), beads);
    }

    public Glazing held(Item by) {
        return new Glazing(origin, pane, into, bedding, Optional.of(by));
    }
}
