package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaskedTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "a = \"b\";|a = \" \";",
                "a // b|a     ",
                "a /* b */ c|a         c",
                "\"// no\" + d|\"     \" + d",
                "\"\\\"\" + d|\"  \" + d",
                "'\"' + d|' ' + d",
                "\"open|\"    ",
                "a / b|a / b",
            })
    void of_commentsAndLiterals_areBlank(String text, String masked) {
        assertThat(Masked.of(text))
                .startsWith(masked.substring(0, masked.length() - 1))
                .hasSameSizeAs(text);
    }

    @Test
    void of_lineEnds_stay() {
        assertThat(Masked.of("/* a\nb */\n\"\"\"\n  c\n  \"\"\"")).isEqualTo("    \n    \n\"  \n   \n    \"");
    }

    @Test
    void indexOf_name_isAWordOfItsOwn() {
        assertThat(Masked.indexOf("widths width$ width", "width", 0)).isEqualTo(14);
        assertThat(Masked.indexOf("widths", "width", 0)).isEqualTo(-1);
    }

    @Test
    void indexOf_whatFollowsADot_isNoName() {
        assertThat(Masked.indexOf("floor.wide(wide)", "wide", 0)).isEqualTo(11);
        assertThat(Masked.indexOfWord("floor.wide(wide)", "wide", 0)).isEqualTo(6);
    }

    @Test
    void openComment_findsOnlyTheOneThatDoesNotEnd() {
        assertThat(Masked.openComment("int a; /* b */ int c; /* d")).isEqualTo(22);
        assertThat(Masked.openComment("/*/ a")).isZero();
        assertThat(Masked.openComment("// fine: /*\nString s = \"/*\"; /**/")).isEqualTo(-1);
    }
}
