package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class WithCellTest {
    private static String with(String text, String newText) {
        return Workbook.parse(text).withCell(0, newText).text();
    }

    @Test
    void withCell_lf() {
        assertThat(with("a\n\n```java\none\ntwo\n```\nb\n", "one\n\nthree"))
                .isEqualTo("a\n\n```java\none\n\nthree\n```\nb\n");
    }

    @Test
    void withCell_crlf_takesAnyLineEnd() {
        assertThat(with("a\r\n```java\r\none\r\n```\r\n", "two\nthree\r\nfour\rfive"))
                .isEqualTo("a\r\n```java\r\ntwo\r\nthree\r\nfour\r\nfive\r\n```\r\n");
    }

    @Test
    void withCell_mixedLineEnds_unchangedLinesKeepTheirs() {
        assertThat(with("```java\none\r\ntwo\nthree\r\nfour\n```\n", "one\nTWO\nand\nthree\nfour"))
                .isEqualTo("```java\none\r\nTWO\r\nand\r\nthree\r\nfour\n```\n");
    }

    @Test
    void withCell_blankLineAfterALoneCarriageReturn_staysALine() {
        assertThat(with("```java\rone\n```\n", "\ntwo")).isEqualTo("```java\r\rtwo\n```\n");
        assertThat(with("> ```java\r> one\r> two\n\nWords\n", "one")).isEqualTo("> ```java\r> one\r\n\nWords\n");
        assertThat(with("> ```java\r> one\n\n> Words\n", "")).isEqualTo("> ```java\r>\n\n> Words\n");
    }

    @Test
    void withCell_otherUnicodeLineSeparators_endNoLine() {
        assertThat(with("- ```java\n  ```\n", "a \u2028 \u2029\nb"))
                .isEqualTo("- ```java\n  a \u2028 \u2029\n  b\n  ```\n");
    }

    @Test
    void withCell_emptyCell_takesTheFilesLineEnd() {
        assertThat(with("a\r\nb\r\n```java\n```\r\n", "one\ntwo"))
                .isEqualTo("a\r\nb\r\n```java\none\r\ntwo\r\n```\r\n");
    }

    @Test
    void withCell_emptied() {
        assertThat(with("```java\none\ntwo\n```", "")).isEqualTo("```java\n```");
    }

    @Test
    void withCell_blankLineAndNoLine_areTheSameText() {
        String blank = "```java\n\n```\n";
        assertThat(with(blank, "")).isEqualTo(blank);
        assertThat(with(blank, "\n")).isEqualTo("```java\n\n\n```\n");
    }

    @Test
    void withCell_sameText_isTheSameWorkbook() {
        Workbook book = Workbook.parse("\uFEFF> ~~~java\r\n>\tone\r\n>two\n> ~~~");
        assertThat(book.withCell(0, "  one\r\ntwo")).isSameAs(book);
    }

    @Test
    void withCell_nestedList() {
        assertThat(with("1. a\n   - b\n\n     ```java\n     one\n     ```\n\n   c\n", "one\n\n  two"))
                .isEqualTo("1. a\n   - b\n\n     ```java\n     one\n\n       two\n     ```\n\n   c\n");
    }

    @Test
    void withCell_onTheListMarkersLine() {
        assertThat(with("10) - ```java\n      ```\n", "one")).isEqualTo("10) - ```java\n      one\n      ```\n");
    }

    @Test
    void withCell_listWithTab() {
        assertThat(with("-\t```java\n\tone\n\t```\n", "one\n\ttwo")).isEqualTo("-\t```java\n\tone\n    \ttwo\n\t```\n");
    }

    @Test
    void withCell_lineOfBlanksInList_readsBackEmpty() {
        Workbook book = Workbook.parse("- ```java\n  one\n  ```\n").withCell(0, "one\n \t \ntwo");
        assertThat(book.text()).isEqualTo("- ```java\n  one\n\n  two\n  ```\n");
        assertThat(book.cells().get(0).text()).isEqualTo("one\n\ntwo");
    }

    @Test
    void withCell_quote() {
        assertThat(with("> ```java\n>one\n> ```\n", "one\n\n  two  \n \t"))
                .isEqualTo("> ```java\n>one\n>\n>   two  \n>  \t\n> ```\n");
    }

    @Test
    void withCell_quoteInListInQuote() {
        assertThat(with("> - > ```java\n>   > ```\n", "one\n\n two"))
                .isEqualTo("> - > ```java\n>   > one\n>   >\n>   >  two\n>   > ```\n");
    }

    @Test
    void withCell_byteOrderMark() {
        byte[] bytes =
                Workbook.parse("\uFEFF```java\none\n```\n").withCell(0, "two").bytes();
        assertThat(bytes).isEqualTo(Utf8.encode("\uFEFF```java\ntwo\n```\n"));
    }

    @Test
    void withCell_noFinalNewline_staysSo() {
        assertThat(with("```java\none\n```", "two")).isEqualTo("```java\ntwo\n```");
    }

    @Test
    void withCell_tildeFence_backquotesDoNotClose() {
        assertThat(with("~~~java\none\n~~~\n", "```\n~~")).isEqualTo("~~~java\n```\n~~\n~~~\n");
    }

    @Test
    void withCell_fenceLineInText_makesTheFenceOneLonger() {
        assertThat(with("```java id=a\none\n```\n", "/*\n````  \n*/"))
                .isEqualTo("`````java id=a\n/*\n````  \n*/\n`````\n");
    }

    @Test
    void withCell_longFence_growsOnlyWhenItMust() {
        assertThat(with("~~~~~java\none\n~~~~~\n", "~~~~")).isEqualTo("~~~~~java\n~~~~\n~~~~~\n");
        assertThat(with("~~~~~java\none\n~~~~~\n", "~~~~~")).isEqualTo("~~~~~~java\n~~~~~\n~~~~~~\n");
    }

    @Test
    void withCell_closingFenceLongEnough_stays() {
        assertThat(with("```java\none\n``````\n", "```")).isEqualTo("````java\n```\n``````\n");
    }

    @Test
    void withCell_textThatOnlyLooksLikeAFence_changesNoFence() {
        assertThat(with("```java\none\n```\n", "    ```\n\t```\n``` a\n``")).startsWith("```java\n    ```\n");
        assertThat(with("  ```java\n  one\n  ```\n", "  ```")).isEqualTo("  ```java\n    ```\n  ```\n");
    }

    @Test
    void withCell_unclosedFence() {
        assertThat(with("```java\none\n", "two\nthree")).isEqualTo("```java\ntwo\nthree\n");
        assertThat(with("```java\none", "one\ntwo")).isEqualTo("```java\none\ntwo");
        assertThat(with("```java\none\ntwo", "one")).isEqualTo("```java\none");
        assertThat(with("```java", "one")).isEqualTo("```java\none");
        assertThat(with("```java\none", "```")).isEqualTo("````java\n```");
    }

    @Test
    void withCell_unclosedFenceWithBlankLastLine_needsALineEnd() {
        assertThat(with("```java\none", "one\n")).isEqualTo("```java\none\n\n");
    }

    @Test
    void withCell_unclosedFenceInQuote_leavesWhatFollows() {
        assertThat(with("> ```java\n> one\n\nWords\n", "two\n")).isEqualTo("> ```java\n> two\n>\n\nWords\n");
    }

    @Test
    void withCell_otherCellsStay() {
        Workbook book =
                Workbook.parse("```java\none\n```\n${a}\n~~~java\ntwo\n~~~\n").withCell(1, "2");
        assertThat(book.cells()).extracting(Cell::text).containsExactly("one", "2");
        assertThat(book.liveValues()).hasSize(1);
    }

    @Test
    void withCell_noSuchCell_isRefused() {
        Workbook book = Workbook.parse("```java\none\n```\n");
        assertThatThrownBy(() -> book.withCell(1, "a")).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void withCell_halfASurrogatePair_isRefused() {
        Workbook book = Workbook.parse("```java\none\n```\n");
        assertThatThrownBy(() -> book.withCell(0, "\uD83E")).isInstanceOf(IllegalArgumentException.class);
    }
}
