package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;

class WeatherAndWorkChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;

    /** PS 1-19 and APA bond classes (seen in a copy): Exposure 1 is for building delays only. */
    @Test
    void exposedSheet_bond_saysWhetherItStandsTheWeather() {
        assertThat(WoodChecks.exposedSheet("ply", Optional.of("Exterior")).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(WoodChecks.exposedSheet("ply", Optional.of("Exposure 1")).verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(WoodChecks.exposedSheet("ply", Optional.empty()).verdict()).isEqualTo(Verdict.NOT_KNOWN);
    }

    /** AWPA U1 (seen in a copy): treated in soil. */
    @Test
    void groundContact_untreated_falls() {
        assertThat(WoodChecks.groundContact("Post", true).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(WoodChecks.groundContact("Post", false).verdict()).isEqualTo(Verdict.SHORT);
    }

    /** IRC R317.1 (seen in a copy): untreated wood 6 in above soil. */
    @Test
    void aboveSoil_untreated_staysSixInchesUp() {
        assertThat(WoodChecks.aboveSoil("Floor", Length.ofInches(6L), INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(WoodChecks.aboveSoil("Floor", Length.ofInches(5.75), INCHES).margin())
                .isEqualTo("short by 1/4 in");
        assertThat(WoodChecks.aboveSoil("Floor", Length.ofMillimetres(149L), MeasureStyle.MILLIMETRES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    /** AWPA M4 (seen in a copy): cut faces of treated wood are brushed. */
    @Test
    void cutTreatedWood_endsNoStepCoats_falls() {
        assertThat(WoodChecks.cutTreatedWood("2x8", List.of("Arm", "Seat"), List.of("Seat"))
                        .result())
                .isEqualTo("No step brushes preservative on the cut ends of Seat.");
        assertThat(WoodChecks.cutTreatedWood("2x8", List.of("Arm", "Seat"), List.of())
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void caulkUnderPaint_silicone_falls() {
        assertThat(SealChecks.caulkUnderPaint("clear silicone", true, INCHES).verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(SealChecks.caulkUnderPaint("clear silicone", false, INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(SealChecks.caulkUnderPaint("paintable acrylic latex", true, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(SealChecks.caulkUnderPaint("butyl", true, INCHES).verdict()).isEqualTo(Verdict.NOT_KNOWN);
    }

    /** The nest boxes: 24 x 14 pilots at 20 s are 112 drill-minutes in 90; one drill 124 %, three 41 %. */
    @Test
    void stationLoad_nestBoxes_needMoreDrills() {
        Check one = load(1);

        assertThat(one.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(one.result())
                .isEqualTo(
                        "112 minutes of work for 1 tool in a session of 90 minutes: busy for 124 %. Allowed: 80 %. Over by 44"
                                + " %.");
        assertThat(one.advice()).startsWith("2 tools would do");
        assertThat(load(2).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(load(3).result()).contains("busy for 41 %");
    }

    /** NIOSH (from memory): 8 hours at 85 dB(A), half for each 3 dB more. */
    @Test
    void noise_threeDecibelsMore_halveTheTime() {
        assertThat(noise(85, 480).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(noise(85, 481).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(noise(100, 15).margin()).isEqualTo("0 minutes to spare");
        assertThat(noise(100, 20).result())
                .isEqualTo("100 dB for 20 minutes without muffs. Allowed: 15 minutes. Over by 5 minutes.");
    }

    /** Tool makers' manuals (seen in a copy): 1/8 in at a time; the seed-swap cabinet's 3/16 takes two. */
    @Test
    void routerBite_threeSixteenths_takesTwoPasses() {
        Length depth = Length.ofSixtyFourths(12);

        assertThat(PartChecks.routerBite("Door", depth, 1, INCHES).advice()).isEqualTo("2 passes would do.");
        assertThat(PartChecks.routerBite("Door", depth, 2, INCHES).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(PartChecks.routerBite("", Length.ofSixtyFourths(8), 1, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    private static Check load(int drills) {
        return WorkChecks.stationLoad(
                "pilots", Duration.ofSeconds(24 * 14 * 20), drills, Duration.ofMinutes(90), INCHES);
    }

    private static Check noise(double decibels, long minutes) {
        return WorkChecks.noise("circular saw", decibels, Duration.ofMinutes(minutes), INCHES);
    }

    /** Common practice: a small drill with a short bit is 5 1/2 in long, and a screw stands out before it is driven. */
    @Test
    void roomToDrive_lessThanDrillAndScrew_falls() {
        assertThat(OrderChecks.noRoomToDrive("Lid", 2, 1, Length.ofInches(4L), "Beam", Length.ofInches(7L), INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(OrderChecks.noRoomToDrive("Lid", 2, 1, Length.ofInches(4L), "Beam", Length.ofInches(7L), INCHES)
                        .result())
                .isEqualTo("Step 2 drives one where Beam stands 4 in behind the head. Wanted: 7 in. Short by 3 in.");
        assertThat(OrderChecks.roomToDrive(4, INCHES).verdict()).isEqualTo(Verdict.HOLDS);
    }
}
