package org.kerfleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class BoardMeasureTest {
    /** Nominal thickness · width · feet / 12; 5/4 counts as 1 1/4 in. */
    @ParameterizedTest
    @CsvSource({"2x4, 8, 1, 5.3333", "5/4x6, 12, 2, 15", "1x6, 10, 1, 5", "2 x 10, 12, 1, 20"})
    void of_nominal_isWorkedOut(String nominal, long feet, int count, double boardFeet) {
        assertThat(BoardMeasure.of(nominal, Length.ofInches(feet * 12), count)
                        .orElseThrow()
                        .value()
                        .boardFeet())
                .isCloseTo(boardFeet, within(5e-5));
    }

    @Test
    void of_anotherName_isNotKnown() {
        assertThat(BoardMeasure.of("plank 18 × 145", Length.ofInches(96), 1)).isEmpty();
        assertThat(new BoardMeasure(5.3333).in(MeasureStyle.INCHES)).isEqualTo("5.3 board ft");
    }
}
