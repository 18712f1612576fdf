package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source of the rows: Martello and Vigo, Management Science 44 (1998) 388-399; Lodi, Martello and Monaci, EJOR 141 (2002)
 * 241-252; facts 11.6. Sheet 10 x 10, no turning.
 */
class SheetBoundTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4 of 6x6            | 2 | 4",
                "4 of 6x6, 6 of 4x4  | 3 | 4",
                "3 of 5x10           | 2 | 2",
                "2 of 6x6, 4 of 3x10 | 2 | 3",
                "2 of 6x6, 6 of 3x7  | 2 | 4"
            })
    void least_tableOfTheSource(String parts, int byArea, int least) {
        SheetBound bound = new SheetBound(parts(parts, false), 10, 10);
        assertThat(bound.byArea()).isEqualTo(byArea);
        assertThat(bound.least().sheets()).isEqualTo(least);
    }

    @Test
    void least_partsThatMayTurn_doNotCountAsIfTheyLayOneWay() {
        // Three sheets exist: on two, a 6x6 in the corner, a 3x7 upright beside it and one lying above; the rest on a
        // third.
        // Without turning four are needed, so the four of the table must not be claimed here.
        SheetBound bound = new SheetBound(parts("2 of 6x6, 6 of 3x7", true), 10, 10);
        assertThat(bound.least().sheets()).isBetween(2, 3);
    }

    @Test
    void least_saysWhy() {
        assertThat(new SheetBound(parts("3 of 5x10", false), 10, 10).least().because())
                .isEqualTo("Fewer is impossible: the parts with their kerfs cover more than one sheet.");
        assertThat(new SheetBound(parts("4 of 6x6", false), 10, 10).least().because())
                .isEqualTo("Fewer is impossible: no two of these fit on one sheet: 4 of 6x6.");
        assertThat(new SheetBound(parts("2 of 6x6, 4 of 3x10", false), 10, 10)
                        .least()
                        .because())
                .startsWith("Fewer is impossible: going by how often each length and width goes into the sheet");
    }

    private static List<Blank> parts(String text, boolean mayTurn) {
        List<Blank> parts = new ArrayList<>();
        for (String kind : text.trim().split(", ")) {
            String[] words = kind.split(" of ");
            String[] sides = words[1].split("x");
            Blank blank = new Blank(
                    parts.size(), words[1], Long.parseLong(sides[0]), Long.parseLong(sides[1]), true, mayTurn);
            parts.addAll(Collections.nCopies(Integer.parseInt(words[0]), blank));
        }
        return parts;
    }
}
