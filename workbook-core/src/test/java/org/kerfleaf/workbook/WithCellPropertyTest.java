package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every edit of a cell. The failing seed, file, cell and new text are in the message. */
class WithCellPropertyTest {
    private static final int BOOKS = 6_000;
    private static final Pattern FENCE = Pattern.compile("`{3,}|~{3,}");

    private static final Pattern LINE_END = Pattern.compile("\r\n|\n|\r");

    private interface Claim {
        void about(Workbook book, int ordinal, String newText, String what);
    }

    private static void holds(Claim claim) {
        int edits = 0;
        for (long seed = 0; seed < BOOKS; seed++) {
            var chance = new RandomBook(seed);
            String file = chance.file();
            Workbook book = Workbook.read(file.getBytes(StandardCharsets.UTF_8));
            if (!book.cells().isEmpty()) {
                int ordinal = chance.random().nextInt(book.cells().size());
                String newText = chance.cellText();
                String what = "cell %d, new text:%n%s%n%s"
                        .formatted(ordinal, RandomBook.shown(newText), RandomBook.shown(seed, file));
                claim.about(book, ordinal, newText, what);
                edits++;
            }
        }
        assertThat(edits).isGreaterThan(BOOKS / 2);
    }

    @Test
    void withCell_sameText_isByteIdentical() {
        holds((book, ordinal, newText, what) -> {
            String same = book.cells().get(ordinal).text();
            assertThat(book.withCell(ordinal, same).bytes()).as(what).isEqualTo(book.bytes());
            assertThat(book.withCell(ordinal, same.replace("\n", "\r\n")).bytes())
                    .as(what)
                    .isEqualTo(book.bytes());
        });
    }

    @Test
    void withCell_newText_readsBack() {
        holds((book, ordinal, newText, what) -> {
            String back =
                    reread(book.withCell(ordinal, newText)).cells().get(ordinal).text();
            String wanted = newText.replace("\r\n", "\n").replace('\0', '\uFFFD');
            // A line of blanks alone comes back empty in a list, and only there.
            String wantedInList = wanted.replaceAll("(?md)^[ \t]+$", "");
            assertThat(back).as(what).isIn(wanted, wantedInList);
        });
    }

    @Test
    void withCell_newText_allElseReadsTheSame() {
        holds((book, ordinal, newText, what) -> {
            Workbook changed = reread(book.withCell(ordinal, newText));
            assertThat(changed.cells()).as(what).hasSameSizeAs(book.cells());
            for (Cell cell : book.cells()) {
                Cell now = changed.cells().get(cell.ordinal());
                if (cell.ordinal() != ordinal) {
                    assertThat(now.text()).as(what).isEqualTo(cell.text());
                }
                assertThat(now.step()).as(what).isEqualTo(cell.step());
                assertThat(now.section()).as(what).isEqualTo(cell.section());
            }
            assertThat(changed.views().stream().map(View::what).toList())
                    .as(what)
                    .isEqualTo(book.views().stream().map(View::what).toList());
            assertThat(changed.tell(n -> "?")).as(what).isEqualTo(book.tell(n -> "?"));
            assertThat(changed.liveValues().stream().map(LiveValue::expression).toList())
                    .as(what)
                    .isEqualTo(book.liveValues().stream()
                            .map(LiveValue::expression)
                            .toList());
            assertThat(changed.steps()).as(what).isEqualTo(book.steps());
            assertThat(changed.slips()).as(what).hasSameSizeAs(book.slips());
        });
    }

    @Test
    void withCell_newText_changesNoByteOutsideTheCellButItsFence() {
        holds((book, ordinal, newText, what) -> {
            Cell cell = book.cells().get(ordinal);
            String before = book.text();
            String after = reread(book.withCell(ordinal, newText)).text();
            int opening = lineStart(before, cell.line() - 1);
            int body = lineStart(before, cell.line());
            int behind = lineStart(before, cell.line() + linesOf(cell, before));

            Matcher old = fenceFrom(before, opening);
            Matcher now = fenceFrom(after, opening);
            assertThat(after.substring(0, now.start())).as(what).isEqualTo(before.substring(0, old.start()));
            assertThat(after.substring(now.end())).as(what).startsWith(before.substring(old.end(), body));

            int longer = now.group().length() - old.group().length();
            if (longer == 0) {
                assertThat(after).as(what).endsWith(before.substring(behind));
            } else {
                // As little as will do: one more than a line of the new text that would have closed it.
                String closer = now.group().substring(1);
                assertThat(closer.length())
                        .as(what)
                        .isGreaterThanOrEqualTo(old.group().length());
                assertThat(Stream.of(RandomBook.linesOf(newText)).map(String::strip))
                        .as(what)
                        .contains(closer);
                assertThat(after)
                        .as(what)
                        .satisfiesAnyOf(
                                text -> assertThat(text).endsWith(closedBy(now.group(), before, behind)),
                                text -> assertThat(text).endsWith(before.substring(behind)));
            }
            assertThat(book.withCell(ordinal, newText).bytes()[0]).as(what).isEqualTo(book.bytes()[0]);
        });
    }

    @Test
    void withCell_backAgain_readsAsBefore() {
        holds((book, ordinal, newText, what) -> {
            String old = book.cells().get(ordinal).text();
            Workbook back = book.withCell(ordinal, newText).withCell(ordinal, old);
            assertThat(back.cells().get(ordinal).text()).as(what).isEqualTo(old);
        });
    }

    private static Workbook reread(Workbook book) {
        Workbook again = Workbook.read(book.bytes());
        assertThat(again).isEqualTo(book);
        return again;
    }

    /** Where the line of that number, from 1, begins; the end of the text for one past the last. */
    private static int lineStart(String text, int number) {
        Matcher mark = LINE_END.matcher(text);
        int start = 0;
        for (int line = 1; line < number; line++) {
            if (!mark.find()) {
                return text.length();
            }
            start = mark.end();
        }
        return start;
    }

    private static int linesOf(Cell cell, String text) {
        if (!cell.text().isEmpty()) {
            return cell.text().split("\n", -1).length;
        }
        // No line, or one blank one: then its text begins where the line ends.
        String[] lines = RandomBook.linesOf(text);
        boolean blank = cell.line() <= lines.length && lines[cell.line() - 1].length() == cell.column() - 1;
        return blank ? 1 : 0;
    }

    private static Matcher fenceFrom(String text, int from) {
        Matcher fence = FENCE.matcher(text);
        assertThat(fence.find(from)).isTrue();
        return fence;
    }

    /** The rest of the file with its first fence at least as long as the new opening one. */
    private static String closedBy(String opening, String text, int from) {
        Matcher closing = FENCE.matcher(text);
        if (!closing.find(from)) {
            return text.substring(from);
        }
        String grown = closing.group().length() >= opening.length() ? closing.group() : opening;
        return text.substring(from, closing.start()) + grown + text.substring(closing.end());
    }
}
