package org.kerfleaf.reason;

import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.measure.MeasureStyle;

/**
 * Why a figure is what it is.
 *
 * @param rule the rule in words or as a formula a maker can follow
 * @param given what went in, in the order the rule names it
 * @param source where the rule is published, {@code geometry}, or {@code common practice, no source}
 */
public record Reason(String rule, List<Given> given, String source) {
    public static final String GEOMETRY = "geometry";
    public static final String COMMON_PRACTICE = "common practice, no source";
    public static final String THE_WORKBOOK = "the workbook";

    public Reason {
        given = List.copyOf(given);
    }

    /** One line for people: the rule, what went in with its values, the source. */
    public String in(MeasureStyle style) {
        String inputs = given.stream().map(g -> g.in(style)).collect(Collectors.joining(", "));
        return rule + (inputs.isEmpty() ? "" : "; " + inputs) + " (" + source + ")";
    }
}
