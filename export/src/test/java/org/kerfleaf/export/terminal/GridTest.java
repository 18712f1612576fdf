package org.kerfleaf.export.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class GridTest {
    private static Cell inches(long sixtyFourths) {
        return Cell.of(Length.ofSixtyFourths(sixtyFourths), MeasureStyle.INCHES);
    }

    @Test
    void lines_lengths_alignBetweenWholeAndFraction() {
        Grid grid = new Grid()
                .tape("Long")
                .row(inches(9 * 64 + 14))
                .row(inches(19 * 64))
                .row(inches(46));
        assertThat(grid.lines(40)).containsExactly("    Long", "────────", " 9 7/32", "19", "   23/32");
    }

    @Test
    void lines_tooWide_breaksTheWidestWords() {
        Grid grid = new Grid().words("A").words("B").row(Cell.of("one"), Cell.of("two three four"));
        assertThat(grid.lines(14)).containsExactly("A    B", "──────────────", "one  two three", "     four");
    }

    @Test
    void lines_numbers_standAtTheRight() {
        Grid grid = new Grid().number("Cut").row(Cell.of(7)).row(Cell.of(12));
        assertThat(grid.lines(20)).containsExactly("Cut", "───", "  7", " 12");
    }
}
