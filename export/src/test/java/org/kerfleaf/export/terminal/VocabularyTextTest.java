package org.kerfleaf.export.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.export.terminal.VocabularyText.Form;
import org.kerfleaf.export.terminal.VocabularyText.Group;
import org.kerfleaf.export.terminal.VocabularyText.Said;

class VocabularyTextTest {
    private static final Said TRIM = new Said(
            "trim",
            "sizes",
            "a part",
            "Takes a little off.",
            List.of(
                    new Form(
                            "trim(much)",
                            "a part",
                            "Takes a little off. Seldom more.",
                            List.of("much: a length"),
                            List.of("if it is all")),
                    new Form(
                            "trim(much)",
                            "a part",
                            "Takes a little off.",
                            List.of("much: a text in quotes"),
                            List.of())),
            "Part first = panel(\"A name with blanks\", ply).wide(\"20 in\").high(\"30 in\").trim(\"1/8 in\"); var second = place(first)",
            List.of());
    private static final Said BEGIN = new Said(
            "begin",
            "sizes",
            "",
            "Begins.",
            List.of(new Form("begin()", "a part", "Begins.", List.of(), List.of())),
            "begin()",
            List.of("trim"));

    @Test
    void of_aGroup_hasItsRuleItsWordsAndEachExample() {
        String text = VocabularyText.of(List.of(new Group("sizes", List.of(BEGIN, TRIM))), "var a = 1;", 60);
        assertThat(text).isEqualTo("""
                ━━━━  ━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━
                Sizes                                                2 words

                begin()
                    Begins.
                    begin()

                Said of a part

                .trim(much)
                    Takes a little off.
                    Part first = panel("A name with blanks", ply)
                        .wide("20 in").high("30 in").trim("1/8 in");
                    var second = place(first)

                ━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━  ━━━━
                Around the examples

                var a = 1;
                """);
    }

    @Test
    void inFull_aWord_hasEveryFormWithWhatStandsInItsBrackets() {
        String text = VocabularyText.inFull(List.of(TRIM, BEGIN), 100);
        assertThat(text)
                .contains(
                        ".trim, said of a part",
                        ".trim(much) gives a part\n    Takes a little off. Seldom more.\n    much: a length\n    Refuses if it is all\n",
                        "    much: a text in quotes\n",
                        "Of that can be said .trim\n");
    }

    @Test
    void of_anyWidth_noLineIsLonger() {
        for (int columns = TerminalText.NARROWEST; columns <= TerminalText.WIDEST; columns++) {
            int width = columns;
            assertThat(VocabularyText.of(List.of(new Group("sizes", List.of(BEGIN, TRIM))), TRIM.example(), columns)
                            .lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
        }
    }
}
