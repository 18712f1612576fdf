package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.workbook.Prose.Block;
import org.kerfleaf.workbook.Prose.Block.Items;
import org.kerfleaf.workbook.Prose.Block.Paragraph;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Section;
import org.kerfleaf.workbook.Prose.Step;
import org.kerfleaf.workbook.Prose.Style;

class TellTest {
    private static Prose tell(String text) {
        return Workbook.parse(text).tell(n -> "<" + n + ">");
    }

    private static Run plain(String text) {
        return new Run(text, Style.PLAIN);
    }

    private static Run run(Style style, String text) {
        return new Run(text, style);
    }

    private static Block paragraph(Run... runs) {
        return new Paragraph(List.of(runs));
    }

    private static Step step(String text) {
        return tell("# Build steps\n## S\n" + text).steps().get(0);
    }

    @Test
    void tell_titleLeadAndSections_withoutCellsAndViews() {
        Prose prose =
                tell("# A ${kind} stool\n\nLead.\n\n```java\na\n```\n\n## Sizes ${n}\n\nOne.\n\n```view\ncost\n```\n\n"
                        + "### More\n\nTwo.\n");
        assertThat(prose)
                .isEqualTo(new Prose(
                        "A <0> stool",
                        List.of(paragraph(plain("Lead."))),
                        List.of(
                                new Section("Sizes <1>", 2, List.of(paragraph(plain("One.")))),
                                new Section("More", 3, List.of(paragraph(plain("Two."))))),
                        List.of()));
    }

    @Test
    void tell_noTitle_isUntitled() {
        assertThat(tell("Lead.\n").title()).isEqualTo("Untitled workbook");
    }

    @Test
    void tell_buildSteps_areNoSection() {
        Prose prose = tell("# T\n## Build steps\n### Cut\n\nTrim.\n\n### Glue ${a}\n## Costs\n");
        assertThat(prose.sections()).containsExactly(new Section("Costs", 2, List.of()));
        assertThat(prose.steps())
                .containsExactly(
                        new Step(1, "Cut", List.of(paragraph(plain("Trim."))), List.of(), List.of()),
                        new Step(2, "Glue <0>", List.of(), List.of(), List.of()));
    }

    @Test
    void tell_wordsBeforeTheFirstStep_areKeptAsASection() {
        Prose prose = tell("## Build steps\n\nRead all first.\n\n### Cut\n");
        assertThat(prose.sections())
                .containsExactly(new Section("Build steps", 2, List.of(paragraph(plain("Read all first.")))));
    }

    @Test
    void tell_headingInsideAStep_isAStrongParagraph() {
        assertThat(step("### Trim\n\nCut.\n").blocks())
                .containsExactly(paragraph(run(Style.STRONG, "Trim")), paragraph(plain("Cut.")));
    }

    @Test
    void tell_cautionAndNote_goWithTheirStep() {
        Step step = step("Dig.\n\n> Caution: by *hand*\n> near ${a}.\n\n> note: slowly.\n");
        assertThat(step.blocks()).containsExactly(paragraph(plain("Dig.")));
        assertThat(step.cautions())
                .containsExactly(List.of(
                        plain("by "),
                        run(Style.EMPHASIS, "hand"),
                        plain(" near "),
                        run(Style.VALUE, "<0>"),
                        plain(".")));
        assertThat(step.notes()).containsExactly(List.of(plain("slowly.")));
    }

    @Test
    void tell_cautionWithItsWordSetStrong_isACaution() {
        assertThat(step("> **Caution:** sharp.\n").cautions()).containsExactly(List.of(plain("sharp.")));
        assertThat(step("> **Caution**: sharp.\n").cautions()).containsExactly(List.of(plain("sharp.")));
    }

    @Test
    void tell_cautionInsideAList_isNotLost() {
        Step step = step("- Dig.\n\n  > Caution: by hand.\n\n- Fill.\n");
        assertThat(step.cautions()).containsExactly(List.of(plain("by hand.")));
        assertThat(step.blocks())
                .containsExactly(new Items(List.of(List.of(plain("Dig.")), List.of(plain("Fill."))), false));
    }

    @Test
    void tell_cautionOfSeveralParagraphs_isOne() {
        assertThat(step("> Caution: a.\n>\n> b.\n> - c\n> - d\n").cautions())
                .containsExactly(List.of(plain("a. b. \u2013 c; d")));
    }

    @Test
    void tell_cautionOutsideTheSteps_keepsItsWord() {
        assertThat(tell("> Caution: dust.\n").lead())
                .containsExactly(paragraph(run(Style.STRONG, "Caution:"), plain(" dust.")));
    }

    @Test
    void tell_otherQuote_isAParagraphInEmphasis() {
        assertThat(step("> Measure ${a} **twice**,\n> cut once.\n").blocks())
                .containsExactly(paragraph(
                        run(Style.EMPHASIS, "Measure "),
                        run(Style.VALUE, "<0>"),
                        run(Style.EMPHASIS, " "),
                        run(Style.STRONG, "twice"),
                        run(Style.EMPHASIS, ", cut once.")));
    }

    @Test
    void tell_softLineBreakIsASpace_hardOneALineEnd() {
        assertThat(tell("one\r\n  two\\\nthree\n").lead()).containsExactly(paragraph(plain("one two\nthree")));
    }

    @Test
    void tell_styles_linkTextOnly_noHtml() {
        assertThat(tell("a *b **c*** `d` [e `f`](g \"h\") <b>i</b> &amp; ![j](k) <http://l.m>\n")
                        .lead())
                .containsExactly(paragraph(
                        plain("a "),
                        run(Style.EMPHASIS, "b "),
                        run(Style.STRONG, "c"),
                        plain(" "),
                        run(Style.CODE, "d"),
                        plain(" e "),
                        run(Style.CODE, "f"),
                        plain(" i & j http://l.m")));
    }

    @Test
    void tell_lists() {
        assertThat(tell("- a\n  b\n- c\n\n1. d\n2. e ${x}\n").lead())
                .containsExactly(
                        new Items(List.of(List.of(plain("a b")), List.of(plain("c"))), false),
                        new Items(List.of(List.of(plain("d")), List.of(plain("e "), run(Style.VALUE, "<0>"))), true));
    }

    @Test
    void tell_listInAList_standsInItsItem() {
        assertThat(tell("1. Sides\n   - left\n   - right\n2. Door\n\n   ```java\n   a\n   ```\n")
                        .lead())
                .containsExactly(
                        new Items(List.of(List.of(plain("Sides \u2013 left; right")), List.of(plain("Door"))), true));
    }

    @Test
    void tell_codeThatIsNoCell_isAParagraphOfCode() {
        assertThat(tell("```text\na\n b\n```\n\n    c\n").lead())
                .containsExactly(paragraph(run(Style.CODE, "a\n b")), paragraph(run(Style.CODE, "c")));
    }

    @Test
    void tell_htmlRulesAndReferences_areDropped() {
        assertThat(tell("<div>\nx\n</div>\n\n---\n\n[a]: b\n\n<!-- c -->\n").lead())
                .isEmpty();
    }

    @Test
    void tell_valuesSideBySide_stayTwo() {
        assertThat(tell("${a}${b}\n").lead())
                .containsExactly(paragraph(run(Style.VALUE, "<0>"), run(Style.VALUE, "<1>")));
    }

    @Test
    void tell_noTextForAValue_namesIt() {
        Workbook book = Workbook.parse("${width}\n");
        assertThatThrownBy(() -> book.tell(n -> null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("No text for live value 0, ${width}");
    }
}
