package org.kerfleaf.reason;

import java.util.List;
import java.util.Objects;

/**
 * A derived value and why it is what it is.
 *
 * @param value what was derived
 * @param reason the rule, what went in, and where the rule is from
 */
public record Figure<T>(T value, Reason reason) {
    public Figure {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(reason, "reason");
    }

    /** A figure by a rule from a source: {@code Figure.of(depth, "t / cos tilt + 1/4 in", "geometry", given("t", t))}. */
    public static <T> Figure<T> of(T value, String rule, String source, Given... given) {
        return new Figure<>(value, new Reason(rule, List.of(given), source));
    }

    /** What the maker said outright, unchanged. */
    public static <T> Figure<T> said(T value, String where) {
        return new Figure<>(value, new Reason("said in the workbook: " + where, List.of(), Reason.THE_WORKBOOK));
    }
}
