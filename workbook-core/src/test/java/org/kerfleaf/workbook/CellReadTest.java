package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What is a cell, and where its chars stand. Fences: CommonMark 0.31.2 section 4.5. */
class CellReadTest {
    private static Cell only(String text) {
        Workbook book = Workbook.parse(text);
        assertThat(book.cells()).hasSize(1);
        return book.cells().get(0);
    }

    @Test
    void cells_lf() {
        Cell cell = only("# Stool\n\n```java\nint a;\n\nint b;\n```\n");
        assertThat(cell.text()).isEqualTo("int a;\n\nint b;");
        assertThat(cell.line()).isEqualTo(4);
        assertThat(cell.column()).isEqualTo(1);
        assertThat(cell.offset()).isEqualTo(17);
        assertThat(cell.length()).isEqualTo(14);
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(4, 1));
        assertThat(cell.positionOf(7)).isEqualTo(new TextPosition(5, 1));
        assertThat(cell.positionOf(12)).isEqualTo(new TextPosition(6, 5));
        assertThat(cell.positionOf(14)).isEqualTo(new TextPosition(6, 7));
    }

    @Test
    void cells_crlf() {
        Workbook book = Workbook.parse("Words\r\n\r\n```java\r\nint a;\r\nint b;\r\n```\r\n");
        Cell cell = book.cells().get(0);
        assertThat(cell.text()).isEqualTo("int a;\nint b;");
        assertThat(cell.positionOf(cell.text().indexOf("b"))).isEqualTo(new TextPosition(5, 5));
        assertThat(book.text().substring(cell.offset(), cell.offset() + cell.length()))
                .isEqualTo("int a;\r\nint b;");
    }

    @Test
    void cells_loneCarriageReturn_endsALine() {
        Cell cell = only("Words\r```java\rint a;\rint b;\r```");
        assertThat(cell.text()).isEqualTo("int a;\nint b;");
        assertThat(cell.positionOf(7)).isEqualTo(new TextPosition(4, 1));
    }

    @Test
    void cells_nestedList() {
        Cell cell = only("1. first\n   - second\n\n     ```java\n     int a;\n\n       int b;\n     ```\n");
        assertThat(cell.text()).isEqualTo("int a;\n\n  int b;");
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(5, 6));
        assertThat(cell.positionOf(cell.text().indexOf("int b"))).isEqualTo(new TextPosition(7, 8));
    }

    @Test
    void cells_onTheListMarkersLine() {
        Cell cell = only("- - ```java\n    int a;\n    ```\n");
        assertThat(cell.text()).isEqualTo("int a;");
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(2, 5));
    }

    @Test
    void cells_quote() {
        Cell cell = only("> > ```java\n> > int a;\n>>int b;\n> > ```\n");
        assertThat(cell.text()).isEqualTo("int a;\nint b;");
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(1 + 1, 5));
        assertThat(cell.positionOf(7)).isEqualTo(new TextPosition(3, 3));
    }

    @Test
    void cells_byteOrderMark_isNoPartOfTheFirstLine() {
        Workbook book = Workbook.parse("\uFEFF```java\nint a;\n```\n");
        assertThat(book.cells()).hasSize(1);
        assertThat(book.cells().get(0).offset()).isEqualTo(8);
        assertThat(book.text()).startsWith("```java");
    }

    @Test
    void cells_tildeFence_mayHoldBackquotes() {
        assertThat(only("~~~java\nint a;\n```\nint b;\n~~~\n").text()).isEqualTo("int a;\n```\nint b;");
    }

    @Test
    void cells_longFence_mayHoldShorterOnes() {
        assertThat(only("`````java\nint a;\n```\n````\n``````\n").text()).isEqualTo("int a;\n```\n````");
    }

    @Test
    void cells_closingFenceWithWordsAfter_doesNotClose() {
        assertThat(only("```java\nint a;\n``` no\n```\n").text()).isEqualTo("int a;\n``` no");
    }

    @Test
    void cells_unclosedFence_goesToTheEndAndIsASlip() {
        Workbook book = Workbook.parse("Words\n\n````java\nint a;\nint b;");
        assertThat(book.cells().get(0).text()).isEqualTo("int a;\nint b;");
        assertThat(book.slips()).singleElement().satisfies(slip -> {
            assertThat(slip.line()).isEqualTo(3);
            assertThat(slip.words()).contains("cell is never closed", "Write ````");
        });
    }

    @Test
    void cells_unclosedFenceInQuote_goesToTheEndOfTheQuote() {
        assertThat(only("> ```java\n> int a;\n\nWords\n").text()).isEqualTo("int a;");
    }

    @Test
    void cells_indentedCode_isNoCell() {
        assertThat(Workbook.parse("Words\n\n    ```java\n    int a;\n    ```\n").cells())
                .isEmpty();
        assertThat(Workbook.parse("\t```java\n\tint a;\n\t```\n").cells()).isEmpty();
    }

    @Test
    void cells_indentedFence_losesThatIndentOnly() {
        Cell cell = only("  ```java\n    int a;\n int b;\n  ```\n");
        assertThat(cell.text()).isEqualTo("  int a;\nint b;");
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(2, 3));
        assertThat(cell.positionOf(9)).isEqualTo(new TextPosition(3, 2));
    }

    @Test
    void cells_javaWithAttributesAfter_isACell() {
        assertThat(only("``` java id=roof hidden\nint a;\n```\n").text()).isEqualTo("int a;");
    }

    @Test
    void cells_otherFirstWord_isNoCell() {
        assertThat(Workbook.parse("```javascript\na\n```\n\n```\nb\n```\n\n```text java\nc\n```\n")
                        .cells())
                .isEmpty();
    }

    @Test
    void cells_empty_saysWhereALineWouldGo() {
        Cell cell = only("```java\n```\n");
        assertThat(cell.text()).isEmpty();
        assertThat(cell.offset()).isEqualTo(8);
        assertThat(cell.length()).isZero();
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(2, 1));
        assertThat(only("```java").positionOf(0)).isEqualTo(new TextPosition(2, 1));
    }

    @Test
    void cells_tabsAndEmoji_countAsChars() {
        Cell cell = only("\uD83E\uDE9A\n\n> ```java\n> \t\"\uD83E\uDE9A\" + a\n> ```\n");
        assertThat(cell.text()).isEqualTo("\t\"\uD83E\uDE9A\" + a");
        assertThat(cell.positionOf(cell.text().indexOf("a"))).isEqualTo(new TextPosition(4, 11));
    }

    @Test
    void cells_tabUsedUpInPartByAQuote_isBlanksInTheTextAndOneCharInTheFile() {
        Cell cell = only("> ```java\n>\tint a;\n> ```\n");
        assertThat(cell.text()).isEqualTo("  int a;");
        assertThat(cell.positionOf(0)).isEqualTo(new TextPosition(2, 2));
        assertThat(cell.positionOf(1)).isEqualTo(new TextPosition(2, 2));
        assertThat(cell.positionOf(2)).isEqualTo(new TextPosition(2, 3));
        assertThat(cell.positionOf(6)).isEqualTo(new TextPosition(2, 7));
        assertThat(cell.length()).isEqualTo(7);
    }

    @Test
    void positionOf_outsideTheText_namesTheCell() {
        Cell cell = only("```java\nint a;\n```\n");
        assertThatThrownBy(() -> cell.positionOf(7))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining("cell 0");
        assertThatThrownBy(() -> cell.positionOf(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void views_oneNameALine() {
        Workbook book = Workbook.parse("```view\n  sheet use\n\ncost \n```\n\n~~~ view wide\nchecks\n~~~\n");
        assertThat(book.views()).extracting(View::what).containsExactly("sheet use", "cost", "checks");
        assertThat(book.views()).extracting(View::line).containsExactly(2, 4, 8);
        assertThat(book.views())
                .allSatisfy(view -> assertThat(book.text().substring(view.offset(), view.offset() + view.length()))
                        .isEqualTo(view.what()));
    }

    @Test
    void read_notUtf8_saysWhichByte() {
        byte[] latin1 = "# Caf\u00e9 shelf\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> Workbook.read(latin1))
                .isInstanceOfSatisfying(
                        WorkbookFileException.class,
                        e -> assertThat(e.byteOffset()).isEqualTo(5))
                .hasMessage("Byte 5, on line 1, is 0xE9, and that is not text in UTF-8. Keep the file as UTF-8 text.");
    }

    @Test
    void read_cutOffInsideACharacter_saysWhichByte() {
        assertThatThrownBy(() -> Workbook.read(new byte[] {'a', '\n', (byte) 0xE2, (byte) 0x82}))
                .isInstanceOfSatisfying(
                        WorkbookFileException.class,
                        e -> assertThat(e.byteOffset()).isEqualTo(2))
                .hasMessageContaining("on line 2");
    }

    @Test
    void read_tooLarge_saysBothSizes() {
        assertThatThrownBy(() -> Workbook.read(new byte[Workbook.MOST_BYTES + 1]))
                .isInstanceOf(WorkbookFileException.class)
                .hasMessageContaining("16,777,217")
                .hasMessageContaining("16,777,216");
    }

    @Test
    void parse_halfASurrogatePair_isRefused() {
        assertThatThrownBy(() -> Workbook.parse("a\uD83E")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void read_empty_isAWorkbook() {
        Workbook book = Workbook.read(new byte[0]);
        assertThat(book.bytes()).isEmpty();
        assertThat(book.title()).isEqualTo(Workbook.UNTITLED);
        assertThat(book.cells()).isEmpty();
    }
}
