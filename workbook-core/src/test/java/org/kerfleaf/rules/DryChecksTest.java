package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Temperature;
import org.kerfleaf.rules.Check.Verdict;

class DryChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;

    @ParameterizedTest
    @CsvSource({
        "20, false, false, HOLDS",
        "20.1, false, false, SHORT",
        // Treated wood is dry by the meter only if a drop soaks in too.
        "12, true, false, NOT_KNOWN",
        "12, true, true, HOLDS",
        "25, true, true, SHORT",
    })
    void dryEnough_byTheMeter(double moisture, boolean preserved, boolean drinks, Verdict verdict) {
        assertThat(DryChecks.dryEnough("1x6", Optional.of(Percent.of(moisture)), preserved, drinks, INCHES)
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void dryEnough_withoutAMeter_isKnownOfTreatedWoodThatDrinks() {
        Optional<Percent> notSaid = Optional.empty();

        assertThat(DryChecks.dryEnough("4x4", notSaid, true, true, INCHES).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(DryChecks.dryEnough("4x4", notSaid, false, false, INCHES).advice())
                .contains(".moisture(\"12 %\")");
    }

    @ParameterizedTest
    @CsvSource({"10, HOLDS", "9.9, SHORT"})
    void warmEnough_atTheLine(double celsius, Verdict verdict) {
        Check check = DryChecks.warmEnough(
                "latex",
                Optional.of(Temperature.ofCelsius(celsius)),
                Optional.of(Temperature.ofCelsius(10)),
                DryChecks.usual(),
                INCHES);

        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.advice().isEmpty()).isEqualTo(verdict == Verdict.HOLDS);
    }

    @Test
    void warmEnough_withoutEitherTemperature_isNotKnown() {
        Optional<Temperature> ten = Optional.of(Temperature.ofCelsius(10));

        assertThat(DryChecks.warmEnough("latex", Optional.empty(), ten, "", INCHES)
                        .advice())
                .contains("coldest(");
        assertThat(DryChecks.warmEnough("oil", ten, Optional.empty(), "", INCHES)
                        .advice())
                .contains(".notBelow(");
    }

    /** 1/8 in is thick enough, and a bead may be as deep as wide. */
    @ParameterizedTest
    @CsvSource({"8, 8, HOLDS", "7, 7, SHORT", "16, 7, SHORT", "16, 16, HOLDS", "16, 17, SHORT", "24, 16, HOLDS"})
    void bead_atBothLines(long across, long deep, Verdict verdict) {
        assertThat(SealChecks.bead("latex", Length.ofSixtyFourths(across), Length.ofSixtyFourths(deep), INCHES)
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void wayOut_wantsBoth_andSaysWhereEachBelongs() {
        List<String> weeps = List.of("Floor, weep");
        List<String> vents = List.of("Back, vent");
        List<String> none = List.of();

        assertThat(SealChecks.wayOut("Floor", weeps, vents, INCHES).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(SealChecks.wayOut("Floor", none, vents, INCHES).advice())
                .contains("through Floor")
                .doesNotContain("vents");
        assertThat(SealChecks.wayOut("Floor", weeps, none, INCHES).advice()).startsWith("Drill vents");
        assertThat(SealChecks.wayOut("Floor", none, none, INCHES).advice()).contains("weeps", "vents");
    }
}
