package org.kerfleaf.export.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WordsTest {
    @Test
    void broken_betweenWords_fillsEachLine() {
        assertThat(Words.broken("good face down, always", 10)).containsExactly("good face", "down,", "always");
    }

    @Test
    void broken_wordLongerThanALine_isBroken() {
        assertThat(Words.broken("a straightedge", 6)).containsExactly("a", "straig", "htedge");
    }

    @Test
    void broken_mixedNumberAndUnit_staysTogether() {
        assertThat(Words.broken("Allowed: 7 15/16 in.", 16)).containsExactly("Allowed:", "7 15/16 in.");
        assertThat(Words.broken("up to 30 mm, then", 10)).containsExactly("up to", "30 mm,", "then");
    }

    @Test
    void broken_numberBeforeAWord_mayBeBrokenOff() {
        assertThat(Words.broken("take 5 screws", 6)).containsExactly("take 5", "screws");
    }
}
