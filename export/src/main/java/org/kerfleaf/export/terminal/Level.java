package org.kerfleaf.export.terminal;

import org.kerfleaf.rules.Check;

/** A check as a spirit level: the bubble between the lines holds, past the line is short, no bubble is not known. */
final class Level {
    private static final int INSIDE = 5;

    /** With this share of what was wanted to spare, the bubble stands in the middle. */
    private static final double PLENTY = 0.5;

    private Level() {}

    static String of(Check check) {
        return switch (check.verdict()) {
            case NOT_KNOWN -> "|     | ";
            case SHORT -> "|     |o";
            case HOLDS -> holds(check.level().orElse(PLENTY));
        };
    }

    private static String holds(double level) {
        double spare = Math.max(0, Math.min(PLENTY, level)) / PLENTY;
        int at = (int) Math.round((INSIDE - 1) - spare * (INSIDE / 2));
        return "|" + " ".repeat(at) + "o" + " ".repeat(INSIDE - 1 - at) + "| ";
    }
}
