package org.kerfleaf.kernel.compile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Java text with comments and literals blanked out, every other character where it was. */
public final class Masked {
    private static final Pattern COMMENT_OR_LITERAL =
            Pattern.compile("//[^\\n]*|/\\*(?s:.*?)(?:\\*/|\\z)|\"\"\"(?s:.*?)(?:\"\"\"|\\z)"
                    + "|\"(?:\\\\.|[^\"\\\\\\n])*+(?:\"|(?=\\n)|\\z)|'(?:\\\\.|[^'\\\\\\n])*+(?:'|(?=\\n)|\\z)");

    private Masked() {}

    /** Comments become blanks, literals become {@code "    "}. */
    public static String of(String text) {
        StringBuilder masked = new StringBuilder(text);
        Matcher match = COMMENT_OR_LITERAL.matcher(text);
        while (match.find()) {
            boolean literal = text.charAt(match.start()) != '/';
            for (int i = match.start(); i < match.end(); i++) {
                if (text.charAt(i) != '\n' && !(literal && (i == match.start() || i == match.end() - 1))) {
                    masked.setCharAt(i, ' ');
                }
            }
        }
        return masked.toString();
    }

    /** Where a comment begins that does not end; -1 if there is none. */
    static int openComment(String text) {
        Matcher match = COMMENT_OR_LITERAL.matcher(text);
        while (match.find()) {
            String one = match.group();
            if (one.startsWith("/*") && (one.length() < 4 || !one.endsWith("*/"))) {
                return match.start();
            }
        }
        return -1;
    }

    /** Where a name stands as a word of its own and not as what follows a dot, from an offset on; -1 if it does not. */
    static int indexOf(String masked, String name, int from) {
        return find("(?<![\\w$.])" + Pattern.quote(name) + "(?![\\w$])", masked, from);
    }

    /** Where a word stands, be it alone or after a dot, from an offset on; -1 if it does not. */
    static int indexOfWord(String masked, String word, int from) {
        return find("(?<![\\w$])" + Pattern.quote(word) + "(?![\\w$])", masked, from);
    }

    private static int find(String pattern, String masked, int from) {
        Matcher match =
                Pattern.compile(pattern, Pattern.UNICODE_CHARACTER_CLASS).matcher(masked);
        return match.find(Math.max(0, Math.min(from, masked.length()))) ? match.start() : -1;
    }
}
