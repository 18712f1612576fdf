package org.kerfleaf.rules;

import java.util.Optional;
import org.kerfleaf.joint.DoorSwing;
import org.kerfleaf.joint.ScrewLengths;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether a door turns, closes tight and stays on its hinges. */
public final class DoorChecks {
    private static final String SQUEEZE_SOURCE = "seal makers (seen in a copy); common practice";
    private static final Length GAP_INCHES = Length.ofSixtyFourths(4);
    private static final Length GAP_MILLIMETRES = Length.ofMillimetres(1.5);
    private static final Length TWO_HINGES_INCHES = Length.ofInches(40);
    private static final Length TWO_HINGES_MILLIMETRES = Length.ofMillimetres(1000);
    private static final double LEAST_SQUEEZE = 0.25;
    private static final double MOST_SQUEEZE = 0.50;
    private static final double GOOD_SQUEEZE = 1.0 / 3;

    private DoorChecks() {}

    /** Check 44: an inset door's gap, less paint on both edges and what the wood swells, is 1/16 in (1.5 mm) or more. */
    public static Check doorGap(String of, Length gap, Length paintFilm, Length swelling, MeasureStyle style) {
        Held held = new Held("Door gap", of, Reason.COMMON_PRACTICE, style);
        Length wanted = Say.rule(style, GAP_INCHES, GAP_MILLIMETRES);
        return held.atLeast(
                "A gap of %s, less %s of paint and %s of swelling, leaves %s."
                        .formatted(
                                Say.fine(gap, style),
                                Say.fine(paintFilm, style),
                                Say.fine(swelling, style),
                                Say.fine(gap.minus(paintFilm, swelling), style)),
                gap.minus(paintFilm, swelling),
                wanted,
                "A gap of %s would leave enough; plane the door or cut it narrower."
                        .formatted(Say.fine(wanted.plus(paintFilm, swelling), style)));
    }

    /** Check 44, where nothing says how much the boards of a door swell. */
    public static Check doorGapNotKnown(String of, Length gap, String missing, MeasureStyle style) {
        return new Held("Door gap", of, Reason.COMMON_PRACTICE, style)
                .notKnown(
                        "How much of a gap of %s its boards swell into is not known.".formatted(Say.fine(gap, style)),
                        missing);
    }

    /** Check 45: an inset door's back edge passes its jamb: gap ≥ thickness² / (2 · width). */
    public static Check backEdge(String of, Length gap, Length thickness, Length width, MeasureStyle style) {
        Held held = new Held("Back edge", of, Reason.GEOMETRY, style);
        Length room = DoorSwing.backEdgeRoom(thickness, width).value();
        return held.atLeast(
                "A door %s thick and %s wide swings past a gap of %s."
                        .formatted(Say.fine(thickness, style), width.in(style), Say.fine(gap, style)),
                gap,
                room,
                "Bevel the back edge 2° to 3°, or leave %s.".formatted(Say.fine(room, style)));
    }

    /**
     * Check 47: a weatherstrip is squeezed by 25 to 50 %. The level is 1 in the middle and 0 at either end.
     *
     * @param strip its thickness before
     * @param standOff what the shut door leaves it
     * @return not known where one of them was not said
     */
    public static Check stripSqueeze(String of, Optional<Length> strip, Optional<Length> standOff, MeasureStyle style) {
        if (strip.isPresent() && standOff.isPresent()) {
            return stripSqueeze(of, strip.get(), standOff.get(), style);
        }
        return new Held("Strip squeeze", of, SQUEEZE_SOURCE, style)
                .notKnown(
                        strip.isPresent()
                                ? "How far the shut door squeezes the strip was not said."
                                : "How thick the strip is was not said.",
                        strip.isPresent()
                                ? "Say squeezedTo(...): what the shut door leaves the strip, two thirds of its thickness, say."
                                : "Say thick(...) of the strip.");
    }

    static Check stripSqueeze(String of, Length strip, Length standOff, MeasureStyle style) {
        Held held = new Held("Strip squeeze", of, SQUEEZE_SOURCE, style);
        double squeeze = 1 - standOff.dividedBy(strip);
        double left = Math.min(squeeze - LEAST_SQUEEZE, MOST_SQUEEZE - squeeze);
        String good = Say.fine(strip.times(1 - GOOD_SQUEEZE), style);
        boolean tooMuch = squeeze > MOST_SQUEEZE;
        return held.level(
                "A strip of %s squeezed to %s is squeezed by %s. Wanted: 25 to 50 %%."
                        .formatted(Say.fine(strip, style), Say.fine(standOff, style), Say.percent(squeeze)),
                left / ((MOST_SQUEEZE - LEAST_SQUEEZE) / 2),
                Say.percent(left) + " to spare",
                "off by " + Say.percent(-left),
                tooMuch
                        ? "It will not latch. A stand-off of %s squeezes it by a third.".formatted(good)
                        : "It will leak. A stand-off of %s squeezes it by a third.".formatted(good));
    }

    /** Check 48: a hinge's screws end 1/16 in (1.5 mm) inside the door. */
    public static Check hingeScrews(String of, Length screw, Length door, MeasureStyle style) {
        Held held = new Held("Hinge screws", of, Reason.COMMON_PRACTICE, style);
        Length most = door.minus(Say.rule(style, GAP_INCHES, GAP_MILLIMETRES));
        return held.atMost(
                "Hinge screws of %s go into a door of %s.".formatted(Say.fine(screw, style), Say.fine(door, style)),
                screw,
                most,
                ScrewLengths.atMost(most, style.unit())
                        .map(length -> "A %s screw would stay inside.".formatted(length.in(style)))
                        .orElse("A thicker door, or bolts right through, would hold."));
    }

    /** Check 48: two hinges up to a door of 40 in (1 m), three above. */
    public static Check hinges(String of, int hinges, Length doorHeight, MeasureStyle style) {
        Held held = new Held("Hinges", of, Reason.COMMON_PRACTICE, style);
        Length two = Say.rule(style, TWO_HINGES_INCHES, TWO_HINGES_MILLIMETRES);
        int wanted = doorHeight.isLongerThan(two) ? 3 : 2;
        return held.level(
                "A door %s high has %d hinges. Wanted: %d.".formatted(doorHeight.in(style), hinges, wanted),
                (hinges - wanted) / (double) wanted,
                hinges == wanted ? "nothing to spare" : (hinges - wanted) + " to spare",
                "short by " + (wanted - hinges),
                "%d hinges would carry it.".formatted(wanted));
    }
}
