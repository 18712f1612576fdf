package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapeReadingTest {
    /** Exact and printed columns of the first workbook's figures, worked by hand outside the program. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            24.41497,  24 13/32 heavy
            23.4375,   23 7/16
            30.76582,  30 25/32 light
            13.53165,  13 17/32
            15.53165,  15 17/32
            15.94662,  15 15/16 heavy
            16.4375,   16 7/16
            15.08059,  15 3/32 light
            17.9375,   17 15/16
            31.59576,  31 19/32
            3.71875,   3 23/32
            0.359375,  23/64
            0.71875,   23/32
            12.1917,   12 3/16 heavy
            """)
    void text_figuresOfTheFirstWorkbook_areReadLikeThis(double inches, String printed) {
        assertThat(Length.ofInches(inches).read(MeasureStyle.INCHES).text()).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            12 3/16 in, 8,  12 3/16
            12.2 in,    8,  12 1/4 light
            12.2 in,    16, 12 3/16 heavy
            12.2 in,    32, 12 3/16 heavy
            12.2 in,    64, 12 13/64
            100 mm,     32, 3 15/16
            4.999 in,   32, 5
            0.996 in,   32, 1 light
            0 in,       32, 0
            """)
    void text_eachStep_isNearestAndExact64thsAsTheyAre(String length, int finest, String printed) {
        assertThat(Length.parse(length)
                        .read(new MeasureStyle(LengthUnit.INCHES, finest))
                        .text())
                .isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            309.6 mm,   2, 309.5
            309.75 mm,  2, 310
            309.74 mm,  2, 309.5
            309.6 mm,   1, 310
            309.5 mm,   1, 310
            12 3/16 in, 2, 309.5
            1 in,       2, 25.5
            0.2 mm,     2, 0
            -0.5 mm,    2, -0.5
            -309.6 mm,  2, -309.5
            """)
    void text_millimetres_toTheStepWithoutAHair(String length, int finest, String printed) {
        assertThat(Length.parse(length)
                        .read(new MeasureStyle(LengthUnit.MILLIMETRES, finest))
                        .text())
                .isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            12.2 in,     12 3/16, 12 7/32
            12.19 in,    12 3/16, 12 7/32
            23/64 in,    23/64,   23/64
            13.96648 in, 13 15/16, 13 31/32
            """)
    void text_downToFitOrUpForABlank_isTheMarkToCutTo(String length, String down, String up) {
        Length size = Length.parse(length);
        assertThat(size.read(MeasureStyle.INCHES, RoundingMode.DOWN).text()).isEqualTo(down);
        assertThat(size.read(MeasureStyle.INCHES, RoundingMode.UP).text()).isEqualTo(up);
    }

    @Test
    void text_aHair_beginsAt256thOfAnInch() {
        Length hair = new Length(99_219); // 1/256 in is 99 218.75 nm
        Length mark = Length.parse("3 1/2 in");
        assertThat(mark.plus(hair).read(MeasureStyle.INCHES).text()).isEqualTo("3 1/2 heavy");
        assertThat(mark.minus(hair).read(MeasureStyle.INCHES).text()).isEqualTo("3 1/2 light");
        assertThat(mark.plus(hair)
                        .minus(new Length(1))
                        .read(MeasureStyle.INCHES)
                        .text())
                .isEqualTo("3 1/2");
        assertThat(mark.minus(hair)
                        .plus(new Length(1))
                        .read(MeasureStyle.INCHES)
                        .text())
                .isEqualTo("3 1/2");
    }

    @Test
    void text_belowZero_readsTheSizeAndKeepsTheSign() {
        assertThat(Length.parse("-12.2 in").read(MeasureStyle.INCHES).text()).isEqualTo("-12 3/16 heavy");
        assertThat(Length.parse("-3/8 in").read(MeasureStyle.INCHES).text()).isEqualTo("-3/8");
        assertThat(Length.parse("-0.01 in").read(MeasureStyle.INCHES).text()).isEqualTo("0 light");
        assertThat(Length.parse("0.01 in").read(MeasureStyle.INCHES).text()).isEqualTo("0 heavy");
        assertThat(Length.parse("-0.2 mm").read(MeasureStyle.MILLIMETRES).text())
                .isEqualTo("0");
    }

    @Test
    void in_withItsUnit_saysTheHairLast() {
        assertThat(Length.ofInches(24.41497).in(MeasureStyle.INCHES)).isEqualTo("24 13/32 in heavy");
        assertThat(Length.ofInches(24.41497).in(MeasureStyle.MILLIMETRES)).isEqualTo("620 mm");
    }

    @Test
    void read_theLongestLengths_doesNotOverflow() {
        Length most = new Length(Long.MAX_VALUE);
        assertThat(most.read(MeasureStyle.MILLIMETRES, RoundingMode.UP).text()).isEqualTo("9223372036855");
        assertThat(new Length(Long.MIN_VALUE).read(MeasureStyle.MILLIMETRES).text())
                .isEqualTo("-9223372036855");
    }

    @Test
    void style_stepNoTapeHas_isRefused() {
        assertThatThrownBy(() -> new MeasureStyle(LengthUnit.INCHES, 10)).hasMessageContaining("Print step (10) in in");
        assertThatThrownBy(() -> new MeasureStyle(LengthUnit.MILLIMETRES, 4))
                .hasMessageContaining("Print step (4) in mm");
        assertThat(MeasureStyle.INCHES).hasToString("1/32 in");
        assertThat(MeasureStyle.MILLIMETRES).hasToString("0.5 mm");
    }
}
