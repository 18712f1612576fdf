package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What holds for every file. The failing seed and file are in the message. */
class WorkbookPropertyTest {
    private static final int BOOKS = 6_000;

    @Test
    void bytes_ofAnyFile_areThoseRead() {
        for (long seed = 0; seed < BOOKS; seed++) {
            String file = new RandomBook(seed).file();
            byte[] bytes = file.getBytes(StandardCharsets.UTF_8);
            assertThat(Workbook.read(bytes).bytes())
                    .as(RandomBook.shown(seed, file))
                    .isEqualTo(bytes);
        }
    }

    @Test
    void bytes_ofAnyUnicodeText_areThoseRead() {
        for (long seed = 0; seed < 1_000; seed++) {
            RandomGenerator random =
                    RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
            var text = new StringBuilder();
            for (int i = random.nextInt(200); i > 0; i--) {
                int c = random.nextInt(3) > 0 ? random.nextInt(128) : random.nextInt(0x110000);
                text.appendCodePoint(c >= 0xD800 && c < 0xE000 ? '`' : c);
            }
            byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
            assertThat(Workbook.read(bytes).bytes())
                    .as(RandomBook.shown(seed, text.toString()))
                    .isEqualTo(bytes);
        }
    }

    @Test
    void cells_everyChar_standsWhereItsPositionSays() {
        int cells = 0;
        for (long seed = 0; seed < BOOKS; seed++) {
            String file = new RandomBook(seed).file();
            Workbook book = Workbook.parse(file);
            String[] lines = RandomBook.linesOf(book.text());
            for (Cell cell : book.cells()) {
                assertThat(readThroughPositions(cell, lines))
                        .as(RandomBook.shown(seed, file))
                        .isEqualTo(cell.text());
                String first = cell.text().isEmpty() ? "" : lines[cell.line() - 1].substring(cell.column() - 1);
                assertThat(slice(book, cell.offset(), cell.length()))
                        .as(RandomBook.shown(seed, file))
                        .startsWith(first);
                cells++;
            }
        }
        assertThat(cells).isGreaterThan(BOOKS);
    }

    /** The cell's text, read char by char from the file's lines. */
    private static String readThroughPositions(Cell cell, String[] lines) {
        var read = new StringBuilder();
        for (int at = 0; at < cell.text().length(); at++) {
            TextPosition position = cell.positionOf(at);
            String line = lines[position.line() - 1];
            int index = position.column() - 1;
            if (index == line.length()) {
                read.append('\n');
            } else if (line.charAt(index) == '\t' && cell.text().charAt(at) == ' ') {
                // One of the blanks that are left of a tab.
                read.append(' ');
            } else {
                read.append(line.charAt(index) == '\0' ? '\uFFFD' : line.charAt(index));
            }
        }
        return read.toString();
    }

    @Test
    void views_offsetAndLength_holdTheName() {
        int views = 0;
        for (long seed = 0; seed < BOOKS; seed++) {
            String file = new RandomBook(seed).file();
            Workbook book = Workbook.parse(file);
            String[] lines = RandomBook.linesOf(book.text());
            for (View view : book.views()) {
                String there = slice(book, view.offset(), view.length()).replace('\0', '\uFFFD');
                assertThat(there).as(RandomBook.shown(seed, file)).isEqualTo(view.what());
                assertThat(lines[view.line() - 1].replace('\0', '\uFFFD'))
                        .as(RandomBook.shown(seed, file))
                        .contains(view.what());
                views++;
            }
        }
        assertThat(views).isGreaterThan(BOOKS);
    }

    @Test
    void liveValues_offsetLengthLineAndColumn_holdTheExpression() {
        int values = 0;
        for (long seed = 0; seed < BOOKS; seed++) {
            String file = new RandomBook(seed).file();
            Workbook book = Workbook.parse(file);
            String[] lines = RandomBook.linesOf(book.text());
            for (LiveValue live : book.liveValues()) {
                String there = slice(book, live.offset(), live.length());
                if (live.expression().contains("\n")) {
                    there = there.replaceAll("(\r\n|\n|\r)[ \t>]*", "\n");
                }
                assertThat(there).as(RandomBook.shown(seed, file)).isEqualTo(live.expression());
                assertThat(lines[live.line() - 1].substring(live.column() - 1))
                        .as(RandomBook.shown(seed, file))
                        .startsWith(live.expression().split("\n")[0]);
                values++;
            }
        }
        assertThat(values).isGreaterThan(BOOKS);
    }

    @Test
    void tell_anyFile_saysEveryLiveValueOnce() {
        for (long seed = 0; seed < BOOKS; seed++) {
            String file = new RandomBook(seed).file();
            Workbook book = Workbook.parse(file);
            String told = book.tell(n -> "<<" + n + ">>").toString();
            for (LiveValue live : book.liveValues()) {
                String mark = "<<" + live.ordinal() + ">>";
                assertThat(told.split(mark, -1))
                        .as("%s in %s", mark, RandomBook.shown(seed, file))
                        .hasSize(2);
            }
            assertThat(book.tell(n -> "").steps())
                    .extracting(Prose.Step::number)
                    .isEqualTo(book.steps().stream().map(s -> s.number()).toList());
        }
    }

    @Test
    void read_deeplyNested_isReadAndTold() {
        for (String mark : List.of(">", "- ", "*a **b ", "[", "${", "a`", "![")) {
            Workbook book = Workbook.parse(mark.repeat(20_000) + " x\n\nWords\n\n```java\na\n```\n");
            assertThat(book.tell(n -> "").title()).isEqualTo(Workbook.UNTITLED);
            assertThat(book.cells()).as(mark).hasSize(1);
        }
    }

    @Test
    @Timeout(20)
    void read_aPageOfStrayOpenings_isReadInOneGo() {
        Workbook book = Workbook.parse("${\"".repeat(100_000));
        assertThat(book.slips()).hasSize(100_000);
        assertThat(book.tell(n -> "").lead()).hasSize(1);
    }

    private static String slice(Workbook book, int offset, int length) {
        return book.text().substring(offset, offset + length);
    }
}
