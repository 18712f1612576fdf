package org.kerfleaf.saw;

import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/**
 * What a maker's saws can do at most; what was not said is what usual saws do. Common practice, no source.
 *
 * @param saidDepth how far the blade stands out of its base at most, along its tilt, if said
 * @param saidStop the largest number of the mitre scale, from square, if said
 */
public record SawLimits(Optional<Length> saidDepth, Optional<Angle> saidStop) {
    /**
     * How far a 7 1/4 in blade stands out of its base, along its tilt, at any tilt. Seen straight down that is about
     * 1 3/4 in at 45 degrees, as makers print it.
     */
    public static final Length BLADE_DEPTH = Length.ofSixtyFourths(152);

    /** The least a blade should go past the sheet. */
    public static final Length LEAST_PAST = Length.ofSixtyFourths(8);

    /** The largest number that mitre scales of all kinds go to. */
    public static final Angle SCALE_STOP = Angle.ofDegrees(45);

    /** The least blade depth that cuts through, along the tilt: thickness / cos tilt + 1/8 in. */
    public static Length needed(Length thickness, Angle tilt) {
        return tilt.lengthOver(thickness).plus(LEAST_PAST);
    }

    Length bladeDepth() {
        return saidDepth.orElse(BLADE_DEPTH);
    }

    String bladeWords() {
        return saidDepth.isPresent() ? "this saw" : "a 7 1/4 in (184 mm) blade";
    }

    Angle stop() {
        return saidStop.orElse(SCALE_STOP);
    }

    String stopWords() {
        return saidStop.isPresent() ? "this saw stops" : "many saws stop, at 45°";
    }
}
