package org.kerfleaf.kernel.compile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Java text with comments and literals blanked out, every other character where it was. */
final class Masked {
    private static final Pattern COMMENT_OR_LITERAL =
            Pattern.compile("//[^\\n]*|/\\*(?s:.*?)(?:\\*/|\\z)|\"\"\"(?s:.*?)(?:\"\"\"|\\z)"
                    + "|\"(?:\\\\.|[^\"\\\\\\n])*+(?:\"|(?=\\n)|\\z)|'(?:\\\\.|[^'\\\\\\n])*+(?:'|(?=\\n)|\\z)");

    private Masked() {}

    /** Comments become blanks, literals become {@code "    "}. */
    static String of(String text) {
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

    /** Where a name stands as a word of its own, from an offset on; -1 if it does not. */
    static int indexOf(String masked, String name, int from) {
        Matcher match = Pattern.compile("(?<![\\w$])" + Pattern.quote(name) + "(?![\\w$])")
                .matcher(masked);
        return match.find(Math.max(0, Math.min(from, masked.length()))) ? match.start() : -1;
    }
}
