package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/**
 * A fenced block and its lines in the file. The spans the parser gives have none for blank lines, so the body is
 * counted from the opening line on: its lines stand one below the other in the file.
 *
 * @param block the parser's node
 * @param openingLine index of the line with the opening fence
 * @param texts the body's lines without what lists, quotes and the fence's own indent put before them
 * @param starts for each of {@code texts}, where it begins in its line
 */
record Fence(FencedCodeBlock block, int openingLine, List<String> texts, List<Cell.Start> starts) {

    static Fence of(FencedCodeBlock block, Lines lines) {
        int openingLine = block.getSourceSpans().get(0).getLineIndex();
        String body = block.getLiteral();
        var texts = new ArrayList<String>();
        var starts = new ArrayList<Cell.Start>();
        for (int at = 0; at < body.length(); at = body.indexOf('\n', at) + 1) {
            String text = body.substring(at, body.indexOf('\n', at));
            starts.add(start(lines.content(openingLine + 1 + texts.size()), text));
            texts.add(text);
        }
        return new Fence(block, openingLine, List.copyOf(texts), List.copyOf(starts));
    }

    /**
     * Finds where a line's text begins: it is the end of the line, except that the parser writes blanks for what is left
     * of a tab that a list or a quote used up in part.
     */
    private static Cell.Start start(String line, String text) {
        String same = line.replace('\0', '\uFFFD');
        int fromTab = 0;
        while (!same.endsWith(text.substring(fromTab))) {
            if (fromTab == text.length() || text.charAt(fromTab) != ' ') {
                throw new IllegalStateException("The line <%s> does not end in <%s>".formatted(line, text));
            }
            fromTab++;
        }
        int column = line.length() - text.length() + fromTab + 1;
        return fromTab == 0 ? new Cell.Start(column, 0) : new Cell.Start(column - 1, fromTab);
    }

    /** The first word of the info string, empty where there is none. */
    String kind() {
        return kind(block);
    }

    static String kind(FencedCodeBlock block) {
        return block.getInfo().split("\\s", 2)[0];
    }

    int firstLine() {
        return openingLine + 1;
    }

    /** Index of the line after the body: the closing fence, if there is one. */
    int afterLine() {
        return firstLine() + texts.size();
    }

    boolean closed() {
        return block.getClosingFenceLength() != null;
    }

    /** Index in the opening line from which the fence's own indent counts. */
    int openingColumn() {
        return block.getSourceSpans().get(0).getColumnIndex();
    }

    SourceSpan lastSpan() {
        return block.getSourceSpans().get(block.getSourceSpans().size() - 1);
    }

    /** What lists and quotes want before every line of the body, as spaces and quote marks. */
    String containerPrefix() {
        var prefix = new StringBuilder();
        for (Node node = block.getParent(); node != null; node = node.getParent()) {
            if (node instanceof BlockQuote) {
                prefix.insert(0, "> ");
            } else if (node instanceof ListItem item) {
                prefix.insert(0, " ".repeat(item.getContentIndent()));
            }
        }
        return prefix.toString();
    }

    /** Whether a line of blanks alone loses them: the parser drops the blanks of a blank line in a list item. */
    boolean dropsBlanks() {
        Node node = block.getParent();
        while (node != null && !(node instanceof BlockQuote) && !(node instanceof ListItem)) {
            node = node.getParent();
        }
        return node instanceof ListItem;
    }
}
