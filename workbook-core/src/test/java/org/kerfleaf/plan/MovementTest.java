package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.*;
import static org.kerfleaf.sketch.Way.*;
import static org.kerfleaf.words.Words.*;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.SiteSaid;

/** Boards laid side by side with a gap of 1/4 in, 5 1/2 in wide. */
class MovementTest {
    private static final UnaryOperator<Lumber> PINE =
            l -> l.species("loblolly pine").flatSawn();

    @Test
    void boards_thatDry_openTheirGap() {
        Moving moving = plan(l -> PINE.apply(l).moisture("19 %"), s -> s.woodBetween("12 %", "19 %"), "1/4 in")
                .movement()
                .get(0);

        assertThat(moving.atDriest().value().inInches()).isCloseTo(-0.0997, within(0.00005));
        assertThat(moving.atDampest().value().isZero()).isTrue();
        assertThat(moving.gap().orElseThrow().now().value().inInches()).isEqualTo(0.25);
        assertThat(moving.gap().orElseThrow().whenDriest().value().inInches()).isCloseTo(0.3497, within(0.00005));
    }

    @Test
    void boards_inTwoAirs_takeTheirMoistureFromThem() {
        Moving moving = plan(
                        l -> PINE.apply(l).driedIn(air("70 F", "65 %")),
                        s -> s.airBetween(air("70 F", "80 %"), air("70 F", "30 %")),
                        "1/4 in")
                .movement()
                .get(0);

        assertThat(moving.now().value().number()).isCloseTo(12, within(0.1));
        assertThat(moving.driest().value().number()).isCloseTo(6.2, within(0.1));
        assertThat(moving.dampest().value().number()).isCloseTo(16, within(0.1));
    }

    /** 5 1/2 in · 0.00259 · 8 % = 0.11396 in. */
    @ParameterizedTest
    @CsvSource({"1/8 in, HOLDS", "7/64 in, SHORT", "0 in, SHORT"})
    void boards_thatSwell_wantTheirGap(String gap, Verdict verdict) {
        Check check = check(plan(l -> PINE.apply(l).moisture("6 %"), s -> s.woodBetween("6 %", "14 %"), gap));

        assertThat(check.verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({
        "true, true, false, .species",
        "true, false, true, woodBetween",
        "false, true, true, .moisture",
    })
    void boards_ofWhichSomethingWasNotSaid_areNotKnown(boolean damp, boolean site, boolean wood, String missing) {
        Plan plan = plan(
                l -> {
                    Lumber known = wood ? PINE.apply(l) : l;
                    return damp ? known.moisture("12 %") : known;
                },
                s -> site ? s.woodBetween("8 %", "16 %") : s,
                "1/4 in");

        assertThat(plan.movement()).isEmpty();
        assertThat(check(plan).verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check(plan).advice()).contains(missing);
    }

    @Test
    void boards_withNoneBesideThem_moveAndAreNotChecked() {
        Plan plan = Bench.plan(bench -> {
            Lumber lumber =
                    bench.keep(PINE.apply(lumber("5/4x6")).moisture("12 %").lengths("8 ft"));
            bench.keep(place(bench.keep(board("Slat", lumber).cutTo("40 in")))
                    .running(LEFT_TO_RIGHT)
                    .flat());
            bench.keep(site().woodBetween("8 %", "12 %"));
        });

        assertThat(plan.movement()).hasSize(1);
        assertThat(plan.movement().get(0).gap()).isEmpty();
        assertThat(plan.checks()).noneMatch(c -> c.name().startsWith("Movement"));
    }

    private static Check check(Plan plan) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith("Movement"))
                .findFirst()
                .orElseThrow();
    }

    private static Plan plan(UnaryOperator<Lumber> said, UnaryOperator<SiteSaid> place, String gap) {
        return Bench.plan(bench -> {
            Lumber lumber = bench.keep(said.apply(lumber("5/4x6").lengths("8 ft")));
            var slat = bench.keep(board("Slat", lumber).cutTo("40 in"));
            bench.keep(place(slat).running(LEFT_TO_RIGHT).flat().sideBySide(3, length(gap)));
            bench.keep(place.apply(site()));
        });
    }
}
