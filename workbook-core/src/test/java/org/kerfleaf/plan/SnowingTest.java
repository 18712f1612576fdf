package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.*;
import static org.kerfleaf.words.Words.*;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.MeasureTextException;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sheet;

class SnowingTest {
    /** A lid 48 in by 24 in on two walls 1/2 in thick at its ends. */
    private static Plan lid(String snow, String thick, String stiffness) {
        return Bench.plan(bench -> {
            Sheet sheet = bench.keep(sheet("lid board", "48 in", "96 in").measured(thick));
            Sheet top = stiffness.isEmpty()
                    ? sheet
                    : bench.keep(sheet("stiff board", "48 in", "96 in")
                            .measured(thick)
                            .stiffness(stiffness));
            Sheet wall = bench.keep(sheet("wall board", "48 in", "96 in").measured("1/2 in"));
            Part floor = bench.keep(panel("Floor", bench.ply()).wide("47 in").deep("24 in"));
            Part side =
                    bench.keep(panel("Side", wall).deep("24 in").high("12 in").pair());
            Part lid = bench.keep(panel("Lid", top).wide("48 in").deep("24 in"));
            Placing floorIn = bench.keep(place(floor));
            Placing sidesIn = bench.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            bench.keep(place(lid).onTopOf(sidesIn));
            bench.keep(site().snow(snow));
        });
    }

    /** 30 psf on the ground: 21 psf on 8 sq ft are 168 lb; over 47 in of 1 million psi, 3/4 in thick: 0.2597 in (statics). */
    @Test
    void lid_carriesSevenTenthsOfTheGroundSnow_andSags() {
        Loads.Snow snow =
                lid("30 psf", "3/4 in", "1 million psi").loads().snow().orElseThrow();
        Carried lid = snow.carried().get(0);

        assertThat(snow.pressure().value().inPoundsPerSquareFoot()).isCloseTo(21, within(1e-9));
        assertThat(snow.carried()).extracting(Carried::part).containsExactly("Lid");
        assertThat(lid.load().value().inPounds()).isCloseTo(168, within(1e-6));
        double onSpan = 168.0 * 47 / 48;
        double sag = 5 * onSpan * 47 * 47 * 47 / (384 * 1e6 * 24 * 0.75 * 0.75 * 0.75 / 12);
        assertThat(lid.bending().orElseThrow().span().value().inInches()).isCloseTo(47, within(1e-6));
        assertThat(lid.bending().orElseThrow().sag().value().inInches()).isCloseTo(sag, within(1e-4));
    }

    /** The limit 47 / 144 = 0.3264 in: that load passes it, four thirds of it do not. */
    @ParameterizedTest
    @CsvSource({"14 psf, holds", "0.67 kPa, holds", "15 psf, short", "0.72 kPa, short"})
    void check_turnsAtTheLimit(String snow, String verdict) {
        Check check = lid(snow, "3/4 in", "0.4 million psi").check("Snow: Lid").orElseThrow();

        assertThat(check.verdict().word()).as(check.result()).isEqualTo(verdict);
        assertThat(check.result()).contains(SitePlan.DEFERS);
    }

    @Test
    void check_withoutStiffness_isNotKnown() {
        assertThat(lid("30 psf", "3/4 in", "").check("Snow: Lid").orElseThrow().verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    @Test
    void snow_thatWasNotSaid_liesNowhere() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        assertThat(plan.loads().snow()).isEmpty();
        assertThat(plan.check("Snow: Roof")).isEmpty();
    }

    @Test
    void snow_thatIsNoLoad_saysWhatWouldBe() {
        assertThatThrownBy(() -> Bench.plan(bench -> bench.keep(site().snow("a foot"))))
                .isInstanceOf(MeasureTextException.class)
                .hasMessageContaining("psf");
    }
}
