package org.kerfleaf.rules;

import java.util.Locale;
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
    private static final Length ROOM_INCHES = Length.ofSixtyFourths(8);
    private static final Length ROOM_MILLIMETRES = Length.ofMillimetres(3);
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

    /** Check 23 where no saw was said: whether one goes through is not known. */
    public static Check bladeDepthNotKnown(String of, Length thickness, Angle tilt, MeasureStyle style) {
        return new Held("Blade depth", of, Reason.COMMON_PRACTICE, style)
                .notKnown(
                        "Through %s at %s, and %s past it, a blade stands out %s. Which saw cuts it was not said."
                                .formatted(
                                        Say.fine(thickness, style),
                                        tilt.in(style),
                                        Say.fine(SawLimits.LEAST_PAST, style),
                                        Say.fine(SawLimits.needed(thickness, tilt), style)),
                        "Say circularSaw() or tableSaw(), and how deep it cuts.");
    }

    /**
     * Check 24: the scale's number is within the saw's stop.
     *
     * @param said where this saw stops; empty for 45°, which all kinds reach: beyond it nothing is known then
     */
    public static Check sawStop(String of, Angle scale, Optional<Angle> said, MeasureStyle style) {
        Held held = new Held("Saw stop", of, "geometry; stops of 45° to 60° are common practice", style);
        Angle stop = said.orElse(SawLimits.SCALE_STOP);
        Angle left = stop.minus(scale);
        Angle complement = SawAngles.complement(scale).value();
        String advice = complement.compareTo(stop) <= 0
                ? "Turn the stock against a squared block and set %s.".formatted(complement.in(style))
                : "Cut it by hand to a line, or on a saw that turns further.";
        String stops = said.isPresent()
                ? "the saw stops at %s.".formatted(stop.in(style))
                : "where this saw stops was not said, and many stop at %s.".formatted(stop.in(style));
        String result = "The scale is set to %s; %s".formatted(scale.in(style), stops);
        if (said.isEmpty() && left.nanodegrees() < 0) {
            return held.notKnown(result, "Say mitreSaw().stopsAt(...). If it stops before: " + lower(advice));
        }
        String much = new Angle(Math.abs(left.nanodegrees())).in(style);
        return held.level(
                result,
                left.inDegrees() / Math.max(stop.inDegrees(), 1 / RIGHT_DEGREES),
                left.isZero() ? "nothing to spare" : much + " to spare",
                "past the stop by " + much,
                advice);
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    /**
     * Check 31: a start hole is 1/8 in (3 mm) wider than the jigsaw's blade.
     *
     * @param hole what is drilled, if known
     * @param blade how wide the jigsaw's blade is, if said
     */
    public static Check startHole(String of, Optional<Length> hole, Optional<Length> blade, MeasureStyle style) {
        Held held = new Held("Start hole", of, Reason.COMMON_PRACTICE, style);
        Length room = Say.rule(style, ROOM_INCHES, ROOM_MILLIMETRES);
        if (blade.isEmpty() || hole.isEmpty()) {
            String bit = hole.map(h -> "A hole of %s makes its corners. ".formatted(Say.fine(h, style)))
                    .orElse("");
            return held.notKnown(
                    bit + "How wide the jigsaw's blade is was not said.",
                    "Say jigsaw().blade(...). The hole is %s wider than the blade.".formatted(Say.fine(room, style)));
        }
        Length wanted = blade.get().plus(room);
        return held.atLeast(
                "A blade of %s starts in a hole of %s."
                        .formatted(Say.fine(blade.get(), style), Say.fine(hole.get(), style)),
                hole.get(),
                wanted,
                "Start from a bit of %s in the middle of the waste, or with a narrower blade."
                        .formatted(Say.fine(wanted, style)));
    }

    /**
     * Check 25: two bevelled edges have a cut each; out of one cut, one of them leans the wrong way.
     *
     * @param oneCut whether both were said to come out of one cut
     * @param mitre how far the cut is off square in the sheet; 0 for an edge that is only bevelled
     * @param kerf of an upright cut, if said: two cuts lie 2 · kerf / cos tilt / cos mitre apart, along the strip
     */
    public static Check sharedBevel(
            String of, boolean oneCut, Angle tilt, Angle mitre, Optional<Length> kerf, MeasureStyle style) {
        Held held = new Held("Shared bevel cut", of, Reason.GEOMETRY, style);
        String bevel = "edges bevelled " + tilt.in(style);
        if (kerf.isEmpty()) {
            return held.notKnown(
                    "Two %s need two cuts; how much those take is not known.".formatted(bevel),
                    "Measure the width of a cut and say it: circularSaw().kerf(...).");
        }
        Length apart = mitre.lengthOver(tilt.lengthOver(kerf.get()).times(2L));
        return oneCut
                ? held.falls(
                        "Two %s cannot come out of one cut: with both long faces up, one of them leans the wrong way."
                                .formatted(bevel),
                        "Give each a cut of its own, %s apart (2 · kerf / cos tilt / cos mitre): say .pair() instead."
                                .formatted(Say.fine(apart, style)))
                : held.holds(
                        "Each of the %s has a cut of its own; laid with both long faces up they are %s apart, two kerfs at"
                                        .formatted(bevel, Say.fine(apart, style))
                                + " that tilt.");
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
