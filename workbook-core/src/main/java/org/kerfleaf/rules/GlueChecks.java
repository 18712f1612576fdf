package org.kerfleaf.rules;

import java.time.Duration;
import java.util.Optional;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether glue is still open when a joint closes, and lies on bare wood. */
public final class GlueChecks {
    private GlueChecks() {}

    /** Check 21: spreading and closing take no longer than the glue stays open. */
    public static Check time(String of, Duration closing, Optional<Duration> openTime, MeasureStyle style) {
        Held held =
                new Held("Glue time", of, "the bottle’s open time; times of work are " + Reason.COMMON_PRACTICE, style);
        if (openTime.isEmpty()) {
            return held.notKnown(
                    "Spreading and closing take about %s; how long the glue stays open was not said."
                            .formatted(minutes(closing)),
                    "Say .openFor(\"10 min\"), as the bottle does.");
        }
        Duration left = openTime.get().minus(closing);
        return held.level(
                "Spreading and closing take about %s, the glue stays open for %s."
                        .formatted(minutes(closing), minutes(openTime.get())),
                (double) left.toSeconds() / Math.max(1, openTime.get().toSeconds()),
                minutes(left) + " to spare",
                "over by " + minutes(left.negated()),
                "Close it in two stages, or with a helper.");
    }

    private static String minutes(Duration time) {
        return Say.number(time.toSeconds() / 60.0, 1) + " min";
    }

    /** Check 22: the faces that are glued are bare. @param painted which part was painted there before, if one was */
    public static Check bare(String of, Optional<String> painted, MeasureStyle style) {
        Held held = new Held("Glue on bare wood", of, Reason.COMMON_PRACTICE, style);
        return painted.map(part -> held.falls(
                        "%s is painted before it is glued: the joint holds no better than the paint.".formatted(part),
                        "Mask what is glued, or paint after."))
                .orElseGet(() -> held.holds("What is glued is not painted before."));
    }
}
