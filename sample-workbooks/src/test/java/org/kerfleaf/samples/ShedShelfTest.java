package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Plan;

/** The shelf of the shed, whose width is held inside or, to fit between two walls of the shed, outside. */
class ShedShelfTest {
    private static Length shelf(Plan plan) {
        return plan.part("Shelf").orElseThrow().length().value();
    }

    @Test
    void width_asWritten_isTheInside() {
        Plan plan = Sample.SHELF.plan();
        assertThat(shelf(plan)).isEqualTo(Length.parse("30 in"));
        assertThat(plan.chains().get(0).words(plan.style()))
                .isEqualTo("Side 23/32 + Shelf 30 + Side 23/32 = 31 7/16 in outside");
    }

    @Test
    void width_heldOutside_isWhatTheSidesTakeUp() {
        Plan plan = Sample.SHELF.plan(Map.of("Width is held", "outside"));
        // 30 − 2 · 23/32.
        assertThat(shelf(plan)).isEqualTo(Length.parse("28 9/16 in"));
        assertThat(plan.chains().get(0).words(plan.style()) + ". "
                        + plan.chains().get(0).heldIn(plan.style()))
                .isEqualTo("Side 23/32 + Shelf 28 9/16 + Side 23/32 = 30 in outside. Width 30 in");
    }
}
