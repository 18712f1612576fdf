package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Cut;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;

/**
 * The figures of the six-sided planter, worked outside the program (sides lean 15 degrees, 250 wide on top, 300 high, 18 mm),
 * read off the plan of the workbook file; and the same at random sizes against solids of their own making.
 */
class SplayedPlanterTest {
    private static final Plan PLAN = Sample.PLANTER.plan();
    private static final Built BUILT = new Built(PLAN);
    private static final double T = 18;
    private static final double UP = 20;
    private static final double TAN30 = StrictMath.tan(StrictMath.PI / 6);

    /** Printed to three decimals. */
    private static final Offset<Double> PRINTED = within(0.0006);

    private static final Offset<Double> EXACT = within(2e-5);

    @Test
    void plan_hasNoProblems() {
        assertThat(PLAN.problems()).isEmpty();
    }

    /** The chart of a saw maker (seen in a copy), 75 degrees from level and six sides: mitre 8.50, tilt 28.88. */
    @Test
    void corner_isACompoundMitre() {
        PlannedPart.PlannedEdge ends = PLAN.part("Side").orElseThrow().edges().get(0);
        assertThat(ends.cut()).isEqualTo(PlannedPart.PlannedEdge.Cut.COMPOUND);
        assertThat(ends.angle().value().inDegrees()).isCloseTo(8.499, PRINTED);
        assertThat(ends.tilt().orElseThrow().value().inDegrees()).isCloseTo(28.879, PRINTED);
        // And as the solid itself has it: read off the planes of its cuts.
        Cut right = cut("RIGHT");
        assertThat(right.tilt().inDegrees()).isCloseTo(28.879, PRINTED);
        assertThat(-right.inSheet().inDegrees()).isCloseTo(8.499, PRINTED);
        assertThat(cut("TOP").tilt().inDegrees()).isCloseTo(15, PRINTED);
        assertThat(cut("BOTTOM").tilt().inDegrees()).isCloseTo(15, PRINTED);
    }

    private static Cut cut(String edge) {
        return BUILT.piece("Side").solid().cuts().stream()
                .filter(c -> c.name().equals(edge))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void sizes_areAsWorkedOutByHand() {
        // Slant 300 / cos 15 = 310.583; blank + 18 · tan 15 = 315.406; bottom side 157.180.
        assertThat(PLAN.part("Side").orElseThrow().length().value().inMillimetres())
                .isCloseTo(315.406, PRINTED);
        var outside = BUILT.piece("Side").solid().face("OUTSIDE");
        assertThat(outside.bounds().sizes().y()).isCloseTo(310.583, PRINTED);
        assertThat(outside.squareMillimetres()).isCloseTo(310.583 * (250 + 157.180) / 2, within(0.5));
        // Floor: across the flats 245.691, side 141.850, corner to corner 283.700.
        var floor = BUILT.piece("Floor").solid().outline();
        assertThat(floor.high().inMillimetres()).isCloseTo(245.691, PRINTED);
        assertThat(floor.wide().inMillimetres()).isCloseTo(283.700, PRINTED);
        assertThat(floor.edge("SIDE_1").length().inMillimetres()).isCloseTo(141.850, PRINTED);
    }

    @Test
    void outside_ofAllSides_is0_3794SquareMetres() {
        double outside = BUILT.pieces("Side").stream()
                .mapToDouble(s -> s.solid().area("OUTSIDE").squareMillimetres())
                .sum();
        assertThat(outside / 1e6).isCloseTo(0.3794, within(0.00006));
    }

    /** Both planters' outsides oiled twice at 12 m² a litre: 2 · 2 · 0.3794 / 12 = 0.126 L; the floor's underside comes to it. */
    @Test
    void oil_forTheSidesOfBothPlanters_is0_126Litres() {
        double sides = PLAN.paintwork().faces().stream()
                .filter(face -> face.part().equals("Side"))
                .mapToDouble(face -> face.area().value().squareMillimetres())
                .sum();
        assertThat(sides / 1e6).isCloseTo(0.3794, within(0.00006));
        assertThat(2 * 2 * sides / 1e6 / 12).isCloseTo(0.126, PRINTED);
        double floor = BUILT.piece("Floor").solid().area("OUTSIDE").squareMillimetres();
        var oil = PLAN.finish().stream()
                .filter(line -> line.what().equals("exterior oil"))
                .findFirst()
                .orElseThrow();
        assertThat(oil.need().value().inLitres())
                .isBetween(2 * 2 * sides / 1e6 / 12, 2 * 2 * (sides + floor) / 1e6 / 12);
        assertThat(oil.packs().value()).isEqualTo(1);
    }

    @Test
    void cost_ofTwoPlantersAndOfOne_isAsAddedUpByHand() {
        assertThat(PLAN.sheets()).hasSize(1);
        assertThat(PLAN.cost().bought().orElseThrow().value()).hasToString("EUR 99.20");
        assertThat(PLAN.cost().boughtEach().orElseThrow().value()).hasToString("EUR 49.60");
    }

    @Test
    void compoundCuts_forBothPlanters_are24() {
        PlannedPart side = PLAN.part("Side").orElseThrow();
        long ends = side.edges().stream()
                .filter(edge -> edge.cut() == PlannedPart.PlannedEdge.Cut.COMPOUND)
                .count();
        assertThat(ends * side.count() * PLAN.kits() * 2)
                .as("one entry tells of both ends")
                .isEqualTo(24);
    }

    /** In a strip, both long faces up: two kerfs, 2 · 3 / cos 28.879 / cos 8.499. */
    @Test
    void neighboursInTheStrip_are6_928MillimetresApart() {
        assertThat(PLAN.checks())
                .filteredOn(check -> check.name().startsWith("Shared bevel cut"))
                .extracting(Check::result)
                .anyMatch(words -> words.contains("28.88°") && words.contains("6.9 mm"));
        PlannedPart.PlannedEdge ends = PLAN.part("Side").orElseThrow().edges().get(0);
        assertThat(ends.angle()
                        .value()
                        .lengthOver(ends.tilt().orElseThrow().value().lengthOver(Length.ofMillimetres(2 * 3)))
                        .inMillimetres())
                .isCloseTo(6.928, PRINTED);
    }

    /** 180 − 2 · 28.879. */
    @Test
    void corner_betweenTheFacesOfTwoSides_is122_242Degrees() {
        var sides = BUILT.pieces("Side");
        double turn = StrictMath.acos(sides.get(0)
                .face("OUTSIDE")
                .normal()
                .dot(sides.get(1).face("OUTSIDE").normal()));
        assertThat(180 - StrictMath.toDegrees(turn)).isCloseTo(122.242, PRINTED);
    }

    /** Inside the sides 56 462 mm² at 38 mm and 126 602 at 275: a prismatoid of 237/3 · (56 462 + 126 602 + 84 548) mm³. */
    @Test
    void soil_from38To275Millimetres_is21_14LitresAndTooHeavyForOne() {
        var soil = PLAN.loads().filled().get(0);
        assertThat(soil.volume().value().inLitres()).isCloseTo(21.14, within(0.006));
        assertThat(soil.weight().orElseThrow().value().inKilograms()).isCloseTo(29.6, within(0.06));
        // At 600 kg/m³ the wood is 4.4 kg; the sample's is plywood.
        double wood = PLAN.placed().stream()
                .mapToDouble(p -> p.solid().volume().cubicMillimetres())
                .sum();
        assertThat(wood * 600e-9).isCloseTo(4.4, within(0.06));
        assertThat(soil.together().orElseThrow().value().inKilograms())
                .isCloseTo(29.6 + PLAN.weight().orElseThrow().value().inKilograms(), within(0.06));
        assertThat(PLAN.checks())
                .filteredOn(check -> check.name().startsWith("Lift"))
                .singleElement()
                .satisfies(lift -> {
                    assertThat(lift.verdict()).isEqualTo(Check.Verdict.SHORT);
                    assertThat(lift.advice()).contains("where it stands");
                });
    }

    @ParameterizedTest
    @MethodSource("variants")
    void anySize_soil_isAPrismatoid(Map<String, String> sizes) {
        Plan plan = Sample.PLANTER.plan(sizes);
        Built built = new Built(plan);
        double lean = lean(plan);
        double top = built.size("Height") - 25;
        double flats = built.size("Width of a side on top, outside") / TAN30
                - 2 * built.size("Height") * StrictMath.tan(lean)
                - 2 * T / StrictMath.cos(lean);
        double low = flats + 2 * 38 * StrictMath.tan(lean);
        double high = flats + 2 * top * StrictMath.tan(lean);
        assertThat(plan.loads().filled().get(0).volume().value().cubicMillimetres())
                .isCloseTo(prismatoid(low, high, top - 38), within(50.0));
    }

    static Stream<Map<String, String>> variants() {
        return Built.variants(PLAN, 47).stream();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void anySize_sidesMeetAllRoundAndTheFloorTouchesThemAlongLines(Map<String, String> sizes) {
        Plan plan = Sample.PLANTER.plan(sizes);
        Built built = new Built(plan);
        double top = built.size("Width of a side on top, outside");
        double high = built.size("Height");
        double lean = lean(plan);
        assertThat(plan.problems()).isEmpty();
        assertThat(built.clashes()).isEmpty();
        List<PlacedSolid> sides = built.pieces("Side");
        for (int i = 0; i < 6; i++) {
            // Its mitred end lies whole on the next side's.
            Touching pair = Touching.between(sides.get(i), sides.get((i + 1) % 6));
            double end = sides.get(i).solid().area("RIGHT").squareMillimetres();
            assertThat(pair.area().squareMillimetres()).isCloseTo(end, within(1e-2));
        }
        assertThat(sides).allSatisfy(side -> {
            assertThat(side.bounds().low().z()).isCloseTo(0, EXACT);
            assertThat(side.bounds().high().z()).isCloseTo(high, EXACT);
        });
        // The shell: what the outside encloses less what the inside encloses, both prismatoids; areas of hexagons √3/2
        // F².
        double wall = 2 * T / StrictMath.cos(lean);
        double flats = top / TAN30;
        double foot = flats - 2 * high * StrictMath.tan(lean);
        double shell = prismatoid(foot, flats, high) - prismatoid(foot - wall, flats - wall, high);
        assertThat(sides.stream()
                        .mapToDouble(s -> s.volume().cubicMillimetres())
                        .sum())
                .isCloseTo(shell, within(shell * 1e-7));
        double floor = (foot - wall + 2 * UP * StrictMath.tan(lean)) * TAN30;
        PlacedSolid floorIn = built.piece("Floor");
        assertThat(floorIn.bounds().low().z()).isCloseTo(UP, EXACT);
        for (PlacedSolid side : sides) {
            Touching pair = Touching.between(side, floorIn);
            assertThat(pair.touches()).isEmpty();
            assertThat(pair.lines().stream()
                            .mapToDouble(l -> l.to().minus(l.from()).length())
                            .sum())
                    .isCloseTo(floor, within(0.02));
        }
    }

    private static double lean(Plan plan) {
        return StrictMath.toRadians(plan.sizes().stream()
                .filter(s -> s.value() instanceof org.kerfleaf.measure.Angle)
                .mapToDouble(s -> ((org.kerfleaf.measure.Angle) s.value()).inDegrees())
                .findFirst()
                .orElseThrow());
    }

    private static double prismatoid(double low, double high, double height) {
        double middle = (low + high) / 2;
        return height * StrictMath.sqrt(3) / 2 * (low * low + 4 * middle * middle + high * high) / 6;
    }
}
