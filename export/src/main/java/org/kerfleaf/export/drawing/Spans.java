package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stretches of a line, kept apart and in order. */
final class Spans {
    /** From one place to a later one. */
    record Span(double from, double to) {
        double length() {
            return to - from;
        }
    }

    private final List<Span> loose = new ArrayList<>();

    void add(double from, double to) {
        if (to > from) {
            loose.add(new Span(from, to));
        }
    }

    boolean isEmpty() {
        return loose.isEmpty();
    }

    /** All of it as few spans; those not farther apart than {@code gap} become one. */
    List<Span> joined(double gap) {
        List<Span> sorted = new ArrayList<>(loose);
        sorted.sort(Comparator.comparingDouble(Span::from).thenComparingDouble(Span::to));
        List<Span> joined = new ArrayList<>();
        for (Span next : sorted) {
            Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && next.from() <= last.to() + gap) {
                joined.set(joined.size() - 1, new Span(last.from(), Math.max(last.to(), next.to())));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }

    /** What of {@code whole} is in none of {@code less}; both joined and in order. */
    static List<Span> minus(List<Span> whole, List<Span> less) {
        List<Span> rest = new ArrayList<>();
        for (Span span : whole) {
            double at = span.from();
            for (Span cut : less) {
                if (cut.to() <= at || cut.from() >= span.to()) {
                    continue;
                }
                if (cut.from() > at) {
                    rest.add(new Span(at, cut.from()));
                }
                at = Math.max(at, cut.to());
            }
            if (at < span.to()) {
                rest.add(new Span(at, span.to()));
            }
        }
        return rest;
    }
}
