package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

class SidewaysTest {
    private static final Length THICK = Length.ofInches(1.5);

    /** ASTM A653 Grade 33: the dowel bearing strength of the thin steel plates of table 12K. */
    private static final double STEEL = 61_850;

    /**
     * NDS table 12K, lag screws through thin steel into wood of G 0.67, 0.55 and 0.50, along and across its grain; 8 diameters in the
     * wood, in tens of pounds (seen in a copy). It has no part of wood on the near side; the six ways are the same.
     */
    @ParameterizedTest
    @CsvSource({
        "16, 0.075, 0.67, 170, 130",
        "16, 0.075, 0.55, 160, 120",
        "16, 0.075, 0.50, 150, 110",
        "16, 0.105, 0.67, 180, 140",
        "16, 0.134, 0.67, 200, 150",
        "20, 0.075, 0.67, 220, 160",
        "20, 0.075, 0.55, 200, 140",
        "20, 0.105, 0.67, 230, 170",
        "20, 0.120, 0.55, 210, 150",
        "24, 0.075, 0.67, 220, 160",
        "24, 0.075, 0.55, 200, 140",
        "24, 0.075, 0.50, 200, 130",
        "24, 0.105, 0.67, 230, 160",
        "24, 0.120, 0.67, 240, 170",
        "24, 0.120, 0.55, 220, 150"
    })
    void ways_lagThroughSteel_reproduceTheTable(
            long sixtyFourths, double plate, double g, double along, double across) {
        Dowel lag = Dowel.lag(new LagScrew(Length.ofSixtyFourths(sixtyFourths), Length.ofInches(6L)))
                .orElseThrow();
        double deep = 8 * lag.nominal().inInches();
        Sideways.Wood parallel = new Sideways.Wood(Ratio.of(g), THICK, Angle.ofDegrees(0));
        Sideways.Wood square = new Sideways.Wood(Ratio.of(g), THICK, Angle.ofDegrees(90));
        assertThat(least(Sideways.ways(lag, Sideways.crushedAt(lag, parallel), deep, STEEL, plate, 0)))
                .isCloseTo(along, within(5.1));
        assertThat(least(Sideways.ways(lag, Sideways.crushedAt(lag, square), deep, STEEL, plate, 90)))
                .isCloseTo(across, within(5.1));
    }

    private static double least(double[] ways) {
        double least = ways[0];
        for (double way : ways) {
            least = Math.min(least, way);
        }
        return least;
    }

    /** NDS table 12N: a 16d common nail through 1 1/2 in of Douglas fir-larch, 141 lb (seen in a copy). */
    @Test
    void holds_sixteenPennyInLarch_is141() {
        Figure<Force> held = nail(0.162, 0.50, 1.62);
        assertThat(held.value().inPounds()).isCloseTo(141, within(0.5));
        assertThat(held.reason().rule()).contains("it bends in both");
    }

    private static Figure<Force> nail(double diameter, double g, double deep) {
        Sideways.Wood first = new Sideways.Wood(Ratio.of(g), THICK, Angle.ofDegrees(0));
        Sideways.Wood second = new Sideways.Wood(Ratio.of(g), Length.ofInches(deep), Angle.ofDegrees(0));
        return Sideways.holds(Dowel.nail(Length.ofInches(diameter)), first, second);
    }

    /** The thinner of two crushes the shorter length: under 1/4 in of wood the least way is no longer bending. */
    @Test
    void holds_littleWood_givesByCrushing() {
        assertThat(nail(0.162, 0.50, 0.25).reason().rule()).doesNotContain("bends in both");
        assertThat(nail(0.162, 0.50, 0.25).value().inPounds())
                .isLessThan(nail(0.162, 0.50, 1.62).value().inPounds());
    }

    /** 11200 · 0.50 = 5600 psi along the grain, 6100 · 0.50^1.45 / √0.375 = 3646, rounded to 3650, across; thin nails 4650 both ways. */
    @Test
    void crushedAt_thickFastener_dependsOnTheGrain() {
        Dowel bolt = Dowel.bolt(Length.ofInches(0.375));
        assertThat(Sideways.crushedAt(bolt, wood(0))).isEqualTo(5600);
        assertThat(Sideways.crushedAt(bolt, wood(90))).isCloseTo(3650, within(1e-6));
        assertThat(Sideways.crushedAt(bolt, wood(45))).isBetween(3650.0, 5600.0);
        Dowel nail = Dowel.nail(Length.ofInches(0.162));
        assertThat(Sideways.crushedAt(nail, wood(0))).isEqualTo(4650);
        assertThat(Sideways.crushedAt(nail, wood(90))).isEqualTo(4650);
    }

    private static Sideways.Wood wood(double degrees) {
        return new Sideways.Wood(Ratio.of(0.50), THICK, Angle.ofDegrees(degrees));
    }

    @Test
    void factors_ofEndGrainAndDamp() {
        Figure<Force> full = nail(0.162, 0.50, 1.62);
        double pounds = full.value().inPounds();
        assertThat(Sideways.inEndGrain(full).value().inPounds()).isCloseTo(0.67 * pounds, within(1e-9));
        assertThat(Sideways.damp(full).value().inPounds()).isCloseTo(0.7 * pounds, within(1e-9));
    }

    @Test
    void dowel_thatIsInNoTable_isNotKnown() {
        assertThat(Dowel.woodScrew(5)).isEmpty();
        assertThat(Dowel.lag(new LagScrew(Length.ofMillimetres(9), Length.ofInches(4L))))
                .isEmpty();
    }

    /** Three quarters of a nail in soft wood, 0.9 of it over 0.6, to the 1/64 in below (NDS 2018 12.1.6.3). */
    @Test
    void nailHole_followsTheWood() {
        Length thick = Length.ofInches(0.162);
        assertThat(DrillSizes.nailHole(thick, Ratio.of(0.50)).value()).isEqualTo(Length.ofSixtyFourths(7));
        assertThat(DrillSizes.nailHole(thick, Ratio.of(0.67)).value()).isEqualTo(Length.ofSixtyFourths(9));
    }
}
