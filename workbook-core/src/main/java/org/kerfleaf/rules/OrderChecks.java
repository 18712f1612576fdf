package org.kerfleaf.rules;

import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether a step comes too early. The steps stay in the order written. */
public final class OrderChecks {
    /** How long a small drill is with a short bit: 5 1/2 in (140 mm). {@code Common practice, no source}. */
    public static final Length DRILL = Length.ofInches(5.5);

    private OrderChecks() {}

    /**
     * What is put in place is cut before.
     *
     * @param early {@code Floor in step 1}; empty if nothing is used too early
     * @param cutIn the step that cuts all
     */
    public static Check cutFirst(List<String> early, int cutIn, MeasureStyle style) {
        Held held = new Held("Cut first", "", Reason.GEOMETRY, style);
        return early.isEmpty()
                ? held.holds("Every part is cut, in step %d, before it is used.".formatted(cutIn))
                : held.falls(
                        "Used before it is cut in step %d: %s.".formatted(cutIn, String.join(", ", early)),
                        "Put the cutting before.");
    }

    /** Everything put in place finds a straight way in past what is there by then. */
    public static Check wayIn(int pieces, MeasureStyle style) {
        return new Held("Way in", "", Reason.GEOMETRY, style)
                .holds(
                        "Every piece finds a straight way in past what is there before it; %d had something there before."
                                .formatted(pieces));
    }

    /**
     * A piece that no straight way leads to any more.
     *
     * @param step in which it is put in place
     * @param blocked what stands in the way it was put: {@code Front (step 5)}
     * @param before the step before which it would go in
     */
    public static Check noWayIn(String part, int step, List<String> blocked, int before, MeasureStyle style) {
        return new Held("Way in", part, Reason.GEOMETRY, style)
                .falls(
                        "Step %d puts it in place, where no straight way leads any more: past %s it does not go."
                                .formatted(step, String.join(", ", blocked)),
                        "Put it in before step %d, or tilt it in and try that with a piece of cardboard first."
                                .formatted(before));
    }

    /** A drill comes to every head. @param fasteners how many were looked at */
    public static Check roomToDrive(int fasteners, MeasureStyle style) {
        return drive("", style)
                .holds("A drill comes straight to %d heads past all that stands there by then.".formatted(fasteners));
    }

    /**
     * A head that something stands too near behind for a drill.
     *
     * @param of the joint
     * @param step that drives it
     * @param heads how many are too near
     * @param there the least room behind one of them
     * @param before what stands there
     * @param wanted room for drill, bit and the fastener before it is driven
     */
    public static Check noRoomToDrive(
            String of, int step, int heads, Length there, String before, Length wanted, MeasureStyle style) {
        return drive(of, style)
                .atLeast(
                        "Step %d drives %s where %s stands %s behind the head."
                                .formatted(
                                        step,
                                        heads == 1 ? "one" : Integer.toString(heads),
                                        before,
                                        Say.fine(there, style)),
                        there,
                        wanted,
                        "Drive it in an earlier step or from the other side, or with a drill that goes round a corner.");
    }

    private static Held drive(String of, MeasureStyle style) {
        return new Held("Room to drive", of, "geometry; length of a drill is common practice, no source", style);
    }

    /** Check 37: waiting for glue, paint or caulk, where every time is known and counted between the steps. */
    public static Check waited(String of, List<String> waits, MeasureStyle style) {
        return cure(of, style).holds("Counted as waiting: " + String.join("; ", waits) + ".");
    }

    /** Check 37 where a time was not said. */
    public static Check waitNotKnown(String of, List<String> missing, MeasureStyle style) {
        return cure(of, style)
                .notKnown(
                        "How long " + String.join(", and how long ", missing) + " is not known.",
                        "It stands on its label; say it where it is bought.");
    }

    /** Check 37 where one step uses it and goes on with the same parts before it is ready. */
    public static Check tooEarly(String of, List<String> early, MeasureStyle style) {
        return cure(of, style)
                .falls(
                        "Too early: " + String.join("; ", early) + ".",
                        "Make what comes after it a step of its own: the waiting between steps is counted.");
    }

    private static Held cure(String of, MeasureStyle style) {
        return new Held("Recoat and cure", of, "the makers' labels, as said in the workbook; common practice", style);
    }
}
