package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.joint.DrillSizes.Wood;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class WoodScrewTest {
    private static final Length SHEET = Length.ofSixtyFourths(46);
    private static final Length ONE_AND_FIVE_EIGHTHS = Length.ofSixtyFourths(104);

    /** ASME B18.6.1, table of basic diameters (seen in a copy). */
    @ParameterizedTest
    @CsvSource({
        "4, 0.112",
        "5, 0.125",
        "6, 0.138",
        "7, 0.151",
        "8, 0.164",
        "9, 0.177",
        "10, 0.190",
        "12, 0.216",
        "14, 0.242"
    })
    void diameter_gauge_isTheStandards(int gauge, double inches) {
        assertThat(WoodScrew.diameter(gauge).value()).isEqualTo(Length.ofInches(inches));
    }

    @Test
    void diameter_gaugeThatIsNotMade_isRefused() {
        assertThatThrownBy(() -> WoodScrew.diameter(25)).hasMessageContaining("25", "No. 24");
        assertThatThrownBy(() -> new WoodScrew(-1, SHEET)).hasMessageContaining("-1");
    }

    /** The seed-swap cabinet: No. 6 x 1 5/8 through 23/32, head 1/16 down, reaches 0.96875 in = 7.0 D; No. 8 only 5.9 D. */
    @Test
    void reach_seedSwapCabinet_isSevenDiameters() {
        WoodScrew six = new WoodScrew(6, ONE_AND_FIVE_EIGHTHS);
        WoodScrew eight = new WoodScrew(8, ONE_AND_FIVE_EIGHTHS);
        Length reach = six.reach(SHEET, WoodScrew.COUNTERSINK).value();

        assertThat(reach).isEqualTo(Length.ofInches(0.96875));
        assertThat(six.inDiameters(reach).value()).isCloseTo(7.0, within(0.05));
        assertThat(eight.inDiameters(reach).value()).isCloseTo(5.9, within(0.05));
    }

    @Test
    void words_screw_readAsOnTheBox() {
        assertThat(new WoodScrew(6, ONE_AND_FIVE_EIGHTHS).words(MeasureStyle.INCHES))
                .isEqualTo("No. 6 x 1 5/8 in");
    }

    /** The usual shop drill table, in sixty-fourths (two printed charts, common practice). */
    @ParameterizedTest
    @CsvSource({"4, 3, 4, 7", "6, 4, 5, 9", "8, 5, 7, 11", "10, 6, 8, 12", "12, 7, 9, 14", "14, 7, 10, 16"})
    void pilot_gauge_isTheShopTables(int gauge, long soft, long hard, long clearance) {
        assertThat(DrillSizes.pilot(gauge, Wood.SOFT).orElseThrow().value()).isEqualTo(Length.ofSixtyFourths(soft));
        assertThat(DrillSizes.pilot(gauge, Wood.HARD).orElseThrow().value()).isEqualTo(Length.ofSixtyFourths(hard));
        assertThat(DrillSizes.clearance(gauge).orElseThrow().value()).isEqualTo(Length.ofSixtyFourths(clearance));
    }

    @Test
    void pilot_gaugeNotInTheTable_isEmpty() {
        assertThat(DrillSizes.pilot(5, Wood.SOFT)).isEmpty();
        assertThat(DrillSizes.clearance(16)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4", "6", "8", "10", "12", "14"})
    void clearance_everyGauge_isNoTighterThanThreeThousandths(int gauge) {
        Length hole = DrillSizes.clearance(gauge).orElseThrow().value();

        assertThat(hole.plus(Length.ofInches(0.003)))
                .isGreaterThan(WoodScrew.diameter(gauge).value());
    }

    /** NDS 12.1.5 with the roots of appendix L, to the nearest 1/64 in (from memory). */
    @ParameterizedTest
    @CsvSource({"6, 5, 7", "8, 6, 8", "10, 7, 9", "12, 8, 10"})
    void leadHole_gauge_isShareOfTheRoot(int gauge, long seventy, long ninety) {
        assertThat(DrillSizes.leadHole(gauge, 0.55).orElseThrow().value()).isEqualTo(Length.ofSixtyFourths(seventy));
        assertThat(DrillSizes.leadHole(gauge, 0.67).orElseThrow().value()).isEqualTo(Length.ofSixtyFourths(ninety));
        assertThat(DrillSizes.leadHole(gauge, 0.42)).isEmpty();
    }

    /** NDS commentary multiples for No. 8, in inches to 0.01 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "EDGE, 0.41, 0.41",
        "END_PULLED, 2.46, 1.64",
        "END_PRESSED, 1.64, 0.82",
        "IN_ROW_ALONG, 2.46, 1.64",
        "IN_ROW_ACROSS, 1.64, 0.82",
        "BETWEEN_ROWS, 0.82, 0.49",
        "BETWEEN_STAGGERED_ROWS, 0.41, 0.41"
    })
    void least_numberEight_isTheCommentarys(EdgeDistance distance, double plain, double drilled) {
        Length eight = WoodScrew.diameter(8).value();

        assertThat(distance.least(eight, false).value().inInches()).isCloseTo(plain, within(0.005));
        assertThat(distance.least(eight, true).value().inInches()).isCloseTo(drilled, within(0.005));
    }
}
