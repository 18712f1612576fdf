package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.plan.Fastened;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.shape.PlacedSolid;

/**
 * The figures of the potting bench, worked outside the program (72 in long, boards 5 1/2 in with gaps of 1/4 in), read off the
 * plan of the workbook file; and the same at random sizes.
 */
class PottingBenchTest {
    private static final Plan PLAN = Sample.BENCH.plan();
    private static final double INCH = 25.4;
    private static final Offset<Double> EXACT = within(1e-6);

    @Test
    void plan_hasNoProblems() {
        assertThat(PLAN.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Ledger, 1, 72",
        "Front rail, 1, 72",
        "Joist, 4, 19.75",
        "Leg, 2, 35",
        "Top board, 4, 72",
        "Shelf, 1, 72",
    })
    void part_length_isAsWorkedOutByHand(String name, int count, double inches) {
        PlannedPart part = PLAN.part(name).orElseThrow();
        assertThat(part.count()).isEqualTo(count);
        assertThat(part.length().value().inInches()).isEqualTo(inches);
    }

    @Test
    void lumber_isTheCheapestMixThatHolds() {
        // 2x4: 72 + 2 · 19.75 + 2 kerfs = 111.75 of 120, twice; 5/4x6: 2 · 72 + 1/8 = 144.125 is longer than 144.
        assertThat(bought(PLAN, "2x4")).containsExactly("120", "120");
        assertThat(bought(PLAN, "5/4x6")).containsExactly("96", "96", "96", "96");
        assertThat(PLAN.bounds()).allSatisfy(b -> assertThat(b.proven()).isTrue());
        assertThat(PLAN.cost().bought().orElseThrow().value().toString()).isEqualTo("USD 116.90");
    }

    @Test
    void anEighthShorter_takesTwoLongBoardsForTheTop() {
        Plan shorter = Sample.BENCH.plan(Map.of("Length", "71 7/8 in"));
        assertThat(bought(shorter, "5/4x6")).containsExactly("144", "144");
        assertThat(shorter.cost().bought().orElseThrow().value().toString()).isEqualTo("USD 106.10");
    }

    private static List<String> bought(Plan plan, String stock) {
        return plan.boards().stream()
                .filter(b -> b.board().stock().equals(stock))
                .map(b -> String.valueOf((long) b.board().length().inInches()))
                .toList();
    }

    @Test
    void screws_ofTheTop_areTwoAtEveryCrossing() {
        assertThat(PLAN.hardware().get(0).uses()).contains("Top board to Joist: 32");
    }

    @Test
    void bolt_throughRailAndLeg_is6Inches() {
        // 1 1/2 + 3 1/2 + washers 1/8 + nut 3/8 + two threads 1/8 = 5 5/8, sold at 6.
        assertThat(PLAN.hardware()).anySatisfy(line -> assertThat(line.what()).startsWith("carriage bolt 3/8 × 6 in"));
    }

    /** 234.78 lb/in · (2 1/2 - 7/32) in of thread at G 0.42 (NDS 2018 12.2-1). */
    @Test
    void lag_intoAStud_holds535Pounds() {
        Fastened lags = fastened("Ledger to studs");
        assertThat(lags.count()).isEqualTo(5);
        assertThat(lags.setting().reach().orElseThrow().value().inInches()).isEqualTo(2.5);
        assertThat(lags.setting().thread().orElseThrow().value().inInches()).isEqualTo(2.5 - 7 / 32.0);
        assertThat(lags.setting().holds().orElseThrow().value().inPounds()).isCloseTo(535.6, within(0.05));
        assertThat(PLAN.steps().get(2).take())
                .anySatisfy(take -> assertThat(take.words())
                        .isEqualTo("bits 3/8 in and 13/64 in, the thinner long enough for a hole of 4 in"));
    }

    /** 120 lb · 5/9 = 66.7 lb, 22.2 lb a top screw; 95.52 lb/in · 1 2/3 in = 159.2 lb (NDS 2018 12.2-2). */
    @Test
    void bracket_topScrew_isPulledBy22Of159Pounds() {
        assertThat(fastened("steel shelf bracket to studs")
                        .setting()
                        .holds()
                        .orElseThrow()
                        .value()
                        .inPounds())
                .isCloseTo(159.2, within(0.05));
        assertThat(PLAN.check("Bracket pull: Shelf").orElseThrow().result())
                .contains("22.2 lb at each top screw", "Allowed: 159.2 lb");
    }

    private static Fastened fastened(String joint) {
        return PLAN.fastened().stream()
                .filter(f -> f.joint().equals(joint))
                .findFirst()
                .orElseThrow();
    }

    static Stream<Map<String, String>> variants() {
        return Built.variants(PLAN, 59).stream();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void anySize_baysAreEqualAndEverythingLies(Map<String, String> sizes) {
        Plan plan = Sample.BENCH.plan(sizes);
        Built built = new Built(plan);
        double length = built.size("Length");
        double gap = built.size("Gap between the top's boards");
        double deep = 4 * 5.5 * INCH + 3 * gap;
        assertThat(plan.problems()).isEmpty();
        assertThat(built.clashes()).isEmpty();
        assertThat(plan.part("Joist").orElseThrow().length().value().inMillimetres())
                .isCloseTo(deep - 3 * INCH, EXACT);
        double[] lows = built.pieces("Joist").stream()
                .mapToDouble(j -> j.bounds().low().x())
                .sorted()
                .toArray();
        for (int i = 1; i < 4; i++) {
            assertThat(lows[i] - lows[i - 1] - 1.5 * INCH).isCloseTo((length - 6 * INCH) / 3, within(2e-6));
        }
        List<PlacedSolid> boards = built.pieces("Top board");
        for (int i = 1; i < 4; i++) {
            assertThat(boards.get(i).bounds().low().y()
                            - boards.get(i - 1).bounds().high().y())
                    .isCloseTo(gap, EXACT);
        }
        assertThat(boards.get(0).bounds().low().y())
                .isCloseTo(built.piece("Front rail").bounds().low().y(), EXACT);
        assertThat(boards.get(3).bounds().high().y())
                .isCloseTo(built.piece("Ledger").bounds().high().y(), EXACT);
        assertThat(built.contacts("Top board", "Joist")).hasSize(16);
        // A leg stands in the corner of rail and outer joist: 3 1/2 by 3 1/2 in of each.
        assertThat(built.contacts("Leg", "Front rail"))
                .hasSize(2)
                .allSatisfy(area -> assertThat(area).isCloseTo(3.5 * 3.5 * INCH * INCH, within(1e-3)));
        assertThat(built.contacts("Leg", "Joist")).hasSize(2);
    }
}
