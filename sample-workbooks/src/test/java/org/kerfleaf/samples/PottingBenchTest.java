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
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Moving;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.SagLimit;

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

    /** Wet boards from 19 to 12 %, coefficient 0.00259: each 0.0997 in narrower, so the gaps open from 1/4 to 0.35 in. */
    @Test
    void top_asItDries_opensItsGaps() {
        Moving top = PLAN.movement().stream()
                .filter(moving -> moving.part().equals("Top board"))
                .findFirst()
                .orElseThrow();

        assertThat(top.wood().coefficient().value().value()).isEqualTo(0.00259);
        assertThat(top.atDriest().value().inInches()).isCloseTo(-0.0997, within(0.00005));
        assertThat(top.gap().orElseThrow().whenDriest().value().inInches()).isCloseTo(0.35, within(0.0005));
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

    // ---- what it carries: statics, worked by hand (scenario D) ---------------------------------------------------

    private static Loads.Carried carried(Plan plan, String part) {
        return plan.loads().carried().stream()
                .filter(c -> c.part().equals(part))
                .findFirst()
                .orElseThrow();
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
    /** 455 lb on the top, half of it on five lags: 45.5 lb each sideways; a lag of 3/8 in holds more than twice that. */
    @Test
    void lags_carryHalfTheTop_sideways() {
        Loads.OnJoint lags = PLAN.loads().onJoints().get(0);
        assertThat(lags.load().value().inPounds()).isCloseTo(227.5, within(0.01));
        assertThat(lags.each().value().inPounds()).isCloseTo(45.5, within(0.01));
        // The ledger’s grain is level, the studs’ upright: G 0.48 across, G 0.42 along.
        assertThat(lags.holds().orElseThrow().value().inPounds()).isBetween(115.0, 145.0);
        assertThat(PLAN.check("Sideways: Ledger to studs").orElseThrow().verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /** 120 lb · 5 in / 9 in = 66.7 lb over three brackets, 22.2 lb a top screw, which holds 159.2 lb. */
    @Test
    void brackets_pull66Point7Pounds() {
        Loads.Bracket brackets = PLAN.loads().brackets().get(0);
        double each = brackets.pull().orElseThrow().value().inPounds();
        assertThat(each * brackets.count()).isCloseTo(66.67, within(0.01));
        assertThat(each).isCloseTo(22.22, within(0.01));
        assertThat(brackets.holds().orElseThrow().value().inPounds()).isCloseTo(159.2, within(0.05));
    }

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

    private static Loads.Bending bending(Plan plan, String part) {
        return carried(plan, part).bending().orElseThrow();
    }

    @Test
    void top_carries455Pounds_andTheRailHalfOfIt() {
        assertThat(carried(PLAN, "Top board").area().value().inSquareFeet()).isCloseTo(11.375, EXACT);
        assertThat(carried(PLAN, "Top board").load().value().inPounds()).isCloseTo(455, EXACT);
        Loads.Bending rail = bending(PLAN, "Front rail");
        assertThat(rail.span().value().inInches()).isEqualTo(62);
        assertThat(rail.onSpan().value().inPounds() / 62).isCloseTo(3.1597, within(5e-5));
        assertThat(rail.sag().value().inInches()).isCloseTo(0.0945, within(5e-5));
        assertThat(allowed(rail, SagLimit.WOODWORK_STANDARD)).isCloseTo(0.431, within(5e-4));
        assertThat(bending(PLAN, "Top board").span().value().inInches()).isEqualTo(22);
    }

    @Test
    void shelf_sag_dependsOnTheLimitNamed() {
        Loads.Bending shelf = bending(PLAN, "Shelf");
        assertThat(shelf.sag().value().inInches()).isCloseTo(0.0564, within(5e-5));
        assertThat(shelf.sagInTime().value().inInches()).isCloseTo(0.0846, within(5e-5));
        assertThat(allowed(shelf, SagLimit.FIRST_LOAD)).isCloseTo(0.0533, within(5e-5));
        assertThat(allowed(shelf, SagLimit.VISIBLE)).isCloseTo(0.0833, within(5e-5));
        assertThat(allowed(shelf, SagLimit.WOODWORK_STANDARD)).isCloseTo(0.222, within(5e-4));
        assertThat(sag(PLAN).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(sag(PLAN).result()).contains("1/32 in for each foot", SitePlan.DEFERS);
        assertThat(sag(Sample.BENCH.planWith("heldTo(VISIBLE)", "heldTo(FIRST_LOAD)"))
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(sag(Sample.BENCH.planWith("heldTo(VISIBLE)", "heldTo(VISIBLE).staysOn()"))
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(sag(Sample.BENCH.planWith("heldTo(VISIBLE)", "heldTo(WOODWORK_STANDARD)"))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(sag(Sample.BENCH.planWith("\"32 in\"", "\"40 in\"")).verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void shelf_sag_isNotKnownWithoutItsLimitOrItsWood() {
        Check noLimit = sag(Sample.BENCH.planWith(".heldTo(VISIBLE)", ""));
        assertThat(noLimit.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(noLimit.result()).contains("0.056 in at first and 0.085 in with time");
        assertThat(sag(Sample.BENCH.planWith(".species(\"eastern white pine\")", ""))
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    private static Check sag(Plan plan) {
        return plan.check("Sag: Shelf").orElseThrow();
    }

    private static double allowed(Loads.Bending bending, SagLimit limit) {
        return bending.limits().stream()
                .filter(l -> l.limit() == limit)
                .findFirst()
                .orElseThrow()
                .allowed()
                .inInches();
    }

    /** The sag by moment area: the first moment of M/EI over half the span, summed strip by strip. */
    private static double byMomentArea(double perInch, double span, double e, double wide, double high) {
        double sum = 0;
        int strips = 2000;
        double dx = span / 2 / strips;
        for (int i = 0; i < strips; i++) {
            double x = (i + 0.5) * dx;
            sum += x * perInch * x * (span - x) / 2 * dx;
        }
        return sum / (e * wide * high * high * high / 12);
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
        double inches = length / INCH;
        double perInch = 40.0 / 144 * deep / INCH / 2;
        Loads.Bending rail = bending(plan, "Front rail");
        assertThat(rail.span().value().inInches()).isCloseTo(inches - 10, EXACT);
        assertThat(rail.sag().value().inInches())
                .isCloseTo(byMomentArea(perInch, inches - 10, 1.2e6, 1.5, 3.5), within(1e-6));
        // A leg stands in the corner of rail and outer joist: 3 1/2 by 3 1/2 in of each.
        assertThat(built.contacts("Leg", "Front rail"))
                .hasSize(2)
                .allSatisfy(area -> assertThat(area).isCloseTo(3.5 * 3.5 * INCH * INCH, within(1e-3)));
        assertThat(built.contacts("Leg", "Joist")).hasSize(2);
    }
}
