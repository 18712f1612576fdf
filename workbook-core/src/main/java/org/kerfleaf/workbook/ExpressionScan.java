package org.kerfleaf.workbook;

import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * Finds the brace that closes a live value. Braces nest; those inside a Java string, text block, character or comment do
 * not count. A backquote outside these ends the search: Java has none, Markdown's code spans do.
 */
final class ExpressionScan {
    /** A longer expression counts as never closed, so that a page of stray openings is still read quickly. */
    static final int MOST_CHARS = 1_000;

    private static final String TEXT_BLOCK = "\"\"\"";
    private static final String COMMENT_END = "*/";

    private final Scanner scanner;
    private int left = MOST_CHARS;
    private int depth;

    ExpressionScan(Scanner scanner) {
        this.scanner = scanner;
    }

    /**
     * Moves the scanner behind the closing brace.
     *
     * @return where the expression ends, blanks before the brace not counted; null if no brace closes it
     */
    Position toClosingBrace() {
        Position end = scanner.position();
        while (more()) {
            char c = scanner.peek();
            if (c == '}' && depth == 0) {
                scanner.next();
                return end;
            }
            if (!skip(c)) {
                return null;
            }
            if (!Character.isWhitespace(c)) {
                end = scanner.position();
            }
        }
        return null;
    }

    private boolean more() {
        return left > 0 && scanner.hasNext();
    }

    private void next() {
        scanner.next();
        left--;
    }

    /** Moves over one char, or a whole string, character or comment; false if it has no end or is no Java. */
    private boolean skip(char first) {
        if (first == '"' && scanner.next(TEXT_BLOCK)) {
            return skipTo(TEXT_BLOCK, true);
        }
        next();
        return switch (first) {
            case '`' -> false;
            case '"', '\'' -> skipTo(String.valueOf(first), false);
            case '/' -> !scanner.next('*') || skipTo(COMMENT_END, true);
            case '{' -> {
                depth++;
                yield true;
            }
            case '}' -> {
                depth--;
                yield true;
            }
            default -> true;
        };
    }

    private boolean skipTo(String close, boolean overLines) {
        while (more()) {
            if (scanner.next(close)) {
                return true;
            }
            char c = scanner.peek();
            if (c == '\n' && !overLines) {
                return false;
            }
            next();
            boolean escape = c == '\\' && !close.equals(COMMENT_END);
            if (escape && more() && scanner.peek() != '\n') {
                next();
            }
        }
        return false;
    }
}
