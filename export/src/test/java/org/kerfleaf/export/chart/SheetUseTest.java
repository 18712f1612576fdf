package org.kerfleaf.export.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.kerfleaf.export.SamplePlan;

class SheetUseTest {
    private static final SheetUse CABINET =
            SheetUse.of(SamplePlan.inches().sheets().get(0));

    @Test
    void of_cabinet_partsAreTheRectanglesOfTheFigures() {
        // Rectangles of the parts in all, 3457.52 in², of a sheet of 4608 in²; worked outside the program.
        assertThat(CABINET.parts()).isCloseTo(3457.52 / 4608, within(1e-5));
    }

    @Test
    void of_anySheet_sharesAddUpToAll() {
        assertThat(CABINET.parts() + CABINET.keep() + CABINET.waste() + CABINET.sawn())
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void words_cabinet_saysTheSharesInPercent() {
        assertThat(CABINET.words()).startsWith("75 % parts, ").endsWith(" kerf and trim");
    }
}
