package org.kerfleaf.kernel.compile;

import java.util.Optional;
import java.util.regex.Pattern;

/** Sees in the text what was probably meant where the compiler only says that it cannot go on. */
final class Syntax {
    private static final Pattern HEAD = Pattern.compile("\\s*(?:final\\s+)?[A-Za-z_][\\w.<>\\[\\]]*\\s+\\w+\\s*");
    private static final Pattern CALL = Pattern.compile("[ \\t]+[a-z]\\w*\\((?s:.*)");
    private static final Pattern DIGITS = Pattern.compile(" +\\d(?s:.*)");
    private static final Pattern QUOTE = Pattern.compile("(?<!\\\\)\"");

    private Syntax() {}

    /**
     * Words for a place at which the compiler misses something or has too much.
     *
     * @param text the piece
     * @param at where it cannot go on
     * @param missing what it wants there, empty if it does not say
     */
    static Optional<String> hint(String text, int at, String missing) {
        long quotes = QUOTE.matcher(line(text, at)).results().count();
        if (quotes % 2 == 1) {
            return Optional.of("A \" is missing in this line: it has %s.".formatted(quotes == 1 ? "only one" : quotes));
        }
        String masked = Masked.of(text);
        String before = masked.substring(beginOfStatement(masked, at), at);
        String after = masked.substring(at);
        if (missing.equals(";")) {
            return inPlaceOfAnEnd(before, after);
        }
        if (!missing.isEmpty()) {
            return Optional.empty();
        }
        return after.stripLeading().startsWith(";") && before.stripTrailing().endsWith("=")
                ? Optional.of("A value is missing after “=”.")
                : tooMany(after.stripLeading());
    }

    private static Optional<String> inPlaceOfAnEnd(String before, String after) {
        String next = after.stripLeading();
        if (HEAD.matcher(before).matches() && !after.startsWith("\n")) {
            return Optional.of(
                    next.startsWith("==")
                            ? "“=” gives a name its value; “==” compares two."
                            : "“=” is missing here, between the name and its value.");
        }
        if (!before.isEmpty()
                && Character.isDigit(before.charAt(before.length() - 1))
                && DIGITS.matcher(after).matches()) {
            return Optional.of("A number has no blanks in it.");
        }
        if (before.endsWith(")") && CALL.matcher(after).matches()) {
            return Optional.of("“.” is missing here.");
        }
        return tooMany(next);
    }

    private static Optional<String> tooMany(String next) {
        return !next.isEmpty() && ")]}.".indexOf(next.charAt(0)) >= 0
                ? Optional.of("One “%s” too many.".formatted(next.charAt(0)))
                : Optional.empty();
    }

    private static int beginOfStatement(String masked, int at) {
        int begin = at;
        while (begin > 0 && ";{}".indexOf(masked.charAt(begin - 1)) < 0) {
            begin--;
        }
        return begin;
    }

    private static String line(String text, int at) {
        int begin = text.lastIndexOf('\n', at - 1) + 1;
        int end = text.indexOf('\n', begin);
        return text.substring(begin, end < 0 ? text.length() : end);
    }
}
