package org.kerfleaf.rules;

import java.util.Optional;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.reason.Reason;

/** Whether wood is dry enough for paint, and whether it is warm enough for paint, caulk and glue. */
public final class DryChecks {
    private static final String DRY = "Dry enough to paint";
    private static final String WARM = "Warm enough";
    private static final String DRY_SOURCE = "Wood Handbook FPL-GTR-190, ch. 16 (from memory)";
    private static final double WETTEST = 20;

    private DryChecks() {}

    /**
     * Check 36: what is painted holds 20 % of water or less.
     *
     * @param moisture when it is painted; empty if that was not said
     * @param preserved whether it is treated wood, which is dry when a drop of water soaks in
     * @param drinks whether a drop was said to soak in
     */
    public static Check dryEnough(
            String of, Optional<Percent> moisture, boolean preserved, boolean drinks, MeasureStyle style) {
        Held held = new Held(DRY, of, DRY_SOURCE, style);
        if (moisture.isPresent()) {
            double left = WETTEST - moisture.get().number();
            Check byMeter = held.level(
                    "It is painted at %s; up to 20 %% paint holds."
                            .formatted(moisture.get().in(style)),
                    left / WETTEST,
                    left == 0 ? "nothing to spare" : Percent.of(left).in(style) + " to spare",
                    "over by " + Percent.of(-left).in(style),
                    "Let it dry, stacked with strips between and out of the rain, and measure again.");
            if (byMeter.verdict() == Check.Verdict.SHORT || !preserved || drinks) {
                return byMeter;
            }
        }
        if (preserved) {
            return drinks
                    ? held.holds("It is treated, and a drop of water soaks in.")
                    : held.notKnown(
                            "It is treated, and may be wet with what it was treated with for weeks.",
                            "Wait until a drop of water soaks in, then say .dropSoaksIn().");
        }
        return held.notKnown(
                "How damp it is when it is painted was not said.",
                "Hold a moisture meter to it and say .moisture(\"12 %\").");
    }

    /**
     * Check 37: it gets no colder than what is used there stands, from its use until it has dried.
     *
     * @param coldest in the steps that use it; empty if that was not said of one of them
     * @param least the coldest it stands; empty if its maker's was not said and none is usual
     * @param source of that least
     */
    public static Check warmEnough(
            String of, Optional<Temperature> coldest, Optional<Temperature> least, String source, MeasureStyle style) {
        Held held = new Held(WARM, of, source, style);
        if (coldest.isEmpty() || least.isEmpty()) {
            return held.notKnown(
                    coldest.isEmpty()
                            ? "How cold it gets where it is used, until it has dried, was not said."
                            : "How cold it may be was not said.",
                    coldest.isEmpty()
                            ? "Say coldest(\"50 F\") in the step, of the night after it too."
                            : "Read it on the can and say .notBelow(\"50 F\").");
        }
        double spare = coldest.get().celsius() - least.get().celsius();
        String much = degrees(Math.abs(spare), style);
        return held.level(
                "It gets down to %s; it stands %s."
                        .formatted(coldest.get().in(style), least.get().in(style)),
                spare / 10,
                spare == 0 ? "nothing to spare" : much + " to spare",
                "too cold by " + much,
                "Wait for a warmer day and night, or take the work indoors.");
    }

    private static String degrees(double kelvin, MeasureStyle style) {
        boolean fahrenheit = style.unit() == LengthUnit.INCHES;
        return Say.number(fahrenheit ? kelvin * 9 / 5 : kelvin, 1) + (fahrenheit ? " °F" : " °C");
    }

    /** Where the least temperature is what its maker says. */
    public static String byItsMaker() {
        return "its maker, as said in the workbook";
    }

    /** Where it is what is usual for its kind. */
    public static String usual() {
        return "usual for its kind: " + Reason.COMMON_PRACTICE;
    }
}
