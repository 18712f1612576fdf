package org.kerfleaf.rules;

import java.math.RoundingMode;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;

/** Whether boards have room to move across their grain. */
public final class MovementChecks {
    private static final String RULE = "Movement";
    private static final String SOURCE = "Wood Handbook FPL-GTR-190, ch. 13 (seen in a copy)";

    private MovementChecks() {}

    /**
     * Check 32: what boards side by side swell across their grain fits into the gap between them. Each is fixed in its middle,
     * so a gap takes half the movement of either neighbour.
     *
     * @param gap as they are laid
     * @param swells what one of them gets wider until it is dampest, zero if it only dries
     * @param opens what one of them gets narrower until it is driest, zero if it only swells
     * @param rings which way the growth rings lie, in words
     */
    public static Check movement(String of, Length gap, Length swells, Length opens, String rings, MeasureStyle style) {
        Held held = new Held(RULE, of, SOURCE, style);
        String dampest = swells.isZero()
                ? "it gets no damper than it is now"
                : "it swells %s when dampest".formatted(fine(swells, style));
        String driest = opens.isZero()
                ? ""
                : "; when driest it is %s narrower, and the gap opens to %s"
                        .formatted(fine(opens, style), fine(gap.plus(opens), style));
        return held.atMost(
                "A gap of %s; %s%s (%s).".formatted(Say.fine(gap, style), dampest, driest, rings),
                swells,
                gap,
                "Leave %s between the boards, or screw them through slots."
                        .formatted(Say.fine(roundedUp(swells, style), style)));
    }

    /** Check 32, where something it needs was not said. */
    public static Check movementNotKnown(String of, Length gap, String missing, MeasureStyle style) {
        return new Held(RULE, of, SOURCE, style)
                .notKnown(
                        "How much a gap of %s opens and closes with the seasons is not known."
                                .formatted(Say.fine(gap, style)),
                        missing);
    }

    private static Length roundedUp(Length swells, MeasureStyle style) {
        Length step = Say.rule(style, Length.ofSixtyFourths(2), Length.ofMillimetres(0.5));
        return swells.roundedTo(step, RoundingMode.CEILING);
    }

    /** A movement as the sentences say it: to ten-thousandths of an inch or 0.01 mm. */
    public static String fine(Length length, MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Say.number(length.inInches(), 4) + " in"
                : Say.number(length.inMillimetres(), 2) + " mm";
    }
}
