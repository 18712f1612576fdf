package org.kerfleaf.kernel.compile;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A name as a piece says it.
 *
 * @param name the name
 * @param called whether brackets follow it, so that it is a method's or a type's
 */
record Mention(String name, boolean called) {
    private static final Pattern WORD =
            Pattern.compile("(?<![\\w$.])([\\p{L}_$][\\w$]*)\\s*(\\()?", Pattern.UNICODE_CHARACTER_CLASS);

    /**
     * Every word of a text that may be a name of the workbook: not what stands in quotes or comments, nor what follows a
     * dot. Names that a piece gives to something of its own, like a parameter, are among them; that does no harm.
     */
    static Set<Mention> in(String text) {
        Set<Mention> all = new LinkedHashSet<>();
        Matcher word = WORD.matcher(Masked.of(text));
        while (word.find()) {
            all.add(new Mention(word.group(1), word.group(2) != null));
        }
        return all;
    }
}
