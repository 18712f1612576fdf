package org.kerfleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;

class SheetThicknessTest {
    /** PS 1-09 / PS 1-19 table of thickness, printed to 0.001 in (seen in a copy). */
    @ParameterizedTest
    @CsvSource({
        "16, 0.219, 0.281, 0.225",
        "22, 0.313, 0.375, 0.322",
        "24, 0.344, 0.406, 0.354",
        "28, 0.406, 0.469, 0.418",
        "30, 0.438, 0.500, 0.451",
        "32, 0.469, 0.531, 0.483",
        "38, 0.563, 0.625, 0.578",
        "40, 0.594, 0.656, 0.609",
        "46, 0.688, 0.750, 0.703",
        "48, 0.719, 0.781, 0.734",
        "52, 0.781, 0.844, 0.788",
        "56, 0.831, 0.919, 0.849",
        "64, 0.950, 1.050, 0.970",
        "72, 1.069, 1.181, 1.091",
        "80, 1.188, 1.313, 1.213"
    })
    void performanceCategory_row_agreesWithTheTable(long sixtyFourths, double least, double most, double label) {
        Length category = Length.ofSixtyFourths(sixtyFourths);
        Limits limits =
                SheetThickness.performanceCategory(category).orElseThrow().value();

        assertThat(limits.least().inInches()).isCloseTo(least, within(0.00051));
        assertThat(limits.most().inInches()).isCloseTo(most, within(0.00051));
        assertThat(SheetThickness.recommendedLabel(category)
                        .orElseThrow()
                        .value()
                        .inInches())
                .isCloseTo(label, within(0.00051));
    }

    @Test
    void performanceCategory_measuredAtTheLimit_holds() {
        Limits limits = SheetThickness.performanceCategory(Length.ofSixtyFourths(48))
                .orElseThrow()
                .value();

        assertThat(limits.hold(Length.ofSixtyFourths(46))).isTrue();
        assertThat(limits.hold(Length.ofSixtyFourths(46).minus(new Length(1)))).isFalse();
        assertThat(limits.hold(Length.ofSixtyFourths(50))).isTrue();
        assertThat(limits.hold(Length.ofSixtyFourths(50).plus(new Length(1)))).isFalse();
    }

    @Test
    void performanceCategory_outsideTheStandard_isEmpty() {
        assertThat(SheetThickness.performanceCategory(Length.ofSixtyFourths(12)))
                .isEmpty();
        assertThat(SheetThickness.performanceCategory(Length.ofInches(2))).isEmpty();
    }

    /** EN 315:2000, sanded (seen in a copy). */
    @ParameterizedTest
    @CsvSource({"6.5, 0.40, 0.59", "12, 0.56, 0.76", "15, 0.65, 0.85", "21, 0.83, 1.03", "24, 0.92, 1.12"})
    void en315_sanded_agreesWithTheTable(double label, double over, double under) {
        Length t = Length.ofMillimetres(label);
        Limits limits = SheetThickness.en315(t, Surface.SANDED).value();

        assertThat(limits.most().minus(t).inMillimetres()).isCloseTo(over, within(0.0051));
        assertThat(t.minus(limits.least()).inMillimetres()).isCloseTo(under, within(0.0051));
    }

    @Test
    void en315_unsanded_allowsMoreOver() {
        Length t = Length.ofMillimetres(18);

        assertThat(SheetThickness.en315(t, Surface.UNSANDED).value())
                .isEqualTo(new Limits(Length.ofMillimetres(17.06), Length.ofMillimetres(19.34)));
    }

    @Test
    void of_unit_choosesTheStandard() {
        assertThat(SheetThickness.of(Length.ofSixtyFourths(48), Surface.UNSANDED, LengthUnit.INCHES)
                        .orElseThrow()
                        .reason()
                        .source())
                .contains("PS 1");
        assertThat(SheetThickness.of(Length.ofMillimetres(18), Surface.UNSANDED, LengthUnit.MILLIMETRES)
                        .orElseThrow()
                        .reason()
                        .source())
                .contains("EN 315");
    }

    /** PS 1-19 and EN 315:2000 on sheet size and squareness (seen in a copy, the ±3.5 mm from memory). */
    @Test
    void tolerance_ofSheet_isSixteenthOrThreeAndAHalf() {
        assertThat(SheetTolerance.of(LengthUnit.INCHES)
                        .shortest(Length.ofInches(96))
                        .value())
                .isEqualTo(Length.ofInches(95.9375));
        assertThat(SheetTolerance.of(LengthUnit.MILLIMETRES)
                        .shortest(Length.ofMillimetres(2440))
                        .value())
                .isEqualTo(Length.ofMillimetres(2436.5));
        assertThat(SheetTolerance.PS_1.outOfSquare(Length.ofInches(96)).value()).isEqualTo(Length.ofSixtyFourths(8));
        assertThat(SheetTolerance.EN_315.outOfSquare(Length.ofMillimetres(2500)).value())
                .isEqualTo(Length.ofMillimetres(2.5));
    }

    /** Four 24 in parts do not come out of a 96 in sheet that is short, kerf or no kerf. */
    @Test
    void tolerance_fourQuarters_doNotFitTheShortestSheet() {
        assertThat(Length.ofInches(24).times(4L))
                .isGreaterThan(SheetTolerance.PS_1.shortest(Length.ofInches(96)).value());
    }
}
