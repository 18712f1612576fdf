package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;

/**
 * The figures of the nest box, worked outside the program (plank 18 x 145, sides 220 and 260 high, kerf 3 mm), read off the
 * plan of the workbook file; and the same at random sizes against formulas of their own.
 */
class NestBoxTest {
    private static final Plan PLAN = Sample.NEST_BOX.plan();

    /** Printed to a hundredth. */
    private static final Offset<Double> PRINTED = within(0.006);

    private static final Offset<Double> EXACT = within(1e-5);
    private static final double T = 18;
    private static final double WIDE = 145;

    @Test
    void plan_hasNoProblems() {
        assertThat(PLAN.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Back, 1, 380", "Side, 2, 260", "Front, 1, 220", "Floor, 1, 109", "Roof, 1, 205.17"})
    void part_length_isAsWorkedOutByHand(String name, int count, double length) {
        assertThat(part(PLAN, name).count()).isEqualTo(count);
        assertThat(part(PLAN, name).length().value().inMillimetres()).isCloseTo(length, PRINTED);
        assertThat(part(PLAN, name).width().value().inMillimetres()).isEqualTo(WIDE);
    }

    @Test
    void slope_andWhatFollowsFromIt_areAsWorkedOutByHand() {
        // tan θ = 40 / 145; the front's outside 220 − 18 · 0.27586; the roof's under face (145 + 18 + 30) / cos θ.
        assertThat(part(PLAN, "Front").edges().get(0).angle().value().inDegrees())
                .isCloseTo(15.42, PRINTED);
        Built built = new Built(PLAN);
        assertThat(built.face("Front", "OUTSIDE").bounds().sizes().z()).isCloseTo(215.03, PRINTED);
        assertThat(built.piece("Roof").solid().face("OUTSIDE").bounds().sizes().y())
                .isCloseTo(200.21, PRINTED);
        assertThat(PLAN.boards().get(0).placements().stream()
                        .filter(p -> p.part().equals("Side"))
                        .findFirst()
                        .orElseThrow()
                        .length()
                        .inMillimetres())
                .as("both sides out of one length: 260 + 220 + 3 / cos θ")
                .isCloseTo(483.11, PRINTED);
    }

    @Test
    void board_forOneBox_isOne() {
        // 380 + 484 + 220 + 206 + 109 and five kerfs are 1414 of 2390, each part rounded up to whole millimetres.
        Plan one = Sample.NEST_BOX.plan(Map.of("Boxes", "1"));
        assertThat(one.bounds().get(0).bought()).isEqualTo(1);
        assertThat(one.bounds().get(0).proven()).isTrue();
        double cut = one.boards().get(0).placements().stream()
                .mapToDouble(p -> StrictMath.ceil(p.length().inMillimetres()) + 3)
                .sum();
        assertThat(cut).isEqualTo(1414);
    }

    /** A class of 24 and its leader: 35 350 mm of 2390 mm boards are 14.77, so 15, and 15 exist. */
    @Test
    void boards_forTwentyFiveBoxes_areFifteenProven() {
        assertThat(PLAN.kits()).isEqualTo(25);
        assertThat(PLAN.boards()).hasSize(15);
        assertThat(PLAN.bounds().get(0).fewest()).isEqualTo(15);
        assertThat(PLAN.bounds().get(0).proven()).isTrue();
        Map<String, Long> cut = PLAN.boards().stream()
                .flatMap(board -> board.placements().stream())
                .collect(Collectors.groupingBy(p -> p.part(), Collectors.counting()));
        assertThat(cut)
                .as("the pairs of sides come out of one length each")
                .isEqualTo(Map.of("Back", 25L, "Side", 25L, "Front", 25L, "Roof", 25L, "Floor", 25L));
    }

    @Test
    void screws_forTwentyFiveBoxesAndSpare_areTwoBoxes() {
        // 14 a box, 350 in all, and 5 % more: 367.5.
        var screws = PLAN.hardware().get(0);
        assertThat(screws.need().value()).isEqualTo(368);
        assertThat(screws.packs().value()).isEqualTo(2);
        assertThat(Sample.NEST_BOX
                        .plan(Map.of("Boxes", "1"))
                        .hardware()
                        .get(0)
                        .need()
                        .value())
                .as("one box, with the spare: 14.7")
                .isEqualTo(14 + 1);
    }

    @Test
    void cost_ofAllBoxesAndOfOne_isAsAddedUpByHand() {
        // 15 · 7.20 + 2 · 6.50 + 25 · 0.35.
        assertThat(PLAN.cost().bought().orElseThrow().value()).hasToString("GBP 129.75");
        assertThat(PLAN.cost().boughtEach().orElseThrow().value()).hasToString("GBP 5.19");
    }

    @Test
    void floorAndWood_ofOneBox_areAsWorkedOutByHand() {
        assertThat(part(PLAN, "Floor").area().value().squareMillimetres()).isEqualTo(15_805);
        // The scenario weighs the wood as cut off the board, each length rounded up, at 450 kg/m³: 1.64 kg.
        Plan one = Sample.NEST_BOX.plan(Map.of("Boxes", "1"));
        double length = one.boards().get(0).placements().stream()
                .mapToDouble(p -> StrictMath.ceil(p.length().inMillimetres()))
                .sum();
        assertThat(length * WIDE * T * 450e-9).isCloseTo(1.64, PRINTED);
        double volume = PLAN.placed().stream()
                .mapToDouble(p -> p.solid().volume().cubicMillimetres())
                .sum();
        double density = PLAN.weight().orElseThrow().value().inKilograms() / volume;
        assertThat(density * 1e9).as("western redcedar, kg/m³").isBetween(350.0, 360.0);
    }

    @Test
    void hole_middle_is125MillimetresOverTheFloorAndItsOwnHalf() {
        // A hole's lower edge 125 mm above the floor: advice of bird societies, seen in a copy.
        var hole = new Built(PLAN).piece("Front").solid().outline().opening("entrance");
        assertThat(hole.bounds().middle().y()).isCloseTo(18 + 125 + 16, EXACT);
    }

    static Stream<Map<String, String>> variants() {
        return Built.variants(PLAN, 31).stream();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void anySize_roofLiesOnSidesAndFrontAndMeetsTheBack(Map<String, String> sizes) {
        Plan plan = Sample.NEST_BOX.plan(sizes);
        Built built = new Built(plan);
        double front = built.size("Height in front");
        double behind = built.size("Height of the sides at the back");
        double past = built.size("Roof past the front, level");
        double slope = StrictMath.atan2(behind - front, WIDE);
        assertThat(plan.problems()).isEmpty();
        assertThat(built.clashes()).isEmpty();
        // A side's sloping edge is one side of a right triangle; the front's bevel is as wide as its thickness along
        // the slope.
        double edge = StrictMath.hypot(WIDE, behind - front);
        assertThat(built.contacts("Roof", "Side"))
                .hasSize(2)
                .allSatisfy(area -> assertThat(area).isCloseTo(T * edge, within(1e-3)));
        assertThat(built.contacts("Roof", "Front").get(0)).isCloseTo(WIDE * T / StrictMath.cos(slope), within(1e-3));
        // Its upper end, cut plumb, lies on the back over its whole width: t / cos θ high.
        assertThat(built.contacts("Roof", "Back").get(0)).isCloseTo(WIDE * T / StrictMath.cos(slope), within(1e-3));
        double frontFace = built.piece("Front").bounds().low().y();
        assertThat(frontFace - built.face("Roof", "OUTSIDE").bounds().low().y()).isCloseTo(past, EXACT);
        assertThat(part(plan, "Roof").length().value().inMillimetres())
                .isCloseTo((WIDE + T + past) / StrictMath.cos(slope) + T * StrictMath.tan(slope), EXACT);
        assertThat(built.face("Front", "OUTSIDE").bounds().sizes().z())
                .isCloseTo(front - T * StrictMath.tan(slope), EXACT);
    }

    private static PlannedPart part(Plan plan, String name) {
        return plan.part(name).orElseThrow();
    }
}
