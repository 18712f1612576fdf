package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how long something lasts. */
public final class Times {
    private static final Pattern TEXT = Pattern.compile(
            "(?:(\\d{1,3})\\s*days?)?\\s*(?:(\\d{1,4}(?:\\.\\d+)?)\\s*h)?\\s*(?:(\\d{1,5})\\s*min)?\\s*(?:(\\d{1,5})\\s*s)?");
    private static final int SECONDS = 3600;

    private Times() {}

    /** Reads {@code 3 h}, {@code 25 min}, {@code 1 h 30 min}, {@code 2 days}, {@code 20 s}. @throws SketchException if it is no time */
    public static Duration of(String text) {
        Matcher match = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!match.matches() || text.isBlank()) {
            throw new SketchException("“%s” is no time. 3 h, 25 min or 1 h 30 min would be.".formatted(text));
        }
        return Duration.ofDays(number(match.group(1)))
                .plusSeconds(match.group(2) == null ? 0 : Math.round(Double.parseDouble(match.group(2)) * SECONDS))
                .plusMinutes(number(match.group(3)))
                .plusSeconds(number(match.group(4)));
    }

    private static long number(String digits) {
        return digits == null ? 0 : Long.parseLong(digits);
    }
}
