package org.kerfleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Temperature;

class WoodMovementTest {

    @ParameterizedTest
    @CsvSource({"20, 65, 11.996", "10, 80, 16.382"})
    void equilibrium_inDegreesCelsius_isTheFormula(double celsius, double humidity, double moisture) {
        assertThat(WoodMovement.equilibrium(Temperature.ofCelsius(celsius), Percent.of(humidity))
                        .value()
                        .number())
                .isCloseTo(moisture, within(0.001));
    }

    /** Rows of the Wood Handbook's table 4-2 as reprinted; 110 °F at 20 % is a slip there, 3.0 for 4.0. */
    @ParameterizedTest
    @CsvSource({
        "30, 10, 2.6", "70, 10, 2.5", "130, 10, 2.0",
        "30, 20, 4.6", "110, 20, 4.0", "130, 20, 3.7",
        "30, 50, 9.5", "70, 50, 9.2", "130, 50, 7.9",
        "30, 60, 11.3", "80, 60, 10.8", "120, 60, 9.7",
        "30, 80, 16.5", "60, 80, 16.2", "130, 80, 14.0",
    })
    void equilibrium_inDegreesFahrenheit_isTheTable(double fahrenheit, double humidity, double moisture) {
        assertThat(WoodMovement.equilibrium(Temperature.ofFahrenheit(fahrenheit), Percent.of(humidity))
                        .value()
                        .number())
                .isCloseTo(moisture, within(0.1));
    }

    /** The closed form of the coefficients, with which each row of shrinkage and coefficient is held against the other. */
    @ParameterizedTest
    @EnumSource
    void coefficient_ofEveryWood_followsFromItsShrinkage(MovingWood wood) {
        double f = wood.saturation();
        for (boolean along : new boolean[] {true, false}) {
            wood.shrinkage(along)
                    .ifPresent(s -> assertThat(wood.coefficient(along))
                            .isCloseTo(s / f / (100 - s * (1 - 10 / f)), within(0.0000105)));
        }
        assertThat(wood.coefficient(true)).isGreaterThan(wood.coefficient(false));
        assertThat(wood.words()).isEqualTo(Words.of(wood.words()).spaced().strip());
    }

    @ParameterizedTest
    @CsvSource({
        // The handbook's own example.
        "white fir, 9.15, 8, 11, 0.06725, 0.00001",
        "western redcedar, 5.5, 9, 14, 0.0643, 0.0001",
        "eastern white pine, 11.25, 6, 14, 0.1908, 0.0001",
        // Beyond 14 %: the shrinkage gives 0.2652, the coefficient 0.2717, and the larger counts.
        "douglas-fir, 9.25, 19, 8, -0.2717, 0.0001",
        "loblolly pine, 5.5, 19, 12, -0.0997, 0.0001",
        // Above fibre saturation nothing moves.
        "loblolly pine, 5.5, 60, 30, 0, 0.0001",
    })
    void change_ofAFlatSawnBoard_isAsWorkedOutByHand(
            String wood, double wide, double from, double to, double change, double within) {
        assertThat(change(wood, wide, from, to)).isCloseTo(change, within(within));
    }

    @Test
    void change_beyondTheCoefficients_tellsWhatTheShrinkageGives() {
        var reason = WoodMovement.named("Douglas-fir", Rings.FLAT)
                .orElseThrow()
                .change(Length.ofInches(9.25), Percent.of(19), Percent.of(8))
                .reason();

        assertThat(reason.given()).anySatisfy(given -> {
            assertThat(given.name()).isEqualTo("by the shrinkage");
            assertThat(((Length) given.value()).inInches()).isCloseTo(-0.2652, within(0.0001));
        });
    }

    /** Swelling from dry to beyond 14 %, the shrinkage gives more than the coefficient. */
    @Test
    void change_whereTheShrinkageGivesMore_isThat() {
        double linear = 9.25 * 0.00267 * 14;

        assertThat(change("douglas fir", 9.25, 4, 18)).isGreaterThan(linear);
    }

    private static double change(String wood, double wide, double from, double to) {
        return WoodMovement.named(wood, Rings.FLAT)
                .orElseThrow()
                .change(Length.ofInches(wide), Percent.of(from), Percent.of(to))
                .value()
                .inInches();
    }

    @Test
    void named_withRingsNotSaid_takesTheLargerAndSaysSo() {
        WoodMovement wood = WoodMovement.named("white oak", Rings.NOT_SAID).orElseThrow();

        assertThat(wood.coefficient().value().value()).isEqualTo(0.00365);
        assertThat(wood.coefficient().reason().rule()).contains("not said");
        assertThat(WoodMovement.named("white oak", Rings.QUARTER)
                        .orElseThrow()
                        .coefficient()
                        .value()
                        .value())
                .isEqualTo(0.00180);
    }

    @Test
    void named_whatNamesNoSingleWood_isNotKnown() {
        assertThat(WoodMovement.named("cedar", Rings.FLAT)).isEmpty();
        assertThat(WoodMovement.named("1x6", Rings.FLAT)).isEmpty();
    }
}
