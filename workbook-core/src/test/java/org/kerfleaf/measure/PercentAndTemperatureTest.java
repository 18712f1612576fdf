package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PercentAndTemperatureTest {

    @ParameterizedTest
    @CsvSource({"12 %, 12", "12.5%, 12.5", "'12,5 %', 12.5", "19 per cent, 19", " 0 % , 0"})
    void percent_asPeopleWriteIt_isRead(String text, double number) {
        assertThat(Percent.parse(text).number()).isEqualTo(number);
        assertThat(Percent.parse(Percent.parse(text).toString())).isEqualTo(Percent.parse(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12", "", "%", "-3 %", "12 % damp", "1,200 % %", "1e3 %"})
    void percent_whatIsNone_saysWhatWouldBeRight(String text) {
        assertThatThrownBy(() -> Percent.parse(text))
                .isInstanceOf(MeasureTextException.class)
                .hasMessageContaining("12 %");
    }

    @Test
    void percent_prints_toOnePlace() {
        assertThat(Percent.of(12).in(MeasureStyle.INCHES)).isEqualTo("12 %");
        assertThat(Percent.of(11.964).in(MeasureStyle.INCHES)).isEqualTo("12 %");
        assertThat(Percent.of(9.23).in(MeasureStyle.MILLIMETRES)).isEqualTo("9.2 %");
    }

    @ParameterizedTest
    @CsvSource({
        "70 F, 21.111",
        "-40 F, -40",
        "-40 °C, -40",
        "21 C, 21",
        "50 deg F, 10",
        "10 celsius, 10",
        "'4,5 C', 4.5"
    })
    void temperature_asPeopleWriteIt_isRead(String text, double celsius) {
        assertThat(Temperature.parse(text).celsius()).isCloseTo(celsius, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(strings = {"70", "", "F", "-300 C", "-500 F", "7O F", "70 K"})
    void temperature_whatIsNone_saysWhatWouldBeRight(String text) {
        assertThatThrownBy(() -> Temperature.parse(text))
                .isInstanceOf(MeasureTextException.class)
                .hasMessageContaining("70 F");
    }

    @Test
    void temperature_prints_inWholeDegrees() {
        assertThat(Temperature.ofCelsius(10).in(MeasureStyle.INCHES)).isEqualTo("50 °F");
        assertThat(Temperature.ofFahrenheit(50).in(MeasureStyle.MILLIMETRES)).isEqualTo("10 °C");
    }
}
