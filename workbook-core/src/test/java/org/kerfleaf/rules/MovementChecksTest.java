package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;

class MovementChecksTest {
    private static final Length QUARTER = Length.parse("1/4 in");

    @Test
    void movement_asMuchAsTheGap_holds() {
        assertThat(movement(QUARTER).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void movement_aHairMoreThanTheGap_fallsShortAndSaysWhatGapWouldDo() {
        Check check = movement(QUARTER.plus(new Length(1)));

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.advice()).contains("9/32 in").contains("slots");
    }

    @Test
    void movement_ofWhatOnlyDries_saysHowFarTheGapOpens() {
        Check check = MovementChecks.movement(
                "Top board", QUARTER, Length.ZERO, Length.ofInches(0.0997), "flat sawn", MeasureStyle.INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result()).contains("0.0997 in narrower").contains("opens to 0.3497 in");
    }

    private static Check movement(Length swells) {
        return MovementChecks.movement("Top board", QUARTER, swells, Length.ZERO, "flat sawn", MeasureStyle.INCHES);
    }
}
