package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;

class WithdrawalTest {
    private static final Length INCH = Length.ofInches(1);

    /** NDS table 12.2B in whole pounds (from memory; the equation confirmed in a copy). */
    @ParameterizedTest
    @CsvSource({
        "0.36, 51, 61, 70, 80, 89",
        "0.43, 73, 86, 100, 114, 128",
        "0.50, 98, 117, 135, 154, 172",
        "0.67, 177, 210, 243, 276, 310"
    })
    void woodScrew_table_agrees(double g, double six, double eight, double ten, double twelve, double fourteen) {
        int[] gauges = {6, 8, 10, 12, 14};
        double[] pounds = {six, eight, ten, twelve, fourteen};
        for (int i = 0; i < gauges.length; i++) {
            Length diameter = WoodScrew.diameter(gauges[i]).value();
            assertThat(Withdrawal.woodScrew(g, diameter, INCH).value().inPounds())
                    .as("No. %d at G %s", gauges[i], g)
                    .isCloseTo(pounds[i], within(0.51));
        }
    }

    /** NDS table 12.2A, calculated to 0.01 (seen in a copy). */
    @ParameterizedTest
    @CsvSource({
        "0.36, 16, 137.46",
        "0.36, 24, 186.32",
        "0.43, 20, 212.14",
        "0.43, 24, 243.22",
        "0.50, 24, 304.97",
        "0.50, 48, 512.89",
        "0.73, 32, 667.55"
    })
    void lagScrew_table_agrees(double g, long sixtyFourths, double pounds) {
        assertThat(Withdrawal.lagScrew(g, Length.ofSixtyFourths(sixtyFourths), INCH)
                        .value()
                        .inPounds())
                .isCloseTo(pounds, within(0.01));
    }

    /** NDS table 12.2C (from memory; the equation confirmed in a copy). */
    @ParameterizedTest
    @CsvSource({"0.36, 0.113, 12.1", "0.43, 0.131, 21.9", "0.50, 0.162, 39.5", "0.67, 0.192, 97.4"})
    void nail_table_agrees(double g, double diameter, double pounds) {
        assertThat(Withdrawal.nail(g, Length.ofInches(diameter), INCH).value().inPounds())
                .isCloseTo(pounds, within(0.1));
    }

    /** The potting bench: lag 3/8 x 4 in G 0.42, tip 7/32, holds 535.6 lb; a No. 10 x 2 1/2 through 1/8 holds 159.2 lb. */
    @Test
    void lagScrew_pottingBench_isWorkedOut() {
        Length thread = Withdrawal.lagThread(Length.ofInches(4)).minus(Length.ofSixtyFourths(14));
        assertThat(Withdrawal.lagScrew(0.42, Length.ofSixtyFourths(24), thread)
                        .value()
                        .inPounds())
                .isCloseTo(535.6, within(0.05));

        Length screw = Withdrawal.screwThread(Length.ofInches(2.5));
        assertThat(Withdrawal.woodScrew(0.42, WoodScrew.diameter(10).value(), screw)
                        .value()
                        .inPounds())
                .isCloseTo(159.2, within(0.05));
    }

    @Test
    void lagThread_longLag_isSixInchesAtMost() {
        assertThat(Withdrawal.lagThread(Length.ofInches(14))).isEqualTo(Length.ofInches(6));
        assertThat(Withdrawal.lagThread(Length.ofInches(4))).isEqualTo(Length.ofInches(2.5));
    }

    @Test
    void force_weight_isMassUnderGravity() {
        assertThat(Force.weightOf(Mass.ofPounds(10)).inPounds()).isCloseTo(10, within(1e-9));
        assertThat(Force.ofPounds(1).newtons()).isCloseTo(4.4482216, within(1e-7));
        assertThat(Force.ofPounds(75.4).in(MeasureStyle.INCHES)).isEqualTo("75.4 lb");
    }

    @Test
    void screwLengths_next_isTheOneSold() {
        assertThat(ScrewLengths.atLeast(Length.ofInches(1.64), LengthUnit.INCHES))
                .contains(Length.ofInches(1.75));
        assertThat(ScrewLengths.atLeast(Length.ofMillimetres(41), LengthUnit.MILLIMETRES))
                .contains(Length.ofMillimetres(45));
        assertThat(ScrewLengths.atMost(Length.ofInches(1.7), LengthUnit.INCHES)).contains(Length.ofInches(1.625));
        assertThat(ScrewLengths.atLeast(Length.ofInches(5), LengthUnit.INCHES)).isEmpty();
        assertThat(ScrewLengths.gaugeUpTo(Length.ofInches(0.15))).contains(6);
        assertThat(ScrewLengths.gaugeUpTo(Length.ofInches(0.1))).isEmpty();
    }

    /** Second derivation: the back corner of an inset door stands √(w² + t²) from the hinge; the jamb is w + gap away. */
    @Test
    void backEdgeRoom_door_isCloseToTheExactCorner() {
        double t = 0.75;
        double w = 16;

        assertThat(DoorSwing.backEdgeRoom(Length.ofInches(t), Length.ofInches(w))
                        .value()
                        .inInches())
                .isCloseTo(Math.hypot(w, t) - w, within(1e-4));
    }
}
