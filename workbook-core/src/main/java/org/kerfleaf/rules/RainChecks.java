package org.kerfleaf.rules;

import java.util.List;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether rain, followed over the finished build, finds a way into the wood or a place to stay. */
public final class RainChecks {
    private static final String EDGES =
            "Wood Handbook ch. 16, end grain takes up water (from memory); the slope of 5° is common practice";

    private RainChecks() {}

    /** What a rule of this kind looks for. */
    public enum Rule {
        /** Check 35: edges of sheets and end grain that face up are capped, or sealed and sloping by 5° or more. */
        EDGES(
                "Rain on edges",
                RainChecks.EDGES,
                "No edge of a sheet and no end grain that faces up gets wet and is not sealed."),
        /** Faces on which water stands slope by 5° or more. */
        LEDGES("Rain on ledges", Reason.COMMON_PRACTICE, "No level ledge gets wet."),
        /** Seams that rain reaches, and whose joint does not lead upward, are covered or caulked. */
        SEAMS("Rain in seams", Reason.COMMON_PRACTICE, "No seam that rain reaches stays open."),
        /** No place that water runs into keeps it. */
        TRAPS("Rain in traps", Reason.GEOMETRY, "Water can leave every place that it runs into."),
        /** Check 41, drip groove: water does not creep along a level under side to a wall within 4 in (100 mm). */
        DRIPS("Rain under edges", Reason.COMMON_PRACTICE, "From every edge water drips before it comes to a wall.");

        private final String words;
        private final String source;
        private final String held;

        Rule(String words, String source, String held) {
            this.words = words;
            this.source = source;
            this.held = held;
        }
    }

    /**
     * One kind of finding of the rain walk.
     *
     * @param found what it found, each in words; empty if nothing
     * @param advice for those
     */
    public static Check found(Rule rule, List<String> found, String advice) {
        Held held = new Held(rule.words, "", rule.source, MeasureStyle.INCHES);
        return found.isEmpty() ? held.holds(rule.held) : held.falls(String.join(" ", found), advice);
    }

    /** Whether it stands in the rain at all was not said. */
    public static Check notSaid() {
        return new Held("Rain", "", Reason.GEOMETRY, MeasureStyle.INCHES)
                .notKnown("Whether rain falls on it was not said.", "Say site().outdoors(), or site().underRoof().");
    }
}
