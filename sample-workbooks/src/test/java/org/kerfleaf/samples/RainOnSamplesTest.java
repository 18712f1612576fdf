package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.RainMark;
import org.kerfleaf.rules.Check.Verdict;

/** What rain finds on the sample workbooks, looked at piece by piece and worked out by hand. */
class RainOnSamplesTest {
    private static List<RainMark> marks(Plan plan) {
        return plan.rain().orElseThrow().marks();
    }

    private static RainMark mark(Plan plan, RainMark.Kind kind, String title) {
        return plan.rain().orElseThrow().of(kind).stream()
                .filter(m -> m.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static double inches(RainMark mark) {
        return mark.much().orElseThrow().value().inInches();
    }

    @Test
    void cabinet_trimOnTheRoof_isGluedOrCaulked() {
        Plan plan = Sample.CABINET.plan();
        assertThat(marks(plan)).hasSize(3).noneMatch(RainMark::isOpen);
        // The roof is 12 7/16 + 2 · 2 in deep; eave trim covers that on either side, and the ends of two rake boards
        // 3/4 in thick.
        assertThat(inches(mark(plan, RainMark.Kind.SEAM, "Eave trim to Roof"))).isCloseTo(2 * 16.4375, within(1e-3));
        assertThat(inches(mark(plan, RainMark.Kind.SEAM, "Eave trim to Rake trim")))
                .isCloseTo(4 * 0.75, within(1e-3));
        // The rake runs from the eave to the ridge along the roof's upper face, of which the cap covers 2 in:
        // (half of 23 7/16) / cos 30 + 2 + 23/32 · tan 30 − 2.
        double rake = 23.4375 / 2 / StrictMath.cos(StrictMath.toRadians(30))
                + 23.0 / 32 * StrictMath.tan(StrictMath.toRadians(30));
        assertThat(inches(mark(plan, RainMark.Kind.SEAM, "Rake trim to Roof"))).isCloseTo(4 * rake, within(1e-3));
        assertThat(plan.checks())
                .filteredOn(c -> c.name().startsWith("Rain"))
                .hasSize(5)
                .allMatch(c -> c.verdict() == Verdict.HOLDS);
    }

    @Test
    void coldFrame_paneBelowTheRails_holdsWaterAtItsLowerEnd() {
        Plan plan = Sample.COLD_FRAME.plan();
        // The pocket is 1/4 in deep, the pane 1/8 in: the front rail stands 1/8 in above it.
        assertThat(plan.rain().orElseThrow().of(RainMark.Kind.TRAP))
                .singleElement()
                .satisfies(trap -> {
                    assertThat(trap.parts()).containsExactly("Lid stile", "Lid rail");
                    assertThat(trap.where()).isEqualTo("rabbet for Lid pane");
                });
        // The stiles' upper ends look back and, as the lid slopes by 15 degrees, up.
        assertThat(inches(mark(plan, RainMark.Kind.EDGE, "Lid stile, back"))).isCloseTo(2 * 2.5, within(1e-6));
        // At the back the lid ends in line with the back: 47 in of seam that only a longer lid would cover.
        assertThat(inches(mark(plan, RainMark.Kind.SEAM, "Back to Lid rail"))
                        + inches(mark(plan, RainMark.Kind.SEAM, "Back to Lid stile")))
                .isCloseTo(47, within(1e-3));
    }

    @Test
    void planter_floorWithSquareEdges_leavesAGrooveAllRound() {
        Plan plan = Sample.PLANTER.plan();
        assertThat(mark(plan, RainMark.Kind.EDGE, "Side, upper face")
                        .much()
                        .orElseThrow()
                        .value()
                        .inMillimetres())
                .as("six edges of 250 mm")
                .isCloseTo(1500, within(0.01));
        assertThat(plan.rain().orElseThrow().of(RainMark.Kind.TRAP))
                .singleElement()
                .satisfies(trap -> assertThat(trap.parts()).contains("Floor"));
        assertThat(plan.rain().orElseThrow().of(RainMark.Kind.LEDGE))
                .as("its floor has a drain and is no ledge")
                .isEmpty();
    }

    @Test
    void nestBox_backAboveTheRoof_isEndGrainAndASeam() {
        Plan plan = Sample.NEST_BOX.plan();
        assertThat(mark(plan, RainMark.Kind.EDGE, "Back, upper face")
                        .much()
                        .orElseThrow()
                        .value()
                        .inMillimetres())
                .isCloseTo(145, within(1e-6));
        assertThat(mark(plan, RainMark.Kind.SEAM, "Back to Roof").isOpen()).isTrue();
        assertThat(plan.rain().orElseThrow().of(RainMark.Kind.TRAP)).isEmpty();
    }

    @Test
    void bench_inAShed_getsNoRain() {
        Plan plan = Sample.BENCH.plan();
        assertThat(plan.rain()).isEmpty();
        assertThat(plan.checks()).noneMatch(c -> c.name().startsWith("Rain"));
    }

    @Test
    void shelf_nowhereSaid_isNotKnown() {
        assertThat(Sample.SHELF.plan().check("Rain").orElseThrow().verdict()).isEqualTo(Verdict.NOT_KNOWN);
    }
}
