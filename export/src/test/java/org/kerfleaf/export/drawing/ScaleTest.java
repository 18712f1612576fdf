package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;

class ScaleTest {
    @Test
    void fitting_fullSheetOnAPage_isOneToSixteen() {
        // 96 in are 2438.4 mm: at 1:12 203.2 mm, wider than 170; at 1:16 152.4 mm.
        assertThat(Scale.fitting(Length.ofInches(96), Length.ofInches(48), 170, 200))
                .isEqualTo(new Scale(16));
    }

    @Test
    void words_inches_saysItTheTradesWay() {
        assertThat(new Scale(16).words(LengthUnit.INCHES)).isEqualTo("scale 1:16, 3/4 in is 1 ft");
        assertThat(new Scale(16).words(LengthUnit.MILLIMETRES)).isEqualTo("scale 1:16");
        assertThat(new Scale(20).words(LengthUnit.INCHES)).isEqualTo("scale 1:20");
    }

    @Test
    void filling_anyRoom_fillsItToAWholeScale() {
        assertThat(Scale.filling(Length.ofMillimetres(2440), Length.ofMillimetres(1220), 180, 100))
                .isEqualTo(new Scale(14));
    }
}
