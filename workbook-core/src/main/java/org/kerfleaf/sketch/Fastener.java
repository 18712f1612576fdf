package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/** A screw, nail, bolt or lag screw that can be bought. */
public sealed interface Fastener extends Declaration permits Screw, Nail, Bolt, Lag {
    /** What it is made of or coated with. */
    Metal metal();

    /** How many one pack holds, 1 for loose pieces. */
    int packOf();

    /** Price of one pack, if said. */
    Optional<Money> price();

    /** Its length, if it was said; a bolt's follows from what it goes through. */
    Optional<Length> said();
}
