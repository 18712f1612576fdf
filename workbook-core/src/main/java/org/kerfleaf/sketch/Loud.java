package org.kerfleaf.sketch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How loud it is at the ear in the step that this is said in, in dB(A). @group the work */
public record Loud(Origin origin, int decibels) implements Declaration {
    private static final Pattern TEXT = Pattern.compile("(\\d{2,3})\\s*dB(?:\\(A\\))?");
    private static final int MOST = 140;

    /** Reads {@code 98 dB}, from 10 to 140. @throws SketchException if it is no such text */
    public static Loud of(String text) {
        Matcher match = TEXT.matcher(text.strip());
        if (!match.matches() || Integer.parseInt(match.group(1)) > MOST) {
            throw new SketchException("“%s” is no noise. 98 dB would be, from 10 to 140.".formatted(text));
        }
        return new Loud(SketchRun.current().next(), Integer.parseInt(match.group(1)));
    }
}
