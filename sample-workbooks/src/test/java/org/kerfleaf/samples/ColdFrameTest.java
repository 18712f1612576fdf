package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.rules.Check;

/**
 * The figures of the cold frame, worked outside the program (outside 47 x 30, 12 in front, 20 at the back, t 23/32, kerf 1/8
 * in, no trim), read off the plan of the workbook file.
 */
class ColdFrameTest {
    private static final Offset<Double> FOUR_DECIMALS = within(0.6e-4);

    private static Plan plan;

    @BeforeAll
    static void plan() {
        plan = Sample.COLD_FRAME.plan();
    }

    private static PlannedPart part(String name) {
        return plan.part(name).orElseThrow();
    }

    @Test
    void plan_hasNoProblems() {
        assertThat(plan.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Front,     1, 12.1917, 47",
        "Back,      1, 20,      47",
        "Side,      2, 19.8083, 28.5625",
        "Lid stile, 2, 32.0483, 2.5",
        "Lid rail,  2, 43,      2.5",
        "Lid pane,  1, 43.875,  27.96875",
    })
    void part_size_isAsWorkedOutByHand(String name, int count, double length, double width) {
        assertThat(part(name).count()).isEqualTo(count);
        assertThat(part(name).length().value().inInches()).isCloseTo(length, FOUR_DECIMALS);
        assertThat(part(name).width().value().inInches()).isCloseTo(width, FOUR_DECIMALS);
    }

    @Test
    void frontAndBack_bevel_isTheLidsSlopeLeaningTheRightWay() {
        assertThat(part("Front").edges().get(0).angle().value().inDegrees()).isCloseTo(14.931, within(0.001));
        assertThat(part("Front").edges().get(0).name()).isEqualTo("top, long point inside");
        assertThat(part("Back").edges().get(0).name()).isEqualTo("top, long point outside");
        // t · tan θ = 0.1917; blade depth along the tilt t / cos θ + 1/4 = 0.994.
        assertThat(part("Front").edges().get(0).shorter().value().inInches()).isCloseTo(0.1917, FOUR_DECIMALS);
        assertThat(plan.sawSettings().stream()
                        .filter(s -> !s.tilt().value().isZero())
                        .findFirst()
                        .orElseThrow()
                        .bladeDepth()
                        .orElseThrow()
                        .value()
                        .inInches())
                .isCloseTo(0.994, within(0.0005));
    }

    @Test
    void side_slopingEdge_andLid_areAsLongAsWorkedOutByHand() {
        // 28.5625 / 0.966235; the stile lies √(30² + 8²) along the slope and 1 in past the front.
        assertThat(new Built(plan)
                        .piece("Side")
                        .solid()
                        .outline()
                        .edge("TOP")
                        .length()
                        .inInches())
                .isCloseTo(29.5606, FOUR_DECIMALS);
        assertThat(part("Lid stile").length().value().inInches() - 1).isCloseTo(31.0483, FOUR_DECIMALS);
    }

    @Test
    void sheet_nestedPair_leavesTheLargerOffcut() {
        assertThat(bound("exterior plywood").bought()).isEqualTo(1);
        assertThat(bound("exterior plywood").proven()).isTrue();
        // The pair's blank: 12.1917 + 19.8083 + kerf / cos θ = 32.1294; rows and kerfs leave 31.304 by 48.
        assertThat(plan.sheets().get(0).placements()).anySatisfy(placed -> {
            assertThat(placed.part()).isEqualTo("Side");
            assertThat(placed.length().inInches()).isCloseTo(32.1294, FOUR_DECIMALS);
        });
        assertThat(largest(plan)).isCloseTo(31.304, within(0.0005));
        Plan apart = Sample.COLD_FRAME.planWith(".pairFromOneBlank()", ".pair()");
        assertThat(largest(apart)).isCloseTo(23.692, within(0.0005));
    }

    /** The extent along the sheet of the offcut that is as wide as the sheet. */
    private static double largest(Plan of) {
        return of.sheets().get(0).offcuts().stream()
                .filter(o -> o.width().equals(Length.ofInches(48L)))
                .map(Offcut::length)
                .reduce(Length::max)
                .orElseThrow()
                .inInches();
    }

    @Test
    void lidBoards_areProvenTwo() {
        assertThat(bound("1x3").bought()).isEqualTo(2);
        assertThat(bound("1x3").fewest()).isEqualTo(2);
        assertThat(bound("1x3").proven()).isTrue();
    }

    private static StockBound bound(String stock) {
        return plan.bounds().stream()
                .filter(b -> b.stock().equals(stock))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pane_whenCold_isHeldOnEverySide() {
        // (43.875 · 0.9976 − 43) / 2 = 0.385 and 0.427, both 3/8 or more.
        assertThat(verdict(plan, "Pane when cold: Lid pane, wide")).isEqualTo(Check.Verdict.HOLDS);
        assertThat(verdict(plan, "Pane when cold: Lid pane, high")).isEqualTo(Check.Verdict.HOLDS);
    }

    @Test
    void pane_inDamp_isCutSmallerAndFallsShortWhenCold() {
        // 44 / 1.0054 = 43.764 → 43 3/4, cold bite then 0.322.
        Plan damp = Sample.COLD_FRAME.planWith(".warmer(\"60 F\")", ".inDamp().warmer(\"60 F\")");
        assertThat(damp.part("Lid pane").orElseThrow().length().value().inInches())
                .isEqualTo(43.75);
        assertThat(verdict(damp, "Pane when cold: Lid pane, wide")).isEqualTo(Check.Verdict.SHORT);
    }

    private static Check.Verdict verdict(Plan of, String name) {
        return of.check(name).orElseThrow().verdict();
    }

    @Test
    void pane_weight_isAcrylics() {
        // Cast acrylic 1.19 g/cm³ (makers' sheets): 43.875 x 27.96875 x 1/8 in weigh 6.59 lb.
        assertThat(part("Lid pane").weight().orElseThrow().value().inPounds()).isCloseTo(6.59, within(0.01));
    }

    @Test
    void lid_weight_isPaneAndFrame() {
        // Ponderosa pine, specific gravity 0.40 at 12 % (Wood Handbook table 5-3, seen in a copy): 28.0 lb/ft³; 281.43
        // in³ weigh 4.56 lb.
        double frame = 2 * pounds("Lid stile") + 2 * pounds("Lid rail");
        assertThat(frame).isCloseTo(4.56, within(0.01));
        assertThat(frame + pounds("Lid pane")).isCloseTo(11.2, within(0.06));
    }

    private static double pounds(String part) {
        return part(part).weight().orElseThrow().value().inPounds();
    }

    @Test
    void paint_insideAndOutside_is33SquareFeet() {
        FinishLine primer = plan.finish().stream()
                .filter(f -> f.what().equals("exterior primer"))
                .findFirst()
                .orElseThrow();
        // Outside 2418 in², inside 2372.0 in²: 16.79 and 16.47 ft².
        assertThat(((Area) primer.extent().value()).inSquareInches()).isCloseTo(2418 + 2372.0, within(0.1));
        assertThat(primer.need().value().inGallons()).isCloseTo(0.111, within(0.0005));
        assertThat(primer.packs().value()).isEqualTo(1);
        FinishLine colour = plan.finish().stream()
                .filter(f -> f.what().equals("exterior latex"))
                .findFirst()
                .orElseThrow();
        assertThat(colour.need().value().inGallons()).isCloseTo(0.222, within(0.0005));
        assertThat(colour.packs().value()).isEqualTo(1);
    }

    @Test
    void cost_asBought_is190_95_and26_05UnderTheKit() {
        assertThat(plan.cost().bought().orElseThrow().value().toString()).isEqualTo("USD 190.95");
        assertThat(plan.cost().compare().get(0).total().value().toString()).isEqualTo("USD 217.00");
        assertThat(plan.cost()
                        .compare()
                        .get(0)
                        .difference()
                        .orElseThrow()
                        .value()
                        .toString())
                .isEqualTo("USD 26.05");
    }

    static Stream<Map<String, String>> variants() {
        return Built.variants(Sample.COLD_FRAME.plan(), 23).stream();
    }

    /** Every wall's top carries the lid: on each it shares as much as the frame's boards cover of it. */
    @ParameterizedTest
    @MethodSource("variants")
    void anySize_lidLiesOnAllWallsAndItsPaneInTheRabbet(Map<String, String> sizes) {
        Plan tried = Sample.COLD_FRAME.plan(sizes);
        Built built = new Built(tried);
        double t = built.size("Sheet by caliper");
        double wide = built.size("Width outside");
        double deep = built.size("Depth outside");
        double rise = built.size("Height outside, at the back") - built.size("Height outside, in front");
        double slope = StrictMath.atan2(rise, deep);
        assertThat(tried.problems()).isEmpty();
        assertThat(built.clashes()).isEmpty();
        // The lid's lower end is 1 in past the front along the slope, so cos θ of it level; its upper end is in line
        // behind.
        var under = built.piece("Lid stile").face("OUTSIDE").bounds();
        double reach = built.piece("Front").bounds().low().y() - under.low().y();
        assertThat(reach).isCloseTo(25.4 * StrictMath.cos(slope), within(1e-5));
        assertThat(under.high().y())
                .isCloseTo(built.piece("Back").bounds().high().y(), within(1e-5));
        // The front's bevel is t / cos θ wide along the slope; stiles and rail cover it over the box's whole width.
        double bevel = t / StrictMath.cos(slope);
        double onFront = sum(built.contacts("Lid stile", "Front")) + sum(built.contacts("Lid rail", "Front"));
        assertThat(onFront).isCloseTo(wide * bevel, within(1e-2));
        double onBack = sum(built.contacts("Lid stile", "Back")) + sum(built.contacts("Lid rail", "Back"));
        assertThat(onBack).isCloseTo(wide * bevel, within(1e-2));
        // Each side lies whole under its stile: between the walls, along the slope.
        double onSides = sum(built.contacts("Lid stile", "Side"));
        assertThat(onSides).isCloseTo(2 * t * (deep - 2 * t) / StrictMath.cos(slope), within(1e-2));
        // The pane lies on the rabbet's floor, all round.
        assertThat(built.contacts("Lid pane", "Lid stile")).hasSize(2);
        assertThat(built.contacts("Lid pane", "Lid rail")).hasSize(2);
    }

    private static double sum(List<Double> areas) {
        return areas.stream().mapToDouble(a -> a).sum();
    }

    /** The lid turns about its back rail's lower edge, pane and all: its end comes to lie on the back at 180 + 14.93° only. */
    @Test
    void lid_opensFreely() {
        Check swing = plan.checks().stream()
                .filter(c -> c.name().equals("Door swing: Lid rail"))
                .findFirst()
                .orElseThrow();
        assertThat(swing.verdict()).isEqualTo(Check.Verdict.HOLDS);
        assertThat(swing.result()).isEqualTo("Opened to 180° it meets nothing.");

        Plan further = Sample.COLD_FRAME.planWith("stopsAt(\"100 deg\")", "stopsAt(\"200 deg\")");
        assertThat(further.checks().stream()
                        .filter(c -> c.name().equals("Door swing: Lid rail"))
                        .findFirst()
                        .orElseThrow()
                        .result())
                .startsWith("Opened, it meets Back at 194.93°.");
    }

    /**
     * Capability 1 of the trade's list, outside sizes held, worked by hand for any thickness: what stands between two others
     * changes by twice the difference, what laps by nothing, and the bevels by what the slope (8 in 30) rises over t.
     */
    @Test
    void caliper_anyThickness_changesExactlyWhatDependsOnIt() {
        double slope = 8.0 / 30;
        Touched.atSomeThicknesses(
                Sample.COLD_FRAME,
                plan,
                t -> new Touched()
                        .with("Front, along the grain", 12 + t * slope)
                        .with("Front, thickness", t)
                        .with("Front, top, long point inside: short side less by", t * slope)
                        .with("Side, along the grain", 20 - t * slope)
                        .with("Side, across the grain", 30 - 2 * t)
                        .with("Side, thickness", t)
                        .withWords("Side, then")
                        .with("Back, thickness", t)
                        .with("Back, top, long point outside: short side less by", t * slope));
    }

    @Test
    void caliper_fromThreeQuartersToFiveEighths_isToldOldAndNew() {
        Plan thinner = Sample.COLD_FRAME.plan(Map.of("Sheet by caliper", "19/32 in"));
        assertThat(thinner.part("Front").orElseThrow().length().value().inInches())
                .isCloseTo(12.1583, FOUR_DECIMALS);
        assertThat(Touched.words(plan, thinner))
                .contains(
                        "Sheet by caliper: 23/32 in → 19/32 in",
                        "Side, across the grain: 28 9/16 in → 28 13/16 in",
                        "Front, along the grain: 12 3/16 in heavy → 12 5/32 in",
                        "Side, then: top slopes from 12 3/16 in heavy in front to 19 13/16 in light at the back, both from"
                                + " one blank → top slopes from 12 5/32 in in front to 19 27/32 in at the back, both from"
                                + " one blank",
                        // 2.5 diameters of a No. 6 are 0.345 in; half the sheet is 0.297 now.
                        "Edge distance: Front to Side: holds → short")
                // The slope stays, and so does the lid.
                .noneMatch(words -> words.startsWith("Lid"))
                .noneMatch(words -> words.contains(", tilt"));
    }

    @Test
    void chains_closeOnTheOutsideSizes() {
        assertThat(plan.chains())
                .extracting(chain -> chain.words(plan.style()) + ". " + chain.heldIn(plan.style()))
                .containsExactly(
                        "Front 47 in outside. Width outside 47 in",
                        "Front 23/32 + Side 28 9/16 + Back 23/32 = 30 in outside. Depth outside 30 in",
                        "Back 20 in outside. Height outside, at the back 20 in");
    }
}
