package org.kerfleaf.rules;

import java.math.RoundingMode;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Hands;

/** Whether enough is left of a part once it is cut, and whether a roof covers what is under it. */
public final class PartChecks {
    private static final Length LIP_INCHES = Length.ofSixtyFourths(16);
    private static final Length LIP_MILLIMETRES = Length.ofMillimetres(6);
    private static final Length BITE_INCHES = Length.ofSixtyFourths(8);
    private static final Length BITE_MILLIMETRES = Length.ofMillimetres(3);
    private static final Length FRAME_INCHES = Length.ofInches(2);
    private static final Length FRAME_MILLIMETRES = Length.ofMillimetres(50);
    private static final Length CAP_INCHES = Length.ofSixtyFourths(96);
    private static final Length CAP_MILLIMETRES = Length.ofMillimetres(38);
    private static final Length COVER_INCHES = Length.ofInches(1);
    private static final Length COVER_MILLIMETRES = Length.ofMillimetres(25);

    private PartChecks() {}

    /** Check 27: what a rabbet leaves of the sheet is 1/4 in (6 mm) and a third of it, whichever is more. */
    public static Check rabbetLip(String of, Length thickness, Length depth, MeasureStyle style) {
        Held held = new Held("Rabbet lip", of, Reason.COMMON_PRACTICE, style);
        Length wanted = Say.rule(style, LIP_INCHES, LIP_MILLIMETRES).max(thickness.dividedBy(3));
        Length left = thickness.minus(depth);
        return held.atLeast(
                "A rabbet %s deep in %s leaves a lip of %s."
                        .formatted(Say.fine(depth, style), Say.fine(thickness, style), Say.fine(left, style)),
                left,
                wanted,
                "A rabbet %s deep would leave enough; take a thinner bead."
                        .formatted(Say.fine(thickness.minus(wanted), style)));
    }

    /** Check 28: a router takes 1/8 in (3 mm) of depth in one pass; more is cut in so many passes. */
    public static Check routerBite(String of, Length depth, int passes, MeasureStyle style) {
        Held held = new Held("Router bite", of, "tool makers' manuals (seen in a copy)", style);
        Length most = Say.rule(style, BITE_INCHES, BITE_MILLIMETRES);
        long enough = depth.roundedTo(most, RoundingMode.CEILING).nanometres() / most.nanometres();
        return held.atMost(
                "%s deep in %d %s takes %s at a time."
                        .formatted(
                                Say.fine(depth, style),
                                passes,
                                passes == 1 ? "pass" : "passes",
                                Say.fine(depth.dividedBy(passes), style)),
                depth.dividedBy(passes),
                most,
                "%d passes would do.".formatted(enough));
    }

    /**
     * A pair out of one blank with one sloping cut is twice the same piece: as left and right it does only where the piece may be
     * turned over. Geometry.
     */
    public static Check handsFromOneBlank(String of, Hands hands, MeasureStyle style) {
        Held held = new Held("Hands from one blank", of, Reason.GEOMETRY, style);
        return switch (hands) {
            case EQUAL -> held.holds("Left and right are one and the same piece.");
            case TURNED_OVER ->
                held.holds("One of the two is turned over: outside, one shows the face that the other shows inside."
                        + " Where only one face is good, say .pair() instead.");
            case LEFT_AND_RIGHT ->
                held.falls(
                        "Left and right are mirrored, and one blank gives two of the same hand.",
                        "Say .pair(): then each is laid out on its own.");
        };
    }

    /** Check 30: the narrowest rail or stile left beside an opening is 2 in (50 mm). */
    public static Check frameLeft(String of, Length narrowest, MeasureStyle style) {
        Held held = new Held("Frame left", of, Reason.COMMON_PRACTICE, style);
        return held.atLeast(
                "The narrowest side left is %s.".formatted(Say.fine(narrowest, style)),
                narrowest,
                Say.rule(style, FRAME_INCHES, FRAME_MILLIMETRES),
                "A smaller opening would leave enough.");
    }

    /**
     * Check 40: a ridge is covered: each leg of the cap reaches half the gap at the top and 1 1/2 in (38 mm) more. Square edges
     * leave 2 · t · sin slope open at the top, bevelled ones nothing.
     *
     * @param capLeg how far the cap reaches on each side of the ridge; empty if not said
     */
    public static Check ridge(
            String of, Length thickness, Angle slope, boolean bevelled, Optional<Length> capLeg, MeasureStyle style) {
        Held held = new Held("Ridge", of, "geometry; 1 1/2 in beyond the gap is common practice", style);
        Length gap = bevelled ? Length.ZERO : slope.drop(thickness).times(2L);
        Length wanted = gap.half().plus(Say.rule(style, CAP_INCHES, CAP_MILLIMETRES));
        String edges = bevelled
                ? "Bevelled edges close the ridge."
                : "Square edges leave %s open at the top.".formatted(Say.fine(gap, style));
        return capLeg.map(leg -> held.atLeast(
                        edges + " The cap reaches %s on each side.".formatted(Say.fine(leg, style)),
                        leg,
                        wanted,
                        "A cap that reaches %s on each side would cover it.".formatted(Say.fine(wanted, style))))
                .orElseGet(() -> held.notKnown(
                        edges + " How far the cap reaches was not said.",
                        "Take a cap that reaches %s or more on each side.".formatted(Say.fine(wanted, style))));
    }

    /**
     * Check 41: the roof reaches 1 in (25 mm) past whatever stands furthest out under it.
     *
     * @param furthestWords what that is: {@code the door's face}
     * @param furthest how far it stands out, from the same face the overhang is measured from
     */
    public static Check eaveCover(
            String of, Length overhang, String furthestWords, Length furthest, MeasureStyle style) {
        Held held = new Held("Eave cover", of, Reason.COMMON_PRACTICE, style);
        Length cover = overhang.minus(furthest);
        Length wanted = Say.rule(style, COVER_INCHES, COVER_MILLIMETRES);
        return held.atLeast(
                "The roof reaches out %s, %s %s: %s past it."
                        .formatted(
                                Say.fine(overhang, style),
                                furthestWords,
                                Say.fine(furthest, style),
                                Say.fine(cover, style)),
                cover,
                wanted,
                "An overhang of %s would cover it.".formatted(Say.fine(furthest.plus(wanted), style)));
    }
}
