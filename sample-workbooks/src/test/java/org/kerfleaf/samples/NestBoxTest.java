package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.cutting.BoardCutting;
import org.kerfleaf.cutting.BoardPiece;
import org.kerfleaf.cutting.BoardSize;
import org.kerfleaf.measure.Length;
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
        // 380 + 483.11 + 220 + 205.17 + 109 and five kerfs.
        assertThat(PLAN.bounds().get(0).bought()).isEqualTo(1);
        assertThat(PLAN.bounds().get(0).proven()).isTrue();
    }

    /** A class of 24 and its leader: 35 350 mm of 2390 mm boards are 14.77, so 15, and a prototype found 15. */
    @Test
    void boards_forTwentyFiveBoxes_areFifteenProven() {
        List<BoardPiece> pieces = List.of(
                new BoardPiece("Back", Length.ofMillimetres(380), 25),
                new BoardPiece("Sides", Length.ofMillimetres(484), 25),
                new BoardPiece("Front", Length.ofMillimetres(220), 25),
                new BoardPiece("Roof", Length.ofMillimetres(206), 25),
                new BoardPiece("Floor", Length.ofMillimetres(109), 25));
        BoardSize plank = new BoardSize(
                "plank",
                Length.ofMillimetres(2400),
                Length.ofMillimetres(5),
                Length.ofMillimetres(3),
                Optional.empty());
        BoardCutting.Result result = BoardCutting.cut(pieces, List.of(plank));
        assertThat(result.bound().bought()).isEqualTo(15);
        assertThat(result.bound().proven()).isTrue();
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
