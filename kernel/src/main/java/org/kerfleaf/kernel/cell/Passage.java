package org.kerfleaf.kernel.cell;

/**
 * A stretch of Java in the workbook file: a cell, or an expression in prose. Offsets count characters of its text.
 *
 * @param cell the cell's ordinal, or {@link CellProblem#PROSE}
 * @param text the whole text
 * @param line the line of the file on which it begins
 */
public record Passage(int cell, String text, int line) {
    public static Passage of(CellSource source) {
        return new Passage(source.ordinal(), source.text(), source.line());
    }

    public static Passage of(ProseSource source) {
        return new Passage(CellProblem.PROSE, source.expression(), source.line());
    }

    /** The line of the file at an offset. */
    public int lineAt(int offset) {
        return line
                + (int) text.substring(0, within(offset))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
    }

    /** Says what is wrong at an offset. */
    public CellProblem problem(int offset, String words) {
        int at = within(offset);
        int begin = text.lastIndexOf('\n', at - 1) + 1;
        int end = text.indexOf('\n', at);
        String lineText = text.substring(begin, end < 0 ? text.length() : end);
        return new CellProblem(cell, lineAt(at), at - begin + 1, lineText, words);
    }

    private int within(int offset) {
        return Math.max(0, Math.min(offset, text.length()));
    }
}
