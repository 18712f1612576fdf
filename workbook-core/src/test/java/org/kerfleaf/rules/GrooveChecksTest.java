package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class GrooveChecksTest {
    /** 0.004 to 0.012 in, and 0.1 to 0.3 mm: both ends hold. */
    @ParameterizedTest
    @CsvSource({
        "0.723 in, 0.719 in, holds",
        "0.7225 in, 0.719 in, short",
        "0.731 in, 0.719 in, holds",
        "0.7315 in, 0.719 in, short",
        "18.1 mm, 18 mm, holds",
        "18.09 mm, 18 mm, short",
        "18.3 mm, 18 mm, holds",
        "18.31 mm, 18 mm, short",
        "17 mm, 18 mm, short",
    })
    void fit_isHeldBetweenTwoLines(String groove, String tongue, String verdict) {
        MeasureStyle style = groove.endsWith("in") ? MeasureStyle.INCHES : MeasureStyle.MILLIMETRES;

        assertThat(GrooveChecks.fit("", Length.parse(groove), Length.parse(tongue), style)
                        .verdict()
                        .word())
                .isEqualTo(verdict);
    }

    @Test
    void fit_saysHowWideTheCutterShouldBe() {
        Check loose = GrooveChecks.fit(
                "Shelf in “dado” of Side", Length.parse("3/4 in"), Length.parse("0.719 in"), MeasureStyle.INCHES);

        assertThat(loose.name()).isEqualTo("Groove fit: Shelf in “dado” of Side");
        assertThat(loose.result())
                .isEqualTo("A groove 0.75 in wide takes 0.719 in, 0.031 in of room. Wanted: 0.004 in to 0.012 in."
                        + " Too loose by 0.019 in.");
        assertThat(loose.advice())
                .isEqualTo("A narrower cutter, in two passes, that cuts 0.723 in to 0.731 in would do.");
    }

    @Test
    void fit_ofWhatDoesNotGoIn() {
        Check tight = GrooveChecks.fit("", Length.parse("18 mm"), Length.parse("18.4 mm"), MeasureStyle.MILLIMETRES);

        assertThat(tight.result()).startsWith("A groove 18 mm wide takes 18.4 mm, 0.4 mm more than it has room for.");
        assertThat(tight.margin()).isEqualTo("too tight by 0.5 mm");
        assertThat(tight.advice())
                .isEqualTo("A wider cutter, or a second pass, that cuts 18.5 mm to 18.7 mm would do.");
    }
}
