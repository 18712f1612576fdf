package org.kerfleaf.saw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class SawAnglesTest {
    private static final Length SHEET = Length.ofSixtyFourths(46);

    /** Geometry: the corner's included angle and the scale that reads from square. */
    @ParameterizedTest
    @CsvSource({"60, 60", "76, 52", "90, 45", "110, 35", "120, 30", "135, 22.5", "180, 0"})
    void mitreScale_corner_readsFromSquare(double corner, double scale) {
        assertThat(SawAngles.mitreScale(Angle.ofDegrees(corner)).value()).isEqualTo(Angle.ofDegrees(scale));
    }

    @Test
    void mitreScale_reason_warnsOfBothWrongNumbers() {
        String why = SawAngles.mitreScale(Angle.ofDegrees(110)).reason().in(MeasureStyle.INCHES);

        assertThat(why).contains("reads from square", "not 110°, not 55°", "corner C 110°");
        assertThat(SawAngles.mitreScale(Angle.RIGHT).reason().rule()).endsWith("not 90°");
    }

    /** The seed-swap cabinet's side: 23/32 at 30 degrees, 1.07994 in; the roof's long face 0.41497 longer. */
    @Test
    void bladeDepth_seedSwapCabinet_isAlongTheTilt() {
        assertThat(SawAngles.bladeDepth(SHEET, Angle.ofDegrees(30)).value().inInches())
                .isCloseTo(1.07994, within(1e-5));
        assertThat(SawAngles.bladeDepth(SHEET, Angle.ZERO).value()).isEqualTo(Length.ofSixtyFourths(62));
        assertThat(SawAngles.bevelShorter(SHEET, Angle.ofDegrees(30)).value().inInches())
                .isCloseTo(0.41497, within(1e-5));
    }

    /** The cold frame's lid slope: 8 in over 30 in, blade depth 0.994, faces 0.1917 apart (worked outside the program). */
    @Test
    void bladeDepth_coldFrame_isJustUnderAnInch() {
        Angle slope = Length.ofInches(8).over(Length.ofInches(30));

        assertThat(slope.inDegrees()).isCloseTo(14.931, within(5e-4));
        assertThat(SawAngles.bladeDepth(SHEET, slope).value().inInches()).isCloseTo(0.994, within(5e-4));
        assertThat(SawAngles.bevelShorter(SHEET, slope).value().inInches()).isCloseTo(0.1917, within(5e-5));
    }

    /** The rake trim: long point 15.94662, short point 1 1/2 · tan 30° less. */
    @Test
    void mitreShorter_rakeTrim_isLessByWidthTimesTan() {
        Length shorter = SawAngles.mitreShorter(Length.ofInches(1.5), Angle.ofDegrees(30))
                .value();

        assertThat(15.94662 - shorter.inInches()).isCloseTo(15.08059, within(1e-5));
    }

    @Test
    void peakBevel_unequalSlopes_isHalfTheirSum() {
        Angle thirty = Angle.ofDegrees(30);
        Angle fifty = Angle.ofDegrees(50);

        assertThat(SawAngles.peakBevel(thirty, fifty).value()).isEqualTo(Angle.ofDegrees(40));
        assertThat(SawAngles.peakAngle(thirty, thirty).value()).isEqualTo(Angle.ofDegrees(120));
        assertThat(SawAngles.mitreScale(SawAngles.peakAngle(thirty, fifty).value())
                        .value())
                .isEqualTo(SawAngles.peakBevel(thirty, fifty).value());
    }

    @Test
    void complement_pastTheStop_isTheRestOfARightAngle() {
        assertThat(SawAngles.complement(Angle.ofDegrees(60)).value()).isEqualTo(Angle.ofDegrees(30));
    }
}
