package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AngleTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            30 deg        | 30 deg
            30°           | 30 deg
            30º           | 30 deg
            30 degrees    | 30 deg
            1 degree      | 1 deg
            30 deg.       | 30 deg
            22.5°         | 22.5 deg
            22 1/2°       | 22.5 deg
            22½ deg       | 22.5 deg
            22,5 deg      | 22.5 deg
            1/2 deg       | 0.5 deg
            -5 deg        | -5 deg
            12 in 12      | 45 deg
            12-in-12      | 45 deg
            12/12         | 45 deg
            12⁄12         | 45 deg
            12:12         | 45 deg
            1:1           | 45 deg
            7 over 7      | 45 deg
            100 %         | 45 deg
            100%          | 45 deg
            100 per cent  | 45 deg
            -100 %        | -45 deg
            0 in 12       | 0 deg
            6 in 12       | 26.565051177 deg
            6-in-12       | 26.565051177 deg
            6/12          | 26.565051177 deg
            6 / 12        | 26.565051177 deg
            1:2           | 26.565051177 deg
            0.5 : 1       | 26.565051177 deg
            50 %          | 26.565051177 deg
            4 1/2 in 12   | 20.55604522 deg
            4-1/2-in-12   | 20.55604522 deg
            4½/12         | 20.55604522 deg
            4.5/12        | 20.55604522 deg
            """)
    void parse_whatPeopleWrite_isOneAngle(String written, String canonical) {
        assertThat(Angle.parse(written)).hasToString(canonical);
        assertThat(Angle.parse(canonical)).isEqualTo(Angle.parse(written));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``           | 1 | there is nothing to read                                 | 30 deg
            30           | 3 | 30 could be degrees or a slope                           | Write 30 deg, or 30 in 12
            4 1/2        | 6 | 4 1/2 could be degrees or a slope                        | Write 4 1/2 deg, or 4 1/2 in 12
            steep        | 1 | a number is wanted here, not “steep”                     | 6 in 12
            6 in         | 5 | a number is wanted here, not the end                     | 6 in 12
            6 in 0       | 6 | a run of 0 has no slope                                  | 6 in 12
            6:0          | 3 | a run of 0 has no slope                                  | 1:2
            6/0          | 3 | a fraction cannot have 0 below the line                  | 6/12
            30 rad       | 4 | after 30 degrees, per cent or a run is wanted, not “rad” | 30°
            30 inches    | 4 | after 30 degrees, per cent or a run is wanted, not       | 6 in 12
            30 deg 5     | 8 | nothing is wanted after this, and there is “5”           | 30 deg
            6 in 12 in   | 9 | nothing is wanted after this, and there is “in”          | 6 in 12
            1e10 deg     | 1 | this is more than can be counted                         | 30 deg
            """)
    void parse_badText_saysWhereAndWhatWouldBeRight(String written, int column, String wrong, String right) {
        MeasureTextException refused = catchThrowableOfType(MeasureTextException.class, () -> Angle.parse(written));
        assertThat(refused).hasMessageContaining("“" + written + "”").hasMessageContaining(wrong);
        assertThat(refused.column()).as(refused.getMessage()).isEqualTo(column);
        assertThat(refused.wanted()).contains(right);
    }

    /**
     * Steel-square table: Griffith, Carpentry (1916); US Navy Builder manual NAVEDTRA 14044, fig. 2-17. Angle in degrees,
     * rafter in inches per foot of run, slope factor.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1,   4.76, 12.04, 1.0035
            3,  14.04, 12.37, 1.0308
            4,  18.43, 12.65, 1.0541
            6,  26.57, 13.42, 1.1180
            7,  30.26, 13.89, 1.1577
            9,  36.87, 15.00, 1.2500
            10, 39.81, 15.62, 1.3017
            12, 45.00, 16.97, 1.4142
            15, 51.34, 19.21, 1.6008
            """)
    void slope_steelSquareTable_agreesHoweverItIsSaid(int rise, double degrees, double rafter, double factor) {
        Length foot = Length.parse("1 ft");
        Angle slope = Angle.parse(rise + " in 12");
        assertThat(slope.inDegrees()).isCloseTo(degrees, within(0.005));
        assertThat(slope.lengthOver(foot).inInches()).isCloseTo(rafter, within(0.005));
        assertThat(1 / slope.cos()).isCloseTo(factor, within(0.00005));
        assertThat(slope.rise(foot).inInches()).isCloseTo(rise, within(1e-7));
        assertThat(slope)
                .isEqualTo(Angle.parse(rise + "/12"))
                .isEqualTo(Angle.parse(rise + ":12"))
                .isEqualTo(Length.ofInches(rise).over(foot));
    }

    /** Hip and valley per foot of common run, sqrt(2 · 12² + x²): the same steel-square table. */
    @ParameterizedTest
    @CsvSource({
        "1, 17.00",
        "3, 17.23",
        "4, 17.44",
        "6, 18.00",
        "7, 18.36",
        "9, 19.21",
        "10, 19.70",
        "12, 20.78",
        "15, 22.65"
    })
    void lengthOver_theDiagonalRun_isTheHipOfTheSteelSquareTable(int rise, double hip) {
        Length diagonal = Length.ofInches(12 * StrictMath.sqrt(2));
        assertThat(Length.ofInches(rise).over(diagonal).lengthOver(diagonal).inInches())
                .isCloseTo(hip, within(0.005));
    }

    @Test
    void drop_overhangAlongTheSlope_isItsSine() { // figures of the first workbook: 2 in at 30 deg
        assertThat(Angle.parse("30 deg").drop(Length.parse("2 in"))).isEqualTo(Length.parse("1 in"));
    }

    @Test
    void toString_anyAngle_isReadBackExactly() {
        forAll(
                20,
                5_000,
                random -> new Angle(random.nextLong() >> random.nextInt(64)),
                angle -> assertThat(Angle.parse(angle.toString())).isEqualTo(angle));
        assertThat(Angle.parse(new Angle(Long.MIN_VALUE).toString())).isEqualTo(new Angle(Long.MIN_VALUE));
    }

    @Test
    void over_riseAndRun_leadBackToTheRise() {
        record RiseAndRun(Length rise, Length run) {}
        forAll(
                21,
                2_000,
                random -> new RiseAndRun(
                        new Length(random.nextLong(1_000_000_000L)), new Length(1 + random.nextLong(1_000_000_000L))),
                it -> {
                    double run = it.run().nanometres();
                    double slope = it.rise().nanometres() / run;
                    long perNanodegree = 1 + (long) (run * (1 + slope * slope) * StrictMath.toRadians(1e-9));
                    Length back = it.rise().over(it.run()).rise(it.run());
                    assertThat(back.isWithin(it.rise(), new Length(perNanodegree)))
                            .isTrue();
                });
    }

    @Test
    void ofDegrees_noNumberOrTooMany_namesIt() {
        assertThatThrownBy(() -> Angle.ofDegrees(Double.NaN))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("NaN deg");
        assertThatThrownBy(() -> Angle.ofDegrees(1e12)).hasMessageContaining("1.0E12 deg");
        assertThatThrownBy(() -> Angle.ofDegrees(9e9).plus(Angle.ofDegrees(9e9)))
                .hasMessageContaining("9000000000 deg plus");
        assertThatThrownBy(() -> Angle.RIGHT.times(Long.MAX_VALUE)).hasMessageContaining("90 deg times");
    }

    @Test
    void rise_upright_hasNoRun() {
        assertThatThrownBy(() -> Angle.RIGHT.rise(Length.parse("1 in"))).hasMessageContaining("90 deg stands upright");
        assertThatThrownBy(() -> Angle.ofDegrees(-270).lengthOver(Length.parse("1 in")))
                .hasMessageContaining("upright");
        assertThat(Angle.ofDegrees(180).rise(Length.parse("1 in"))).isEqualTo(Length.ZERO);
    }

    @Test
    void results_readAloud() {
        Angle slope = Angle.parse("30 deg");
        assertThat(slope.complement()).hasToString("60 deg");
        assertThat(slope.half()).hasToString("15 deg");
        assertThat(slope.times(2).minus(slope)).isEqualTo(slope);
        assertThat(slope.dividedBy(4)).hasToString("7.5 deg");
        assertThat(slope).isLessThan(Angle.RIGHT);
    }

    @Test
    void in_aWorkbook_isToTheHundredth() {
        assertThat(Angle.parse("6 in 12").in(MeasureStyle.INCHES)).isEqualTo("26.57°");
        assertThat(Angle.parse("30 deg").in(MeasureStyle.MILLIMETRES)).isEqualTo("30°");
        assertThat(Angle.ofDegrees(-0.001).in(MeasureStyle.INCHES)).isEqualTo("0°");
    }
}
