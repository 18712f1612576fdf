package org.kerfleaf.workbook;

import java.util.List;
import java.util.Set;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * Reads <code>${expression}</code> in prose. Escapes (<code>\${</code>) and code spans never come here, CommonMark takes
 * them first. A <code>${</code> that is no live value stays text, and says what is wrong with it.
 */
final class LiveValueParser implements InlineContentParserFactory, InlineContentParser {
    static final String UNCLOSED =
            "${ opens a live value and no } closes it. Write } behind the value, or \\${ to print ${.";
    static final String EMPTY =
            "${} holds no value. Write a name or a calculation between the braces, or \\${} to print ${}.";

    @Override
    public Set<Character> getTriggerCharacters() {
        return Set.of('$');
    }

    @Override
    public InlineContentParser create() {
        return this;
    }

    @Override
    public ParsedInline tryParse(InlineParserState state) {
        Scanner scanner = state.scanner();
        Position dollar = scanner.position();
        scanner.next();
        if (!scanner.next('{')) {
            return ParsedInline.none();
        }
        Position opened = scanner.position();
        int from = spans(scanner, dollar, opened).get(0).getInputIndex();
        scanner.whitespace();
        Position start = scanner.position();
        Position end = new ExpressionScan(scanner).toClosingBrace();
        if (end == null) {
            return ParsedInline.of(LiveNode.stray(UNCLOSED, from), opened);
        }
        String expression = scanner.getSource(start, end).getContent();
        if (expression.isEmpty()) {
            return ParsedInline.of(LiveNode.stray(EMPTY, from), opened);
        }
        List<SourceSpan> spans = spans(scanner, start, end);
        SourceSpan last = spans.get(spans.size() - 1);
        int offset = spans.get(0).getInputIndex();
        int length = last.getInputIndex() + last.getLength() - offset;
        return ParsedInline.of(LiveNode.value(expression, offset, length), scanner.position());
    }

    private static List<SourceSpan> spans(Scanner scanner, Position from, Position to) {
        return scanner.getSource(from, to).getSourceSpans();
    }
}
