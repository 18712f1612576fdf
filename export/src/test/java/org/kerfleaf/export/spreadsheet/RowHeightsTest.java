package org.kerfleaf.export.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RowHeightsTest {
    @Test
    void lines_textThatFits_isOne() {
        assertThat(RowHeights.lines("good face down", 14)).isOne();
    }

    @Test
    void lines_textLongerThanTheCell_breaksBetweenWords() {
        assertThat(RowHeights.lines("good face down", 13)).isEqualTo(2);
        assertThat(RowHeights.lines("good face down", 4)).isEqualTo(3);
    }

    @Test
    void lines_wordLongerThanTheCell_breaksInTheWord() {
        assertThat(RowHeights.lines("straightedge", 5)).isEqualTo(3);
    }

    @Test
    void lines_noText_isOne() {
        assertThat(RowHeights.lines("", 5)).isOne();
    }
}
