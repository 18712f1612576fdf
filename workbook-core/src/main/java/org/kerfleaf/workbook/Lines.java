package org.kerfleaf.workbook;

import java.util.Arrays;

/** Where the lines of a text begin and end. As CommonMark 0.31.2 section 2.1 has it: LF, CR LF and a lone CR end a line. */
final class Lines {
    private final String text;
    /** Where each line begins; one more entry at the end, the text's length. */
    private final int[] starts;

    private final int count;

    Lines(String text) {
        this.text = text;
        int[] found = new int[16];
        int n = 0;
        for (int at = 0; at < text.length(); at = next(text, at)) {
            if (n + 1 == found.length) {
                found = Arrays.copyOf(found, 2 * n);
            }
            found[n++] = at;
        }
        found[n] = text.length();
        count = n;
        starts = found;
    }

    private static int next(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        boolean both = text.startsWith("\r\n", at);
        return Math.min(text.length(), at + (both ? 2 : 1));
    }

    /** How many lines there are; a line end at the very end begins no further line. */
    int count() {
        return count;
    }

    /** Where the line begins; the text's length for a line past the last. */
    int start(int line) {
        return starts[Math.min(line, count)];
    }

    /** Where the line's end mark begins. */
    int end(int line) {
        int end = start(line + 1);
        while (end > start(line) && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return end;
    }

    /** The line's end mark, empty for a last line without one. */
    String mark(int line) {
        return text.substring(end(line), start(line + 1));
    }

    /** The line's text without its end mark. */
    String content(int line) {
        return text.substring(start(line), end(line));
    }

    /** The index of the line that holds the offset; at the text's end, the line a further char would stand on. */
    int lineAt(int offset) {
        if (offset == text.length()) {
            return count > 0 && mark(count - 1).isEmpty() ? count - 1 : count;
        }
        int found = Arrays.binarySearch(starts, 0, count, offset);
        return found >= 0 ? found : -found - 2;
    }

    TextPosition position(int offset) {
        int line = lineAt(offset);
        return new TextPosition(line + 1, offset - start(line) + 1);
    }

    /** The line end used most, LF where none or where two are used equally often. */
    String dominantMark() {
        int lf = 0;
        int crlf = 0;
        int cr = 0;
        for (int line = 0; line < count; line++) {
            switch (mark(line)) {
                case "\n" -> lf++;
                case "\r\n" -> crlf++;
                case "\r" -> cr++;
                default -> {}
            }
        }
        if (lf >= crlf && lf >= cr) {
            return "\n";
        }
        return crlf >= cr ? "\r\n" : "\r";
    }
}
