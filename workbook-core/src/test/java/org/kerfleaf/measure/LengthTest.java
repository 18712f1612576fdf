package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

class LengthTest {
    private static final Length MOST = new Length(Long.MAX_VALUE);
    private static final Length LEAST = new Length(Long.MIN_VALUE);

    @Test
    void ofInches_oneInch_is25_4mmByDefinition() { // NIST SP 811
        assertThat(Length.ofInches(1)).isEqualTo(Length.ofMillimetres(25.4)).isEqualTo(Length.ofSixtyFourths(64));
    }

    @Test
    void parse_dressedLumber_isExactInMillimetres() { // NIST Handbook 44 App. C: 1 in = 25.4 mm
        assertThat(Length.parse("3-1/2 in")).isEqualTo(Length.parse("88.9 mm"));
        assertThat(Length.parse("7-1/4 in")).isEqualTo(Length.parse("184.15 mm"));
    }

    @Test
    void inchSheetAndMetricSheet_sideBySide_differByWhatTheyDiffer() { // NIST Handbook 44 App. C: 1 ft = 304.8 mm
        assertThat(Length.parse("4 ft")).isEqualTo(Length.parse("1219.2 mm"));
        assertThat(Length.parse("8 ft")).isEqualTo(Length.parse("2438.4 mm"));
        assertThat(Length.parse("1220 mm").minus("4 ft")).isEqualTo(Length.parse("0.8 mm"));
        assertThat(Length.parse("2440 mm").minus("8 ft")).isEqualTo(Length.parse("1.6 mm"));
    }

    @Test
    void plus_severalAndText_addsThemAll() {
        Length thickness = Length.parse("23/32 in");
        assertThat(Length.parse("22 in").plus(thickness, thickness)).hasToString("23 7/16 in");
        assertThat(Length.parse("22 in").plus("3 mm")).hasToString("561.8 mm");
        assertThat(Length.parse("22 in").minus("3 in")).hasToString("19 in");
        assertThatThrownBy(() -> Length.ZERO.plus("3")).isInstanceOf(MeasureTextException.class);
    }

    @Test
    void overflow_anywhere_namesWhatWasCounted() {
        assertThatThrownBy(() -> MOST.plus(new Length(1)))
                .hasMessage("9223372036854.775807 mm plus 0.000001 mm is beyond what can be counted.");
        assertThatThrownBy(() -> LEAST.minus(new Length(1)))
                .hasMessageContaining("-9223372036854.775808 mm less 0.000001 mm");
        assertThatThrownBy(() -> MOST.times(2)).hasMessageContaining("9223372036854.775807 mm times 2");
        assertThatThrownBy(() -> MOST.times(2.5)).hasMessageContaining("9223372036854.775807 mm times 2.5");
        assertThatThrownBy(() -> Length.ofInches(1).times(Double.NaN)).hasMessageContaining("1 in times NaN");
        assertThatThrownBy(LEAST::negated).hasMessageContaining("0 in less -9223372036854.775808 mm");
        assertThatThrownBy(() -> LEAST.dividedBy(-1))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("-9223372036854.775808 mm");
        assertThatThrownBy(() -> Length.ofInches(Long.MAX_VALUE)).hasMessageContaining("9223372036854775807 in");
        assertThatThrownBy(() -> Length.ofMillimetres(1e300)).hasMessageContaining("1.0E300 mm");
        assertThatThrownBy(() -> Length.ofInches(Double.POSITIVE_INFINITY)).hasMessageContaining("Infinity in");
    }

    @Test
    void dividedBy_nothing_namesTheLength() {
        assertThatThrownBy(() -> Length.ofInches(3).dividedBy(0)).hasMessageContaining("3 in in 0 pieces");
        assertThatThrownBy(() -> Length.ofInches(3).dividedBy(Length.ZERO)).hasMessageContaining("3 in divided by");
        assertThatThrownBy(() -> Length.ofInches(3).over(Length.ZERO)).hasMessageContaining("rise of 3 in over no run");
    }

    @Test
    void half_ofTwentyThreeThirtySeconds_isExact() {
        assertThat(Length.parse("23/32 in").half()).hasToString("23/64 in");
    }

    @Test
    void roundedTo_sixteenthBelow_isThePaneToCut() { // figures of the first workbook: 14 / 1.0024
        Length pane = Length.parse("14 in").times(1 / 1.0024);
        assertThat(pane.inInches()).isCloseTo(13.96648, within(5e-6));
        assertThat(pane.roundedTo(Length.parse("1/16 in"), RoundingMode.DOWN)).hasToString("13 15/16 in");
        assertThat(pane.roundedTo(Length.parse("1/16 in"), RoundingMode.UP)).hasToString("14 in");
        assertThatThrownBy(() -> pane.roundedTo(Length.ZERO, RoundingMode.UP)).hasMessageContaining("Step (0 in)");
    }

    @Test
    void isWithin_tolerance_countsTheBound() {
        Length tolerance = Length.parse("1/64 in");
        assertThat(Length.parse("3/4 in").isWithin(Length.parse("49/64 in"), tolerance))
                .isTrue();
        assertThat(Length.parse("3/4 in").isWithin(Length.parse("47/64 in").minus(new Length(1)), tolerance))
                .isFalse();
    }

    @Test
    void by_anotherLength_isAnAreaAndAPlateAVolume() {
        Area area = Length.parse("4 ft").by(Length.parse("8 ft"));
        assertThat(area.inSquareFeet()).isCloseTo(32, within(1e-9));
        assertThat(area.by(Length.parse("1 ft")).inCubicFeet()).isCloseTo(32, within(1e-9));
    }
}
