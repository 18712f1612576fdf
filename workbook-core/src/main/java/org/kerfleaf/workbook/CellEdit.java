package org.kerfleaf.workbook;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes a new text into a cell's fence and leaves every other char of the file alone. Lines at the cell's beginning and
 * end that stay the same keep their chars too; a new line gets the quote marks and indent its containers want and the
 * line end of the cell's first line, in a cell without one the file's most used.
 *
 * <p>A line of the new text that would close the fence makes the fence one char longer than that line's, at both ends.
 */
final class CellEdit {
    private static final Pattern LINE_END = Pattern.compile("\r\n?");
    /** Only {@code \n} ends a line here (flag d), as in the file: a cell may hold other Unicode line separators. */
    private static final Pattern LINE_OF_BLANKS = Pattern.compile("(?md)^[ \t]+$");

    private static final Pattern BLANKS_AT_END = Pattern.compile("[ \t]+\\z");
    private static final int TAB_STOP = 4;
    /** A fence indented this far is text (CommonMark 0.31.2 section 4.5). */
    private static final int TOO_FAR_IN = 4;

    private final String text;
    private final Lines lines;
    private final Fence fence;
    private final String container;
    private final String indent;
    private final String mark;

    CellEdit(String text, Lines lines, Fence fence) {
        this.text = text;
        this.lines = lines;
        this.fence = fence;
        container = fence.containerPrefix();
        indent = " ".repeat(fence.block().getFenceIndent());
        String first = fence.texts().isEmpty() ? "" : lines.mark(fence.firstLine());
        mark = first.isEmpty() ? lines.dominantMark() : first;
    }

    /** The new text as it will read back: {@code \n} line ends, and nothing the fence cannot hold. */
    static String normalised(String newText, Fence fence) {
        String plain = LINE_END.matcher(newText).replaceAll("\n").replace('\0', '\uFFFD');
        return fence.dropsBlanks() ? LINE_OF_BLANKS.matcher(plain).replaceAll("") : plain;
    }

    /** The whole file's text with the cell's body replaced. */
    String apply(String normalised) {
        List<String> news = normalised.isEmpty() ? List.of() : List.of(normalised.split("\n", -1));
        int length = Math.max(fence.block().getOpeningFenceLength(), 1 + longestCloser(news));
        int bodyStart = lines.start(fence.firstLine());
        int bodyEnd = lines.start(fence.afterLine());
        return opening(bodyStart, length) + body(news) + closing(bodyEnd, length);
    }

    private String opening(int bodyStart, int length) {
        int fenceStart = lines.start(fence.openingLine()) + fence.openingColumn();
        while (text.charAt(fenceStart) != fence.block().getFenceCharacter().charAt(0)) {
            fenceStart++;
        }
        return text.substring(0, fenceStart)
                + more(length - fence.block().getOpeningFenceLength())
                + text.substring(fenceStart, bodyStart);
    }

    private String closing(int bodyEnd, int length) {
        if (!fence.closed()) {
            return text.substring(bodyEnd);
        }
        int fenceStart = fence.lastSpan().getInputIndex();
        while (text.charAt(fenceStart) != fence.block().getFenceCharacter().charAt(0)) {
            fenceStart++;
        }
        return text.substring(bodyEnd, fenceStart)
                + more(length - fence.block().getClosingFenceLength())
                + text.substring(fenceStart);
    }

    private String more(int chars) {
        return fence.block().getFenceCharacter().repeat(Math.max(0, chars));
    }

    private String body(List<String> news) {
        List<String> olds = fence.texts();
        int most = Math.min(olds.size(), news.size());
        int head = 0;
        while (head < most && olds.get(head).equals(news.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < most - head && olds.get(olds.size() - 1 - tail).equals(news.get(news.size() - 1 - tail))) {
            tail++;
        }
        boolean bare = endsWithoutMark();
        var body = new StringBuilder();
        if (bare && olds.isEmpty() && !news.isEmpty()) {
            body.append(mark);
        }
        for (int i = 0; i < news.size(); i++) {
            int behind = news.size() - i;
            int old = i < head ? fence.firstLine() + i : behind <= tail ? fence.afterLine() - behind : -1;
            String line = old < 0 ? written(news.get(i)) : lines.content(old);
            // A last line without any char needs its line end, or it would be no line.
            if (behind == 1 && bare && !line.isEmpty()) {
                body.append(line);
            } else {
                addLine(body, line, old < 0 || lines.mark(old).isEmpty() ? mark : lines.mark(old));
            }
        }
        if (endsWithCr(body) && text.startsWith("\n", lines.start(fence.afterLine()))) {
            // The LF behind must stay a line end of its own; a blank line in the cell reads back as no line does.
            body.append(body.isEmpty() ? written("") : "").append('\n');
        }
        return body.toString();
    }

    /** Adds a line such that a lone CR before it and an LF behind it do not become one line end. */
    private void addLine(StringBuilder body, String line, String itsMark) {
        boolean wouldMerge = endsWithCr(body) && line.isEmpty() && itsMark.equals("\n");
        body.append(line).append(wouldMerge ? "\r" : itsMark);
    }

    /** Whether the file, up to what the body has so far, ends in a CR. */
    private boolean endsWithCr(StringBuilder body) {
        return body.isEmpty()
                ? text.startsWith("\r", lines.start(fence.firstLine()) - 1)
                : body.charAt(body.length() - 1) == '\r';
    }

    /** Whether the fence is open and the file ends with it, without a line end. */
    private boolean endsWithoutMark() {
        return !fence.closed()
                && fence.afterLine() >= lines.count()
                && lines.mark(fence.afterLine() - 1).isEmpty();
    }

    private String written(String line) {
        if (line.isEmpty()) {
            return BLANKS_AT_END.matcher(container).replaceAll("");
        }
        return container + indent + line;
    }

    /** The length of the longest fence among the lines that would close this cell's, 0 where none would. */
    private int longestCloser(List<String> news) {
        int longest = 0;
        for (String line : news) {
            longest = Math.max(longest, closerLength(line));
        }
        return longest;
    }

    private int closerLength(String line) {
        int column = container.length() + indent.length();
        int at = 0;
        while (at < line.length() && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
            column += line.charAt(at) == ' ' ? 1 : TAB_STOP - column % TAB_STOP;
            at++;
        }
        String rest = BLANKS_AT_END.matcher(line.substring(at)).replaceAll("");
        boolean closes = column - container.length() < TOO_FAR_IN
                && rest.length() >= fence.block().getOpeningFenceLength()
                && rest.equals(fence.block().getFenceCharacter().repeat(rest.length()));
        return closes ? rest.length() : 0;
    }
}
