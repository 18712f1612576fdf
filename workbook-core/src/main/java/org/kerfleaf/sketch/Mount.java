package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * One finished build moved onto another.
 *
 * @param what the placing by which the build is held
 * @param onTopOf the placing it comes to stand on, if said
 * @param restsOn the placings on whose sloping edges it comes to lie, if said
 * @param flushAt the side on which its end is in line with what it lies on, if said; else it is in the middle
 * @param past how far it goes past that side, measured along the slope
 * @param liftedFrom how high its underside stood before it was lifted, if said
 * @group placing
 */
public record Mount(
        Origin origin,
        Origin what,
        Optional<Origin> onTopOf,
        List<Origin> restsOn,
        Optional<Side> flushAt,
        Length past,
        Optional<Length> liftedFrom)
        implements Declaration {
    public Mount {
        restsOn = List.copyOf(restsOn);
    }

    /** Standing on top of that. @example mount(floorIn).onTopOf(postIn) */
    public Mount onTopOf(Placing other) {
        return new Mount(origin, what, Optional.of(other.origin()), restsOn, flushAt, past, liftedFrom);
    }

    /** Lying on the sloping edges of these. @example mount(lidIn).restsOn(lowSidesIn) */
    public Mount restsOn(Placing... supports) {
        List<Origin> on = Arrays.stream(supports).map(Placing::origin).toList();
        return new Mount(origin, what, onTopOf, on, flushAt, past, liftedFrom);
    }

    /** Its end on that side is in line with what it lies on. @example mount(lidIn).restsOn(lowSidesIn).flushAt(FRONT) */
    public Mount flushAt(Side side) {
        return past(side, Length.ZERO);
    }

    /**
     * Its end on that side goes so far past what it lies on, measured along the slope.
     *
     * @example mount(lidIn).restsOn(lowSidesIn).past(FRONT, "1 in")
     */
    public Mount past(Side side, String by) {
        return past(side, SketchRun.length(by));
    }

    /** Its end on that side goes so far past what it lies on, measured along the slope. */
    public Mount past(Side side, Length by) {
        return new Mount(origin, what, onTopOf, restsOn, Optional.of(side), by, liftedFrom);
    }

    /** How high its underside stands before it is lifted: on the ground, on trestles. @example mount(floorIn).onTopOf(postIn).liftedFrom("30 in") */
    public Mount liftedFrom(String height) {
        return new Mount(origin, what, onTopOf, restsOn, flushAt, past, Optional.of(SketchRun.length(height)));
    }

    /**
     * In the middle of it, left to right and front to back; where nothing else is said it is anyway.
     *
     * @example mount(floorIn).onTopOf(postIn).centred()
     */
    public Mount centred() {
        return this;
    }
}
