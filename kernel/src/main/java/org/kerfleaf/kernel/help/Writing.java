package org.kerfleaf.kernel.help;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.kerfleaf.kernel.compile.Masked;

/**
 * The text of a cell and a place in it, read letter by letter: it need not make sense.
 *
 * @param text the whole cell
 * @param offset the place, in characters from 0
 * @param masked the text before the place without its comments and literals
 */
record Writing(String text, int offset, String masked) {
    /** @param offset a place out of the text is taken for its nearest end */
    static Writing at(String text, int offset) {
        int within = Math.max(0, Math.min(offset, text.length()));
        String before = text.substring(0, within);
        // The quote ends a literal that is being written, so that no letter of it is left.
        return new Writing(text, within, Masked.of(before + "\"").substring(0, within));
    }

    /** A word that stands before an open bracket, and how many commas stand between the bracket and the place. */
    record Call(int begin, String word, int commas) {}

    /** Whether the place is in a comment or a literal. */
    boolean isNotJava() {
        String mark = "here";
        return !Masked.of(text.substring(0, offset) + mark).endsWith(mark);
    }

    /** Where the name begins that the place is in or behind. */
    int nameBegin() {
        int begin = offset;
        while (begin > 0 && Character.isJavaIdentifierPart(text.charAt(begin - 1))) {
            begin--;
        }
        return begin;
    }

    /** Where that name ends. */
    int nameEnd() {
        int end = offset;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /** The brackets that are open at an earlier place, with what would close them. */
    static String closing(String masked) {
        Deque<String> open = new ArrayDeque<>();
        for (char c : masked.toCharArray()) {
            switch (c) {
                case '(' -> open.push(")");
                case '[' -> open.push("]");
                case '{' -> open.push(";}");
                case ')', ']', '}' -> open.poll();
                default -> {}
            }
        }
        return String.join("", open);
    }

    /** The innermost call whose brackets hold the place. */
    Optional<Call> call() {
        int depth = 0;
        int commas = 0;
        for (int at = offset - 1; at >= 0; at--) {
            char c = masked.charAt(at);
            if (c == ')' || c == ']' || c == '}') {
                depth++;
            } else if (depth > 0 && (c == '(' || c == '[' || c == '{')) {
                depth--;
            } else if (c == ',' && depth == 0) {
                commas++;
            } else if (c == '(') {
                Writing word = at(text, masked.substring(0, at).stripTrailing().length());
                String name = text.substring(word.nameBegin(), word.offset());
                return name.isEmpty() ? Optional.empty() : Optional.of(new Call(word.nameBegin(), name, commas));
            } else if (c == ';' || c == '{') {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
