package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;

/**
 * A fitting with its place.
 *
 * @param count how many
 * @param on the placing it is fixed to, if said
 * @param side at which edge of it
 * @param opening the opening it runs around, for a strip
 * @param studs the wood of the wall it is screwed to, if said
 * @param load what all of them carry, if said
 * @group door and glazing
 */
public record Fitting(
        Origin origin,
        Item item,
        int count,
        Optional<Origin> on,
        Optional<Side> side,
        Optional<String> opening,
        Optional<String> studs,
        Optional<Load> load)
        implements Declaration {
    /** So many of them, 1 or more. @example fit(magneticCatch()).times(2).at(doorIn, RIGHT) */
    public Fitting times(int many) {
        return new Fitting(
                origin, item, SketchRun.atLeastOne(item.kind().words(), many), on, side, opening, studs, load);
    }

    /** At that edge of what is in place. @example fit(knob()).at(doorIn, RIGHT) */
    public Fitting at(Placing placing, Side edge) {
        return new Fitting(origin, item, count, Optional.of(placing.origin()), Optional.of(edge), opening, studs, load);
    }

    /** All round an opening, under what hangs over it. @example fit(weatherstrip(wide("3/8 in"), thick("3/16 in"))).around(doorIn, "doorway") */
    public Fitting around(Placing placing, String called) {
        return new Fitting(origin, item, count, Optional.of(placing.origin()), side, Optional.of(called), studs, load);
    }

    /**
     * Screwed to the studs of the wall behind, and what wood they are of.
     *
     * @example fit(fitting("shelf bracket").comesWith(woodScrew(10, "2 in"))).times(2).toStudsOf("spruce-pine-fir")
     */
    public Fitting toStudsOf(String species) {
        return new Fitting(origin, item, count, on, side, opening, Optional.of(species), load);
    }

    /**
     * All of them together carry so much weight, so far out from what they are screwed to.
     *
     * @example fit(fitting("shelf bracket").comesWith(woodScrew(10, "2 in")).screwsApart("9 in")).times(2)
     *     .toStudsOf("spruce-pine-fir").carrying("60 lb", "5 in")
     */
    public Fitting carrying(String weight, String out) {
        return new Fitting(
                origin,
                item,
                count,
                on,
                side,
                opening,
                studs,
                Optional.of(new Load(Mass.parse(weight), SketchRun.length(out))));
    }

    /** A weight and how far out it acts. */
    public record Load(Mass weight, Length out) {}
}
