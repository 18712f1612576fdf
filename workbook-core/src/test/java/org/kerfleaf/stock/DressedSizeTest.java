package org.kerfleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

/** Sizes are those of NIST PS 20-20 as secondary copies list them. */
class DressedSizeTest {
    @ParameterizedTest
    @CsvSource({
        "1x2, 0.75, 1.5",
        "1x3, 0.75, 2.5",
        "1x4, 0.75, 3.5",
        "1x6, 0.75, 5.5",
        "1x8, 0.75, 7.25",
        "1x10, 0.75, 9.25",
        "1x12, 0.75, 11.25",
        "5/4x6, 1, 5.5",
        "2x2, 1.5, 1.5",
        "2x3, 1.5, 2.5",
        "2x4, 1.5, 3.5",
        "2x6, 1.5, 5.5",
        "2x8, 1.5, 7.25",
        "2x10, 1.5, 9.25",
        "2x12, 1.5, 11.25",
        "4x4, 3.5, 3.5",
        "4x6, 3.5, 5.5",
        "6x6, 5.5, 5.5",
        "6/4x4, 1.25, 3.5"
    })
    void of_nominalName_isPlanedSize(String nominal, double thickness, double width) {
        DressedSize size = DressedSize.of(nominal).orElseThrow();

        assertThat(size.thickness()).isEqualTo(Length.ofInches(thickness));
        assertThat(size.width()).isEqualTo(Length.ofInches(width));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2x4", "2 x 4", " 2X4 ", "2×4"})
    void of_spacesAndCapitals_areTheSameName(String nominal) {
        assertThat(DressedSize.of(nominal).orElseThrow().width()).isEqualTo(Length.ofInches(3.5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6x8",
                "8x8",
                "5x10",
                "2x7",
                "2x18",
                "1x1",
                "4x2",
                "7/4x6",
                "aluminium ridge angle",
                "2x",
                "19x38 mm"
            })
    void of_nameBeyondTheRule_isEmpty(String nominal) {
        assertThat(DressedSize.of(nominal)).isEmpty();
    }

    @Test
    void of_boardSevenInchesWide_losesHalfAnInch() {
        assertThat(DressedSize.of("1x7").orElseThrow().width()).isEqualTo(Length.ofInches(6.5));
    }

    @Test
    void widthFigure_saysNameAndStandard() {
        String why = DressedSize.of("2x8").orElseThrow().widthFigure().reason().in(MeasureStyle.INCHES);

        assertThat(why).contains("2x8", "PS 20-20", "3/4 in");
    }
}
