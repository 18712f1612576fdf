package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A pane put into a part.
 *
 * @param pane the pane's name
 * @param into the placings it goes into: one part with an opening, or all boards of a frame; empty if not said
 * @param bedding what it lies on, if said
 * @param beads what holds it, if said
 * @param squared whether the pocket's corners are squared after routing
 * @group door and glazing
 */
public record Glazing(
        Origin origin, String pane, List<Origin> into, Optional<Item> bedding, Optional<Item> beads, boolean squared)
        implements Declaration {
    public Glazing {
        into = List.copyOf(into);
    }

    /** Into the opening of one part, or into the rabbet of a frame of boards. @example glaze(pane).into(doorIn) */
    public Glazing into(Placing... placings) {
        List<Origin> all = Arrays.stream(placings).map(Placing::origin).toList();
        return new Glazing(origin, pane, all, bedding, beads, squared);
    }

    /** What it lies on. @example glaze(pane).into(doorIn).bedded(glazingTape("1/16 in")) */
    public Glazing bedded(Item tape) {
        return new Glazing(origin, pane, into, Optional.of(tape), beads, squared);
    }

    /** What holds it in. @example glaze(pane).into(doorIn).held(beads("3/8 in")) */
    public Glazing held(Item by) {
        return new Glazing(origin, pane, into, bedding, Optional.of(by), squared);
    }

    /** The corners that the router leaves round are squared with a chisel. @example glaze(pane).into(doorIn).cornersSquared() */
    public Glazing cornersSquared() {
        return new Glazing(origin, pane, into, bedding, beads, true);
    }
}
