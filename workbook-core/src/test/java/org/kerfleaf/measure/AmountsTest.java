package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.util.function.Function;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas, volumes, masses and temperature differences. Unit sizes: NIST Handbook 44, appendix C. */
class AmountsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            350 sq ft       | 32516064 mm2
            350 sq. ft.     | 32516064 mm2
            350 ft2         | 32516064 mm2
            350 ft²         | 32516064 mm2
            350 ft^2        | 32516064 mm2
            350 square feet | 32516064 mm2
            12 m2           | 12000000 mm2
            12 m²           | 12000000 mm2
            12 sq m         | 12000000 mm2
            1 sq in         | 645.16 mm2
            1 in2           | 645.16 mm2
            1 sq yd         | 836127.36 mm2
            2.5 cm2         | 250 mm2
            7 mm²           | 7 mm2
            1 1/2 sq in     | 967.74 mm2
            """)
    void area_whatPeopleWrite_isReadAndSaidOneWay(String written, String canonical) {
        assertThat(Area.parse(written)).hasToString(canonical).isEqualTo(Area.parse(canonical));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1 gal           | 3785411.784 mm3
            4 qt            | 3785411.784 mm3
            8 pints         | 3785411.784 mm3
            128 fl oz       | 3785411.784 mm3
            128 fl. oz.     | 3785411.784 mm3
            128 floz        | 3785411.784 mm3
            231 cu in       | 3785411.784 mm3
            1/2 gal         | 1892705.892 mm3
            ½ gallon        | 1892705.892 mm3
            1 gal 1 pt      | 4258588.257 mm3
            310 ml          | 310000 mm3
            31 cl           | 310000 mm3
            310 cc          | 310000 mm3
            2.5 l           | 2500000 mm3
            2.5 L           | 2500000 mm3
            2,5 litres      | 2500000 mm3
            1 cu ft         | 28316846.592 mm3
            1 ft3           | 28316846.592 mm3
            27 ft³          | 764554857.984 mm3
            1 cubic yard    | 764554857.984 mm3
            0.25 m3         | 250000000 mm3
            5 mm3           | 5 mm3
            """)
    void volume_whatPeopleWrite_isReadAndSaidOneWay(String written, String canonical) {
        assertThat(Volume.parse(written)).hasToString(canonical).isEqualTo(Volume.parse(canonical));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1 lb            | 453.59237 g
            16 oz           | 453.59237 g
            1 lb 8 oz       | 680.388555 g
            11.2 lbs        | 5080.234544 g
            4 kg            | 4000 g
            350 g           | 350 g
            """)
    void mass_whatPeopleWrite_isReadAndSaidOneWay(String written, String canonical) {
        assertThat(Mass.parse(written)).hasToString(canonical).isEqualTo(Mass.parse(canonical));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            63 F            | 35 K
            63 °F           | 35 K
            63°F            | 35 K
            63 degrees F    | 35 K
            33 C            | 33 K
            33 °C           | 33 K
            33 K            | 33 K
            -9 F            | -5 K
            """)
    void temperatureChange_whatPeopleWrite_isReadAndSaidOneWay(String written, String canonical) {
        assertThat(TemperatureChange.parse(written))
                .hasToString(canonical)
                .isEqualTo(TemperatureChange.parse(canonical));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            350         | 4 | 350 needs a unit                          | mm2, cm2, m2, in2, ft2, yd2
            350 ft      | 5 | after 350 a unit is wanted, not “ft”      | 350 sq ft
            350 sqft2   | 5 | after 350 a unit is wanted, not “sqft2”   | 350 sq ft
            1,350 sq ft | 2 | 1,350 is 1350 to some and 1.350 to others | Write 1350 or 1.350
            1e400 m2    | 1 | this is more than can be counted          | 12 m2
            """)
    void area_badText_saysWhereAndWhatWouldBeRight(String written, int column, String wrong, String right) {
        MeasureTextException refused = catchThrowableOfType(MeasureTextException.class, () -> Area.parse(written));
        assertThat(refused).hasMessageContaining("“" + written + "”").hasMessageContaining(wrong);
        assertThat(refused.column()).as(refused.getMessage()).isEqualTo(column);
        assertThat(refused.wanted()).contains(right);
    }

    @Test
    void volume_ouncesThatAreNotFluid_areRefusedWithTheUnitsThereAre() {
        assertThatThrownBy(() -> Volume.parse("8 oz"))
                .isInstanceOf(MeasureTextException.class)
                .hasMessageContaining("column 3")
                .hasMessageContaining("fl oz, pt, qt, gal");
    }

    @Test
    void toString_anyAmount_isReadBackExactly() {
        readsBack(30, Area::new, Area::parse);
        readsBack(31, Volume::new, Volume::parse);
        readsBack(32, Mass::new, Mass::parse);
        readsBack(33, TemperatureChange::new, TemperatureChange::parse);
    }

    private static <T> void readsBack(long seed, Function<Double, T> make, Function<String, T> parse) {
        forAll(
                seed,
                3_000,
                random -> make.apply(anyDouble(random)),
                amount -> assertThat(parse.apply(amount.toString())).isEqualTo(amount));
    }

    /** A double of the shop, or any there is. */
    private static double anyDouble(RandomGenerator random) {
        double any = Double.longBitsToDouble(random.nextLong());
        return random.nextBoolean() || !Double.isFinite(any) ? random.nextDouble(-1e6, 1e9) : any;
    }

    @Test
    void conversions_exactOnes_agreeWithTheHandbook() { // NIST Handbook 44 App. C
        assertThat(Volume.parse("10.1 fl oz").inCubicInches()).isCloseTo(18.22734, within(5e-6));
        assertThat(Volume.parse("10.1 fl oz").inLitres()).isCloseTo(0.298693, within(5e-7));
        assertThat(Volume.parse("1 ft3").inLitres()).isCloseTo(28.316847, within(5e-7));
        assertThat(Mass.parse("1 lb").inKilograms()).isEqualTo(0.45359237);
        assertThat(Volume.parse("1 gal")).isEqualTo(Volume.ofGallons(1)).isEqualTo(Volume.parse("3.785411784 l"));
        assertThat(Area.parse("1 sq ft").inSquareInches()).isCloseTo(144, within(1e-12));
    }

    @Test
    void in_aWorkbook_isInTheUnitOfAShop() {
        assertThat(Area.parse("350 sq ft").in(MeasureStyle.INCHES)).isEqualTo("350.0 sq ft");
        assertThat(Area.parse("350 sq ft").in(MeasureStyle.MILLIMETRES)).isEqualTo("32.52 m²");
        assertThat(Volume.parse("8 fl oz").in(MeasureStyle.INCHES)).isEqualTo("8 fl oz");
        assertThat(Volume.parse("8 fl oz").in(MeasureStyle.MILLIMETRES)).isEqualTo("237 ml");
        assertThat(Mass.parse("11.2 lb").in(MeasureStyle.MILLIMETRES)).isEqualTo("5.1 kg");
        assertThat(TemperatureChange.parse("60 F").in(MeasureStyle.INCHES)).isEqualTo("60 °F");
        assertThat(TemperatureChange.ofFahrenheit(60).in(MeasureStyle.MILLIMETRES))
                .isEqualTo("33 °C");
        assertThat(Count.of(58).in(MeasureStyle.INCHES)).isEqualTo("58");
        assertThat(Ratio.of(0.333333).in(MeasureStyle.INCHES)).isEqualTo("0.3333");
    }

    @Test
    void amounts_noNumber_areRefusedWithTheValue() {
        assertThatThrownBy(() -> Area.ofSquareMillimetres(Double.NaN)).hasMessageContaining("NaN mm2");
        assertThatThrownBy(() -> Volume.ofLitres(1e305)).hasMessageContaining("Infinity mm3");
        assertThatThrownBy(() -> Mass.parse("1 lb").times(Double.POSITIVE_INFINITY))
                .hasMessageContaining("Infinity g");
        assertThatThrownBy(() -> Ratio.of(Double.NaN)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Area.parse("3 m2").dividedBy(Area.ZERO))
                .hasMessageContaining("3000000 mm2 divided by 0 mm2");
    }

    @Test
    void equality_nothingWithASign_isNothing() {
        assertThat(Area.ZERO.times(-1)).isEqualTo(Area.ZERO).hasToString("0 mm2");
        assertThat(Mass.parse("3 g").minus(Mass.parse("3 g"))).isEqualTo(Mass.ZERO);
    }
}
