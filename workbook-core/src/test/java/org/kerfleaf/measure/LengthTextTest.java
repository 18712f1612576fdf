package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way of writing a length, and what becomes of it. Ways of writing: common practice, no source. */
class LengthTextTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # inches
            12 3/16 in            | 12 3/16 in
            12-3/16 in            | 12 3/16 in
            12-3/16"              | 12 3/16 in
            12 3/16"              | 12 3/16 in
            12 3 / 16 in          | 12 3/16 in
            12–3/16″              | 12 3/16 in
            12 3⁄16 in            | 12 3/16 in
            12 3∕16”              | 12 3/16 in
            12½ in                | 12 1/2 in
            12 ½"                 | 12 1/2 in
            12-½"                 | 12 1/2 in
            ⅜ in                  | 3/8 in
            ⅞"                    | 7/8 in
            1⅛ in                 | 1 1/8 in
            5 0/4 in              | 5 in
            3/4-inch              | 3/4 in
            3/4 inch              | 3/4 in
            2 Inches              | 2 in
            2 IN.                 | 2 in
            5/4 in                | 1 1/4 in
            0.75 in               | 3/4 in
            0.72 in               | 18.288 mm
            .5 in                 | 1/2 in
            0,375 in              | 3/8 in
            3''                   | 3 in
            007 in                | 7 in
            # feet and inches
            5' 3 1/2"             | 63 1/2 in
            5'3-1/2"              | 63 1/2 in
            5'-3 1/2"             | 63 1/2 in
            5'-½"                 | 60 1/2 in
            5′ 3½″                | 63 1/2 in
            5’ 3 1/2”             | 63 1/2 in
            5' 3''                | 63 in
            5 ft 3 1/2 in         | 63 1/2 in
            5ft3in                | 63 in
            5 ft. 3 1/2 in.       | 63 1/2 in
            5 feet, 3 1/2 inches  | 63 1/2 in
            5 ft and 3 in         | 63 in
            5 ft + 3 in           | 63 in
            8 ft                  | 96 in
            8-ft                  | 96 in
            8 1/2 feet            | 102 in
            1 foot 18 in          | 30 in
            2 yd 1 ft 3 in        | 87 in
            # millimetres, centimetres, metres
            309.6 mm              | 309.6 mm
            309,6 mm              | 309.6 mm
            100 mm                | 100 mm
            12,5mm                | 12.5 mm
            2440-mm               | 2440 mm
            27.3cm                | 273 mm
            1.2 m                 | 1200 mm
            1.200 m               | 1200 mm
            1 m 20 cm             | 1200 mm
            1 m 20 cm 3.5 mm      | 1203.5 mm
            1 metre               | 1000 mm
            3 millimeters         | 3 mm
            1E3 mm                | 1000 mm
            1200,125 mm           | 1200.125 mm
            # both exact: a whole number of 1/64 in is said in inches
            25.4 mm               | 1 in
            0.396875 mm           | 1/64 in
            127 mm                | 5 in
            0 mm                  | 0 in
            1 ft 10 mm            | 314.8 mm
            # to the nearest nanometre
            1/3 in                | 8.466667 mm
            0.0000004 mm          | 0 in
            0.0000006 mm          | 0.000001 mm
            # below zero
            -3/8 in               | -3/8 in
            - 12 3/16 in          | -12 3/16 in
            −5 ft 3 in            | -63 in
            -0.5 mm               | -0.5 mm
            """)
    void parse_whatPeopleWrite_isReadAndSaidOneWay(String written, String canonical) {
        assertThat(Length.parse(written)).hasToString(canonical);
        assertThat(Length.parse(canonical)).isEqualTo(Length.parse(written));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            12 3/16               | 12 3/16 in  | 12.1875 mm
            12-3/16               | 12 3/16 in  | 12.1875 mm
            12½                   | 12 1/2 in   | 12.5 mm
            .75                   | 3/4 in      | 0.75 mm
            18 mm                 | 18 mm       | 18 mm
            23/32"                | 23/32 in    | 23/32 in
            """)
    void parse_withAUnitWhenNoneIsSaid_takesItOnlyForABareNumber(String written, String inches, String millimetres) {
        assertThat(Length.parse(written, LengthUnit.INCHES)).hasToString(inches);
        assertThat(Length.parse(written, LengthUnit.MILLIMETRES)).hasToString(millimetres);
    }

    @Test
    void parse_bareNumberAfterFeet_isInchesWhereInchesAreGiven() {
        assertThat(Length.parse("5' 3 1/2", LengthUnit.INCHES)).hasToString("63 1/2 in");
        assertThatThrownBy(() -> Length.parse("5' 3", LengthUnit.MILLIMETRES)).hasMessageContaining("3 needs a unit");
        assertThatThrownBy(() -> Length.parse("1 m 20", LengthUnit.MILLIMETRES))
                .hasMessageContaining("20 needs a unit");
    }

    @Test
    void parse_spacesOfEveryKind_readLikeASpace() {
        for (char space : "\t\u00a0\u2007\u2008\u2009\u200a\u202f\u3000".toCharArray()) {
            assertThat(Length.parse(" 12 3/16 in ".replace(' ', space))).hasToString("12 3/16 in");
        }
    }

    @Test
    void parse_everyOneLetterFraction_isThatFraction() {
        String letters =
                "¼ 1/4 ½ 1/2 ¾ 3/4 ⅐ 1/7 ⅑ 1/9 ⅒ 1/10 ⅓ 1/3 ⅔ 2/3 ⅕ 1/5 ⅖ 2/5 ⅗ 3/5 ⅘ 4/5 ⅙ 1/6 ⅚ 5/6 ⅛ 1/8 ⅜ 3/8 ⅝ 5/8 ⅞ 7/8 ↉ 0/3";
        String[] pairs = letters.split(" ");
        for (int i = 0; i < pairs.length; i += 2) {
            assertThat(Length.parse("2" + pairs[i] + " in")).isEqualTo(Length.parse("2 " + pairs[i + 1] + " in"));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # written        | col | what is wrong                                       | what would be right
            ``               | 1   | there is nothing to read                            | 12 3/16 in
            `   `            | 1   | there is nothing to read                            | 309.6 mm
            in               | 1   | a number is wanted here, not “in”                   | 12 3/16 in
            about 3 in       | 1   | a number is wanted here, not “about”                | 12 3/16 in
            12               | 3   | 12 needs a unit                                     | in, ft, yd, mm, cm, m
            12 3/16          | 8   | 12 3/16 needs a unit                                | in, ft, yd, mm, cm, m
            5' 3             | 5   | 3 needs a unit                                      | 5' 3 1/2"
            12 3 in          | 4   | after 12 a unit or a fraction is wanted, not “3”    | 12 3/16 in
            1 200 mm         | 3   | after 1 a unit or a fraction is wanted, not “200”   | 309.6 mm
            12 furlongs      | 4   | after 12 a unit is wanted, not “furlongs”           | in, ft, yd, mm, cm, m
            12 mil           | 4   | after 12 a unit is wanted, not “mil”                | in, ft, yd, mm, cm, m
            12 ft2           | 4   | after 12 a unit is wanted, not “ft2”                | in, ft, yd, mm, cm, m
            12 m²            | 4   | after 12 a unit is wanted, not “m²”                 | in, ft, yd, mm, cm, m
            12 in heavy      | 7   | a number is wanted here, not “heavy”                | 12 3/16 in
            12 in,           | 7   | a number is wanted here, not the end                | 12 3/16 in
            3 in 5 ft        | 6   | ft comes after in                                   | The larger unit is said first
            3 in 5 in        | 6   | in comes after in                                   | each once
            2 cm 1 in        | 6   | in comes after cm                                   | The larger unit is said first
            12 3/0 in        | 6   | a fraction cannot have 0 below the line             | 12 3/16 in
            12 5/4 in        | 4   | 5/4 after a whole number is not less than one       | 12 3/16 in
            12 - 3/16 in     | 4   | after 12 a unit is wanted, not “-”                  | 12 3/16 in
            12³⁄₁₆ in        | 3   | after 12 a unit is wanted, not “³⁄₁₆”               | 12 3/16 in
            0.5 1/2 in       | 5   | after 0.5 a unit or a fraction is wanted, not “1/2” | 12 3/16 in
            12. in           | 4   | a digit is wanted after the point                   | 12 3/16 in
            1.2.3 m          | 4   | a number has one decimal sign                       | 309.6 mm
            1,200.5 mm       | 6   | a number has one decimal sign                       | 309.6 mm
            1,200 mm         | 2   | 1,200 is 1200 to some and 1.200 to others           | Write 1200 or 1.200
            8 ft - 1/8 in    | 6   | a dash here could mean “and” or “less”              | take one from the other
            1 m-20 cm        | 4   | a dash here could mean “and” or “less”              | side by side
            12 in -          | 7   | a dash here could mean “and” or “less”              | side by side
            --3 in           | 2   | a number is wanted here, not “-3”                   | 12 3/16 in
            +3 in            | 1   | a number is wanted here, not “+3”                   | 12 3/16 in
            ٣ mm             | 1   | a number is wanted here, not “٣”                    | 309.6 mm
            😀😀 3 in         | 1   | a number is wanted here, not “😀😀”                  | 12 3/16 in
            3 😀 in          | 3   | after 3 a unit is wanted, not “😀”                  | 12 3/16 in
            3 in 😀          | 6   | a number is wanted here, not “😀”                   | 12 3/16 in
            9223372036855 mm | 1   | this is more than can be counted                    | 309.6 mm
            -1e999 m         | 1   | this is more than can be counted                    | 309.6 mm
            """)
    void parse_badText_saysWhereAndWhatWouldBeRight(String written, int column, String wrong, String right) {
        MeasureTextException refused = catchThrowableOfType(MeasureTextException.class, () -> Length.parse(written));
        assertThat(refused).hasMessageContaining("“" + written + "”").hasMessageContaining(wrong);
        assertThat(refused.text()).isEqualTo(written);
        assertThat(refused.column()).as(refused.getMessage()).isEqualTo(column);
        assertThat(refused.wanted()).contains(right);
    }

    @Test
    void parse_textLongerThanAnyMeasure_isRefusedBeforeItIsCounted() {
        assertThatThrownBy(() -> Length.parse("9".repeat(100_000) + " in"))
                .isInstanceOf(MeasureTextException.class)
                .hasMessageContaining("column 121", "120 letters at most")
                .satisfies(refused -> assertThat(refused.getMessage()).hasSizeLessThan(400));
    }

    @Test
    void parse_noText_isTheCallersSlip() {
        assertThatThrownBy(() -> Length.parse(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("text");
    }

    @Test
    void parse_longestAndShortest_areReadBack() {
        for (long count : new long[] {Long.MAX_VALUE, Long.MIN_VALUE, Long.MAX_VALUE - 1, Long.MIN_VALUE + 1}) {
            assertThat(Length.parse(new Length(count).toString())).isEqualTo(new Length(count));
        }
    }
}
