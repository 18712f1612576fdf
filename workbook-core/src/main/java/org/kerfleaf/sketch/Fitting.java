package org.kerfleaf.sketch;

import java.util.Optional;

/**
 * A fitting with its place.
 *
 * @param count how many
 * @param on the placing it is fixed to, if said
 * @param side at which edge of it
 * @param opening the opening it runs around, for a strip
 * @group door and glazing
 */
public record Fitting(
        Origin origin, Item item, int count, Optional<Origin> on, Optional<Side> side, Optional<String> opening)
        implements Declaration {
    /** So many of them, 1 or more. @example fit(magneticCatch()).times(2).at(doorIn, RIGHT) */
    public Fitting times(int many) {
        return new Fitting(origin, item, SketchRun.atLeastOne(item.kind().words(), many), on, side, opening);
    }

    /** At that edge of what is in place. @example fit(knob()).at(doorIn, RIGHT) */
    public Fitting at(Placing placing, Side edge) {
        return new Fitting(origin, item, count, Optional.of(placing.origin()), Optional.of(edge), opening);
    }

    /** All round an opening, under what hangs over it. @example fit(weatherstrip(wide("3/8 in"), thick("3/16 in"))).around(doorIn, "doorway") */
    public Fitting around(Placing placing, String called) {
        return new Fitting(origin, item, count, Optional.of(placing.origin()), side, Optional.of(called));
    }
}
