package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LiveValueTest {
    private static List<String> expressions(String text) {
        Workbook book = Workbook.parse(text);
        for (LiveValue live : book.liveValues()) {
            assertThat(book.text().substring(live.offset(), live.offset() + live.length()))
                    .isEqualTo(live.expression());
        }
        assertThat(book.slips()).isEmpty();
        return book.liveValues().stream().map(LiveValue::expression).toList();
    }

    @Test
    void liveValues_inAParagraph() {
        LiveValue live =
                Workbook.parse("# A\n\nIt is ${width} wide.\n").liveValues().get(0);
        assertThat(live).isEqualTo(new LiveValue(0, "width", 3, 9, 13, 5));
    }

    @Test
    void liveValues_inHeadings() {
        assertThat(expressions("# Roof at ${slope}\n\n${a}\n===\n")).containsExactly("slope", "a");
    }

    @Test
    void liveValues_inLists() {
        assertThat(expressions("- one ${a}\n  1. two ${b}\n     - three ${c}\n"))
                .containsExactly("a", "b", "c");
    }

    @Test
    void liveValues_inQuotes() {
        assertThat(expressions("> Caution: keep ${a}\n> clear\n")).containsExactly("a");
    }

    @Test
    void liveValues_inEmphasis_starsAreJava() {
        assertThat(expressions("*${a * b}* and **${c*d}**, ${_e_}\n")).containsExactly("a * b", "c*d", "_e_");
    }

    @Test
    void liveValues_inLinks() {
        assertThat(expressions("[see ${a[0]}](there) ![${b}](x.png)\n")).containsExactly("a[0]", "b");
    }

    @Test
    void liveValues_linkDestination_isNone() {
        assertThat(expressions("[see](${a})\n")).isEmpty();
    }

    @Test
    void liveValues_inCodeSpan_isLiteral() {
        assertThat(expressions("`${a}` and ``b ` ${c}``\n")).isEmpty();
    }

    @Test
    void liveValues_inAnyFenceOrHtmlBlock_isLiteral() {
        assertThat(expressions("```text\n${a}\n```\n\n    ${b}\n\n<div>\n${c}\n</div>\n"))
                .isEmpty();
    }

    @Test
    void liveValues_escaped_isLiteral() {
        assertThat(expressions("\\${a} and $\\{b} and &#36;{c}\n")).isEmpty();
    }

    @Test
    void liveValues_escapedBackslashBefore_isLive() {
        assertThat(expressions("\\\\${a}\n")).containsExactly("a");
    }

    @Test
    void liveValues_stringLiteralWithBrace() {
        assertThat(expressions("${say(\"}\")} ${say(\"\\\"}\")} ${say('}')} ${say(\"`{\")}\n"))
                .containsExactly("say(\"}\")", "say(\"\\\"}\")", "say('}')", "say(\"`{\")");
    }

    @Test
    void liveValues_nestedBraces() {
        assertThat(expressions("${new int[] {1, 2}.length} ${f(x -> { return x; })}\n"))
                .containsExactly("new int[] {1, 2}.length", "f(x -> { return x; })");
    }

    @Test
    void liveValues_commentWithBrace() {
        assertThat(expressions("${a /* } */ / b}\n")).containsExactly("a /* } */ / b");
    }

    @Test
    void liveValues_blanksAround_areNotTheExpression() {
        assertThat(expressions("${  a.plus(b)\t}\n")).containsExactly("a.plus(b)");
    }

    @Test
    void liveValues_dollarsBefore() {
        assertThat(expressions("costs $${a}, $5 {b}\n")).containsExactly("a");
    }

    @Test
    void liveValues_overSeveralLines() {
        Workbook book = Workbook.parse("> It is ${a.plus(\r\n> b)} wide\r\n");
        LiveValue live = book.liveValues().get(0);
        assertThat(live.expression()).isEqualTo("a.plus(\nb)");
        assertThat(book.text().substring(live.offset(), live.offset() + live.length()))
                .isEqualTo("a.plus(\r\n> b)");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It is ${width wide.\n",
                "It is ${say(\"}) wide\n",
                "It is ${width\n\nwide}\n",
                "It is ${it's} wide\n",
                "It is ${ wide, see `a}`\n",
                "It is ${ {a} wide\n"
            })
    void slips_neverClosed_staysText(String text) {
        Workbook book = Workbook.parse(text);
        assertThat(book.liveValues()).isEmpty();
        assertThat(book.slips()).containsExactly(new Slip(1, 7, LiveValueParser.UNCLOSED));
        assertThat(book.tell(n -> "?").lead().get(0).toString()).contains("${");
    }

    @Test
    void slips_empty_staysText() {
        Workbook book = Workbook.parse("a\n\nb ${ }\n");
        assertThat(book.slips()).containsExactly(new Slip(3, 3, LiveValueParser.EMPTY));
        assertThat(book.liveValues()).isEmpty();
    }

    @Test
    void slips_oneStray_doesNotHideTheNextValue() {
        Workbook book = Workbook.parse("a ${b` c ${d}\n");
        assertThat(book.liveValues()).extracting(LiveValue::expression).containsExactly("d");
        assertThat(book.slips()).hasSize(1);
    }

    @Test
    void slips_longerThanTheBound_countsAsNeverClosed() {
        assertThat(expressions("${" + "a".repeat(ExpressionScan.MOST_CHARS - 1) + "}"))
                .hasSize(1);
        Workbook book = Workbook.parse("${" + "a".repeat(ExpressionScan.MOST_CHARS) + "}");
        assertThat(book.liveValues()).isEmpty();
        assertThat(book.slips()).hasSize(1);
    }
}
