package org.kerfleaf.rules;

import java.util.List;
import java.util.OptionalInt;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether paint comes to where it is wanted, before a face is closed in, and not to where glue is to hold. */
public final class PaintChecks {
    private static final String IN_REACH = "Paint in reach";
    private static final String BARE = "Glue on bare wood";

    private PaintChecks() {}

    /**
     * Check 34: a face is coated before it is closed in.
     *
     * @param of the part and its face: {@code Side, inside face}
     * @param step the step that closes it in, 0 if there are no steps
     * @param by what is put in place there and closes it
     * @param painted the step in which it is coated, too late; empty if no coat comes to it
     */
    public static Check outOfReach(String of, int step, String by, OptionalInt painted) {
        Held held = new Held(IN_REACH, of, Reason.GEOMETRY, MeasureStyle.INCHES);
        String closes = step > 0 ? "In step %d %s closes it in".formatted(step, by) : by + " closes it in";
        String wanted = step > 1 ? "before step " + step : "before %s is put in place".formatted(by);
        return painted.isPresent()
                ? held.falls(
                        closes + ", and it is painted only afterwards" + (step > 0 ? "," : "") + in(painted.getAsInt())
                                + ".",
                        "Move the paint to %s.".formatted(wanted))
                : held.falls(
                        closes + ", and no coat comes to it, though the inside is painted.",
                        "Paint it %s: say coat(facesOf(...)), or coat(undersideOf(...)), of it there."
                                .formatted(wanted));
    }

    private static String in(int step) {
        return step > 0 ? " in step " + step : "";
    }

    /** Check 34 where every face is coated in time. @param faces that a later step closes in, each in words */
    public static Check inReach(List<String> faces) {
        Held held = new Held(IN_REACH, "", Reason.GEOMETRY, MeasureStyle.INCHES);
        return held.holds(
                faces.isEmpty()
                        ? "A brush comes to every painted face to the end."
                        : "Painted before it is closed in: %s.".formatted(String.join("; ", faces)));
    }

    /**
     * Check 22: faces that are glued are bare.
     *
     * @param of the part and its face
     * @param glued the step in which it is glued, 0 if there are no steps
     * @param to what
     * @param across how wide the widest strip to be masked is
     * @param masked whether the coat leaves it bare
     */
    public static Check glueOnPaint(
            String of, int glued, List<String> to, Length across, boolean masked, MeasureStyle style) {
        Held held = new Held(BARE, of, Reason.COMMON_PRACTICE, style);
        String where = "Where %s is glued to it%s".formatted(String.join(", ", to), in(glued));
        return masked
                ? held.holds(where + " it is masked and stays bare.")
                : held.falls(
                        where + ", it is painted before, and glue does not hold on paint.",
                        "Mask strips %s wide and say .maskedWhereGlued(), or glue first."
                                .formatted(Say.fine(across, style)));
    }

    /** Check 22 where nothing is painted before it is glued. */
    public static Check gluedBare() {
        return new Held(BARE, "", Reason.COMMON_PRACTICE, MeasureStyle.INCHES)
                .holds("What is glued is not painted before.");
    }
}
