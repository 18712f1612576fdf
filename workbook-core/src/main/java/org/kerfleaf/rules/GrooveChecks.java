package org.kerfleaf.rules;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether what stands in a groove goes in without force and does not wobble there. */
public final class GrooveChecks {
    private static final Length LEAST_INCHES = Length.ofInches(0.004);
    private static final Length MOST_INCHES = Length.ofInches(0.012);
    private static final Length LEAST_MILLIMETRES = Length.ofMillimetres(0.1);
    private static final Length MOST_MILLIMETRES = Length.ofMillimetres(0.3);

    private GrooveChecks() {}

    /**
     * Check 4: a groove is 0.004 to 0.012 in (0.1 to 0.3 mm) wider than what stands in it. Common practice, no source.
     *
     * @param wide the groove
     * @param tongue what stands in it, by caliper
     */
    public static Check fit(String of, Length wide, Length tongue, MeasureStyle style) {
        Length least = Say.rule(style, LEAST_INCHES, LEAST_MILLIMETRES);
        Length most = Say.rule(style, MOST_INCHES, MOST_MILLIMETRES);
        Length room = wide.minus(tongue);
        boolean tight = room.isShorterThan(least);
        Length left = room.minus(least).min(most.minus(room));
        String much = said(left.absolute(), style);
        String takes = "A groove %s wide takes %s, ".formatted(said(wide, style), said(tongue, style));
        return held(of, style)
                .level(
                        takes
                                + (room.isNegative()
                                        ? "%s more than it has room for.".formatted(said(room.absolute(), style))
                                        : "%s of room.".formatted(said(room, style)))
                                + " Wanted: %s to %s.".formatted(said(least, style), said(most, style)),
                        left.dividedBy(most.minus(least).half()),
                        much + " to spare",
                        (tight ? "too tight by " : "too loose by ") + much,
                        "%s that cuts %s to %s would do."
                                .formatted(
                                        tight
                                                ? "A wider cutter, or a second pass,"
                                                : "A narrower cutter, in two passes,",
                                        said(tongue.plus(least), style),
                                        said(tongue.plus(most), style)));
    }

    /** Check 4 where what stands in the groove was never measured. @param what it is, as bought */
    public static Check fitNotKnown(String of, Length wide, String what, MeasureStyle style) {
        return held(of, style)
                .notKnown(
                        "A groove %s wide takes %s, which nobody measured.".formatted(said(wide, style), what),
                        "Measure it with a caliper at 4 to 6 places; for a groove the largest counts.");
    }

    private static Held held(String of, MeasureStyle style) {
        return new Held("Groove fit", of, Reason.COMMON_PRACTICE, style);
    }

    private static String said(Length length, MeasureStyle style) {
        return SagChecks.thousandths(length, style);
    }
}
