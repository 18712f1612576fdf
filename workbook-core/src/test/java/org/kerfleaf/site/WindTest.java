package org.kerfleaf.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.WindSpeed;
import org.kerfleaf.sketch.Exposure;
import org.kerfleaf.sketch.Soil;

class WindTest {
    /** ASCE 7-16 table 26.10-1 at 15, 20, 25 and 30 ft (the formula reproduces it). */
    @ParameterizedTest
    @CsvSource({"BUILT_UP, 0.575, 0.624, 0.665, 0.701", "OPEN_GROUND, 0.849, 0.902, 0.945, 0.982"})
    void kz_table_agrees(Exposure exposure, double at15, double at20, double at25, double at30) {
        assertThat(Wind.kz(exposure, 15)).isCloseTo(at15, within(0.0006));
        assertThat(Wind.kz(exposure, 20)).isCloseTo(at20, within(0.0006));
        assertThat(Wind.kz(exposure, 25)).isCloseTo(at25, within(0.0006));
        assertThat(Wind.kz(exposure, 30)).isCloseTo(at30, within(0.0006));
        assertThat(Wind.kz(exposure, 3)).isEqualTo(Wind.kz(exposure, 15));
    }

    /** ASCE 7-16 26.9: air thins to 0.964, 0.897 and 0.805 at 1000, 3000 and 6000 ft. */
    @ParameterizedTest
    @CsvSource({"0, 1.000", "1000, 0.964", "3000, 0.897", "6000, 0.805"})
    void pressure_altitude_thinsTheAir(double feet, double share) {
        assertThat(pressure(115, feet) / pressure(115, 0)).isCloseTo(share, within(0.0006));
    }

    /** V 115, exposure C, 15 ft: 24.461 psf; 5 ft² are pushed with 81.09 lb (derived). */
    @Test
    void push_cabinetOnAPost_isWorkedOut() {
        assertThat(pressure(115, 0)).isCloseTo(24.461, within(0.001));
        Force push = Wind.push(Pressure.ofPoundsPerSquareFoot(24.461), feet(5).by(feet(1)))
                .value();
        assertThat(push.inPounds()).isCloseTo(81.09, within(0.01));
    }

    /** The whole chain: 4 ft up, 10 in pier 3.262 ft; 4x4 in the ground, doubled, 3.275 ft (derived). */
    @Test
    void push_chain_endsInADepth() {
        Force push = Wind.push(Pressure.ofPoundsPerSquareFoot(24.461), feet(5).by(feet(1)))
                .value();
        Length diagonal = Length.ofInches(3.5 * Math.sqrt(2));

        assertThat(Embedment.depth(push, feet(4), Length.ofInches(10), Soil.SAND, false)
                                .orElseThrow()
                                .value()
                                .inInches()
                        / 12)
                .isCloseTo(3.262, within(0.001));
        assertThat(Embedment.depth(push, feet(4), diagonal, Soil.SAND, true)
                                .orElseThrow()
                                .value()
                                .inInches()
                        / 12)
                .isCloseTo(3.275, within(0.001));
    }

    /** V 115 on built-up ground, Kz 0.57: 16.40 psf (derived). */
    @Test
    void pressure_builtUpGround_isLess() {
        assertThat(Wind.pressure(WindSpeed.ofMilesPerHour(115), Exposure.BUILT_UP, feet(15), Length.ZERO)
                        .value()
                        .inPoundsPerSquareFoot())
                .isCloseTo(16.40, within(0.01));
    }

    @Test
    void in_style_usesThatUnitsHabit() {
        assertThat(WindSpeed.ofMilesPerHour(115).in(MeasureStyle.INCHES)).isEqualTo("115 mph");
        assertThat(WindSpeed.ofMilesPerHour(115).in(MeasureStyle.MILLIMETRES)).isEqualTo("51 m/s");
        assertThat(Pressure.ofPoundsPerSquareFoot(1).pascals()).isCloseTo(47.880259, within(1e-6));
    }

    @Test
    void parse_speeds_areReadInTheirUnit() {
        assertThat(WindSpeed.parse("115 mph").inMilesPerHour()).isCloseTo(115, within(1e-9));
        assertThat(WindSpeed.parse("51.5 m/s").metresPerSecond()).isEqualTo(51.5);
        assertThat(WindSpeed.parse("180 km/h").metresPerSecond()).isCloseTo(50, within(1e-9));
        assertThatThrownBy(() -> WindSpeed.parse("strong"))
                .hasMessageContaining("“strong”")
                .hasMessageContaining("115 mph");
    }

    private static double pressure(double mph, double aboveSea) {
        return Wind.pressure(WindSpeed.ofMilesPerHour(mph), Exposure.OPEN_GROUND, feet(15), feet(aboveSea))
                .value()
                .inPoundsPerSquareFoot();
    }

    private static Length feet(double number) {
        return Length.ofInches(number * 12);
    }
}
