package org.kerfleaf.saw;

import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/** What usual saws can do; a maker's own saw may do more or less. Common practice, no source. */
public final class SawLimits {
    /**
     * How far a 7 1/4 in blade stands out of its base, along its tilt, at any tilt. Seen straight down that is about
     * 1 3/4 in at 45 degrees, as makers print it.
     */
    public static final Length BLADE_DEPTH = Length.ofSixtyFourths(152);

    /** The least a blade should go past the sheet. */
    public static final Length LEAST_PAST = Length.ofSixtyFourths(8);

    /** The largest number many mitre scales go to. */
    public static final Angle SCALE_STOP = Angle.ofDegrees(45);

    private SawLimits() {}

    /** The least blade depth that cuts through, along the tilt: thickness / cos tilt + 1/8 in. */
    public static Length needed(Length thickness, Angle tilt) {
        return tilt.lengthOver(thickness).plus(LEAST_PAST);
    }
}
