package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When there are hours free for the build.
 *
 * @param when on which days
 * @param from the time of day it begins, from midnight
 * @param to the time of day it ends, from midnight
 * @group the work
 */
public record FreeTime(Origin origin, When when, Duration from, Duration to) implements Declaration {
    private static final Pattern TEXT = Pattern.compile("(\\d{1,2})(?::(\\d{2}))?\\s*to\\s*(\\d{1,2})(?::(\\d{2}))?");
    private static final int HOURS = 24;
    private static final int MINUTES = 60;

    /** On which days of the week. */
    public enum When {
        /** From Monday to Friday. */
        EVENINGS,
        /** On Saturdays. */
        SATURDAYS,
        /** On Sundays. */
        SUNDAYS
    }

    /** Reads {@code 19:00 to 21:30}. @throws SketchException if it is no such text, or ends before it begins */
    public static FreeTime of(When when, String text) {
        Matcher match = TEXT.matcher(text.strip());
        if (match.matches()) {
            Duration from = time(match.group(1), match.group(2));
            Duration to = time(match.group(3), match.group(4));
            if (from.compareTo(to) < 0 && to.toHours() < HOURS) {
                return new FreeTime(SketchRun.current().next(), when, from, to);
            }
        }
        throw new SketchException(
                "“%s” is no free time. From when to when, as on a clock of 24 hours, would be right: 19:00 to 21:30."
                        .formatted(text));
    }

    private static Duration time(String hours, String minutes) {
        int past = minutes == null ? 0 : Integer.parseInt(minutes);
        return past < MINUTES ? Duration.ofHours(Long.parseLong(hours)).plusMinutes(past) : Duration.ofHours(HOURS);
    }
}
