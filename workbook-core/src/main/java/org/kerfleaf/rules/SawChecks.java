package org.kerfleaf.rules;

import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.SawAngles;
import org.kerfleaf.saw.SawLimits;

/** Whether a saw can make its cuts, and whether it can be done with both hands on. */
public final class SawChecks {
    private static final Length HAND_INCHES = Length.ofInches(6);
    private static final Length HAND_MILLIMETRES = Length.ofMillimetres(150);
    private static final double RIGHT_DEGREES = 90;

    private SawChecks() {}

    /**
     * Check 23: the blade goes through the sheet at its tilt: thickness / cos tilt + 1/8 in is no more than the saw's depth
     * along the tilt.
     *
     * @param sawMaximum how far this saw's blade stands out of its base; empty for the usual 2 3/8 in of a 7 1/4 in blade
     */
    public static Check bladeDepth(
            String of, Length thickness, Angle tilt, Optional<Length> sawMaximum, MeasureStyle style) {
        Held held = new Held("Blade depth", of, Reason.COMMON_PRACTICE, style);
        Length needed = SawLimits.needed(thickness, tilt);
        Length most = sawMaximum.orElse(SawLimits.BLADE_DEPTH);
        boolean inches = style.unit() == LengthUnit.INCHES;
        String saw = sawMaximum.isPresent() ? "this saw" : inches ? "a 7 1/4 in blade" : "a 184 mm blade";
        return held.atMost(
                "Through %s at %s, and %s past it, %s stands out %s."
                        .formatted(
                                Say.fine(thickness, style),
                                tilt.in(style),
                                Say.fine(SawLimits.LEAST_PAST, style),
                                saw,
                                Say.fine(needed, style)),
                needed,
                most,
                "Cut from both faces, or on a larger saw.");
    }

    /** Check 24: the scale's number is within the saw's stop. */
    public static Check sawStop(String of, Angle scale, Angle stop, MeasureStyle style) {
        Held held = new Held("Saw stop", of, "geometry; stops of 45° to 60° are common practice", style);
        Angle left = stop.minus(scale);
        Angle complement = SawAngles.complement(scale).value();
        String advice = complement.compareTo(stop) <= 0
                ? "Turn the stock against a squared block and set %s.".formatted(complement.in(style))
                : "Cut it by hand to a line, or on a saw that turns further.";
        String much = new Angle(Math.abs(left.nanodegrees())).in(style);
        return held.level(
                "The scale is set to %s; the saw stops at %s.".formatted(scale.in(style), stop.in(style)),
                left.inDegrees() / Math.max(stop.inDegrees(), 1 / RIGHT_DEGREES),
                left.isZero() ? "nothing to spare" : much + " to spare",
                "past the stop by " + much,
                advice);
    }

    /** Check 26: the hand that holds the piece is 6 in (150 mm) or more from the blade. */
    public static Check shortPiece(String of, Length length, MeasureStyle style) {
        Held held = new Held("Short piece", of, Reason.COMMON_PRACTICE, style);
        return held.atLeast(
                "A piece of %s is held by hand while it is cut.".formatted(length.in(style)),
                length,
                Say.rule(style, HAND_INCHES, HAND_MILLIMETRES),
                "Cut it from long stock, and clamp it.");
    }
}
