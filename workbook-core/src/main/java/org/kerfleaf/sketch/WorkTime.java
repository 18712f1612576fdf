package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long the step takes that this is said in. @group the work */
public record WorkTime(Origin origin, Duration work) implements Declaration {
    private static final Pattern TEXT = Pattern.compile("(?:(\\d+(?:\\.\\d+)?)\\s*h)?\\s*(?:(\\d+)\\s*min)?");

    /** Reads {@code 3 h}, {@code 25 min}, {@code 1 h 30 min}. */
    public static WorkTime of(String text) {
        return new WorkTime(SketchRun.current().next(), parse(text));
    }

    static Duration parse(String text) {
        Matcher match = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!match.matches() || match.group(1) == null && match.group(2) == null) {
            throw new SketchException("“%s” is no time. 3 h, 25 min or 1 h 30 min would be.".formatted(text));
        }
        long minutes = match.group(1) == null ? 0 : Math.round(Double.parseDouble(match.group(1)) * 60);
        minutes += match.group(2) == null ? 0 : Long.parseLong(match.group(2));
        return Duration.ofMinutes(minutes);
    }
}
