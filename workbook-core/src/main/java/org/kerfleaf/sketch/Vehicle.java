package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;

/**
 * What brings sheets and boards home.
 *
 * @param name what it is
 * @param wideInside how wide a piece may be that lies flat in it, if said
 * @param longInside how long a piece may be, if said
 * @param onTheRoof what its roof may carry, if said
 * @group what we buy
 */
public record Vehicle(
        Origin origin, String name, Optional<Length> wideInside, Optional<Length> longInside, Optional<Mass> onTheRoof)
        implements Declaration {

    /** How wide a piece may be that lies flat inside: between the wheel arches, if it lies there. @example vehicle("van").wideInside("47 in").longInside("96 in") */
    public Vehicle wideInside(String clear) {
        return new Vehicle(origin, name, Optional.of(SketchRun.length(clear)), longInside, onTheRoof);
    }

    /** How long a piece may be inside, with the door shut. @example vehicle("van").wideInside("47 in").longInside("96 in") */
    public Vehicle longInside(String clear) {
        return new Vehicle(origin, name, wideInside, Optional.of(SketchRun.length(clear)), onTheRoof);
    }

    /** What its roof may carry, as its papers say, racks included. @example vehicle("station wagon").roofCarries("165 lb") */
    public Vehicle roofCarries(String most) {
        return new Vehicle(origin, name, wideInside, longInside, Optional.of(Mass.parse(most)));
    }
}
