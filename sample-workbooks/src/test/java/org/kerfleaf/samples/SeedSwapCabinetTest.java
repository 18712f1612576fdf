package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.GlazedPane;
import org.kerfleaf.plan.HungDoor;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.rules.Check;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.workbook.Prose;

/**
 * The figures of the seed-swap cabinet, worked outside the program from its sizes by arithmetic and plane geometry
 * (W 22, D 11, E 24, t 23/32, slope 30°, overhang 2, kerf 1/8 in), read off the plan of the workbook file.
 */
class SeedSwapCabinetTest {
    /** The figures are given to five decimals of an inch. */
    private static final Offset<Double> FIVE_DECIMALS = within(0.6e-5);

    private static Plan plan;

    @BeforeAll
    static void plan() {
        plan = Sample.CABINET.plan();
    }

    private static PlannedPart part(String name) {
        return plan.part(name).orElseThrow();
    }

    private static double inches(Length length) {
        return length.inInches();
    }

    private static Check check(String name) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plan_hasNoProblems() {
        assertThat(plan.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // part, how many, along the grain, as printed, across, as printed
        "Floor,     1, 22,       22,              11,       11",
        "Side,      2, 24.41497, 24 13/32 heavy,  11,       11",
        "Front,     1, 30.76582, 30 25/32 light,  23.4375,  23 7/16",
        "Back,      1, 30.76582, 30 25/32 light,  23.4375,  23 7/16",
        "Roof,      2, 16.4375,  16 7/16,         15.94662, 15 15/16 heavy",
        "Door,      1, 20,       20,              18,       18",
        "Shelf,     2, 22,       22,              8,        8",
        "Pane,      1, 15.9375,  15 15/16,        13.9375,  13 15/16",
        "Rake trim, 4, 15.94662, 15 15/16 heavy,  1.5,      1 1/2",
        "Eave trim, 2, 17.9375,  17 15/16,        1.5,      1 1/2",
        "Ridge cap, 1, 17.9375,  17 15/16,        4,        4",
        "Post,      1, 72,       72,              3.5,      3 1/2",
        "Arm,       2, 18,       18,              7.25,     7 1/4",
        "Seat,      1, 20,       20,              7.25,     7 1/4",
    })
    void part_size_isAsWorkedOutByHand(
            String name, int count, double length, String lengthPrinted, double width, String widthPrinted) {
        PlannedPart part = part(name);
        assertThat(part.count()).isEqualTo(count);
        assertThat(inches(part.length().value())).isCloseTo(length, FIVE_DECIMALS);
        assertThat(part.length().value().read(plan.style()).text()).isEqualTo(lengthPrinted);
        assertThat(inches(part.width().value())).isCloseTo(width, FIVE_DECIMALS);
        assertThat(part.width().value().read(plan.style()).text()).isEqualTo(widthPrinted);
    }

    @Test
    void sideAndRoof_bevel_isTheSlopeAndLacksTTanSlope() {
        for (String name : List.of("Side", "Roof")) {
            PlannedPart.PlannedEdge edge = part(name).edges().get(0);
            assertThat(edge.cut()).isEqualTo(PlannedPart.PlannedEdge.Cut.BEVEL);
            assertThat(edge.angle().value()).isEqualTo(Angle.ofDegrees(30));
            // Long face less short face: 24.41497 - 24 and 15.94662 - 15.53165.
            assertThat(inches(edge.shorter().value())).isCloseTo(0.41497, FIVE_DECIMALS);
        }
    }

    @Test
    void bevel_bladeDepth_isAQuarterInchPastTheSheetAlongTheTilt() {
        SawSetting tilted = plan.sawSettings().stream()
                .filter(s -> !s.tilt().value().isZero())
                .findFirst()
                .orElseThrow();
        assertThat(inches(tilted.bladeDepth().orElseThrow().value())).isCloseTo(1.07994, FIVE_DECIMALS);
    }

    @Test
    void rakeTrim_scale_readsFromSquare() {
        PlannedPart.PlannedEdge mitre = part("Rake trim").edges().get(0);
        assertThat(mitre.angle().value()).isEqualTo(Angle.ofDegrees(30));
        assertThat(inches(
                        part("Rake trim").length().value().minus(mitre.shorter().value())))
                .isCloseTo(15.08059, FIVE_DECIMALS);
        assertThat(mitre.angle().reason().rule()).contains("reads from square");
    }

    @Test
    void gable_area_isTheOutlineLessTheDoorway() {
        // 641.787 in² less 288, and 0.054 given back by four 1/4 in corners.
        assertThat(part("Front").area().value().inSquareInches()).isCloseTo(353.841, within(0.001));
        // Less two 1 in vents.
        assertThat(part("Back").area().value().inSquareInches()).isCloseTo(641.787 - Math.PI / 2, within(0.001));
    }

    @Test
    void boundingRectangles_together_are3457() {
        Area sum = plan.parts().stream()
                .filter(p -> p.stock().equals("exterior plywood"))
                .map(p -> p.length().value().by(p.width().value()).times(p.count()))
                .reduce(Area.ZERO, Area::plus);
        assertThat(sum.inSquareInches()).isCloseTo(3457.52, within(0.01));
    }

    @Test
    void plywood_oneSheet_isProvenEnough() {
        assertThat(bound("exterior plywood")).satisfies(b -> {
            assertThat(b.bought()).isEqualTo(1);
            assertThat(b.proven()).isTrue();
        });
    }

    @ParameterizedTest
    @CsvSource({"4x4, 1", "2x8, 1", "1x2, 2"})
    void boards_areProvenFewest(String stock, int boards) {
        assertThat(bound(stock).bought()).isEqualTo(boards);
        assertThat(bound(stock).fewest()).isEqualTo(boards);
        assertThat(bound(stock).proven()).isTrue();
    }

    private static StockBound bound(String stock) {
        return plan.bounds().stream()
                .filter(b -> b.stock().equals(stock))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void screws_beforeTheRoof_are58_andTheRoofTakes16() {
        HardwareLine screws = plan.hardware().stream()
                .filter(h -> h.what().contains("No. 6"))
                .findFirst()
                .orElseThrow();
        assertThat(screws.uses())
                .containsExactly(
                        "Back to Floor: 5",
                        "Side to Floor: 6",
                        "Back to Side: 12",
                        "Side, Back to Shelf: 18",
                        "Front to Floor, Side: 17",
                        // Four slopes of 13.53 in take 4 each, two side tops of 11 in 3 each.
                        "Roof to Front, Back: 16");
        assertThat(screws.need().value()).isEqualTo(58 + 16);
    }

    /** Contacts reworked by hand and found by a prototype on solids, in square inches. */
    @ParameterizedTest
    @CsvSource({
        "Floor, Back, 15.8125",
        "Side, Roof, 9.12935",
        "Front, Roof, 9.72587",
        "Roof, Roof, 13.64216",
        "Seat, Post, 12.25"
    })
    void contact_area_isAsWorkedOutByHand(String one, String other, double area) {
        List<PlacedSolid> solids = plan.placed().stream().map(PlacedPart::solid).toList();
        assertThat(Touching.all(solids))
                .filteredOn(t -> t.a().part().equals(one) && t.b().part().equals(other)
                        || t.a().part().equals(other) && t.b().part().equals(one))
                .filteredOn(t -> !t.touches().isEmpty())
                .isNotEmpty()
                .allSatisfy(t -> assertThat(t.area().inSquareInches()).isCloseTo(area, within(0.6e-5)));
    }

    @Test
    void roof_onItsGables_dropsTheOverhangsSineAndTopsOutOverThePeak() {
        double wallTop = box("Side").high().z() / 25.4 - 0.71875 * Math.tan(Math.PI / 6);
        assertThat(box("Roof").high().z() / 25.4 - box("Floor").low().z() / 25.4)
                .isCloseTo(31.59576, FIVE_DECIMALS);
        // The eave's under edge, 2 in down the slope from the wall's top outer edge, lies 1 in below it.
        PlacedSolid roof = solid("Roof");
        double eave = roof.face("OUTSIDE").corners().stream()
                        .mapToDouble(Vector::z)
                        .min()
                        .orElseThrow()
                / 25.4;
        assertThat(wallTop - eave).isCloseTo(1.0, FIVE_DECIMALS);
    }

    private static PlacedSolid solid(String part) {
        return plan.placed().stream()
                .map(PlacedPart::solid)
                .filter(s -> s.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static Bounds box(String part) {
        return solid(part).bounds();
    }

    @Test
    void bolt_throughArmPostArm_isTheNextLengthSold() {
        assertThat(plan.hardware())
                .extracting(HardwareLine::what)
                .contains("carriage bolt 3/8 × 7 1/2 in, hot-dip galvanised");
    }

    @Test
    void caulk_insideAndWetSeams_areThoseOfTheSolids() {
        // A prototype on solids found 312.8 in inside before the roof: floor 66, corners 44.518 and 47.392, shelves
        // 154.875. Rain reaches four ends of rake trim, 3/4 in each.
        FinishLine caulk = plan.finish().stream()
                .filter(f -> f.task() == FinishLine.Task.CAULK)
                .findFirst()
                .orElseThrow();
        assertThat(inches((Length) caulk.extent().value())).isCloseTo(312.785 + 4 * 0.75, within(0.001));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Screw reach: Back to Floor          | 31/32 in",
                "Screw reach: Back to Floor          | 7 diameters",
                "Edge distance: Back to Floor        | 23/64 in",
                "Frame left: Door, window            | 2 1/2 in",
                "Frame left: Front, doorway          | 3 in",
                "Rabbet lip: Door                    | 17/32 in",
                "Strip squeeze: Door                 | 33 %",
                "Eave cover: Roof                    | 27/32 in",
                "Eave cover: Roof                    | 1 5/32 in past it",
                "Pane when cold: Pane, wide          | 29/64 in",
                "Pane when cold: Pane, high          | 29/64 in",
                "Latch use: Knob                     | 45 1/2 in",
                "Sizes close: left to right, Floor   | Side 23/32 + Floor 22 + Side 23/32 = 23 7/16 in",
            })
    void check_holdsWithItsFigure(String name, String figure) {
        assertThat(check(name).verdict()).isEqualTo(Check.Verdict.HOLDS);
        assertThat(check(name).result()).contains(figure);
    }

    /** 90° + asin((1/8)/t) = 100.0154°; the chain stops the door 5° before. */
    @Test
    void door_opened_meetsItsOwnFront_andTheChainStopsItBefore() {
        Check swing = check("Door swing: Door");
        assertThat(swing.result())
                .isEqualTo(
                        "Opened, it meets Front at 100.02°. Turned on to 180°, 2 23/32 × 20 × 19/32 in of both would be"
                                + " in one place. Next comes Eave trim, at 142.62°. It is stopped at 95°.");
        assertThat(swing.verdict()).isEqualTo(Check.Verdict.HOLDS);
        assertThat(swing.margin()).isEqualTo("5.02° to spare");
        double corner = 90 + Math.toDegrees(Math.asin(0.125 / 0.71875));
        assertThat(swing.level().orElseThrow()).isCloseTo((corner - 95) / corner, within(1e-6));

        Plan unsaid = Sample.CABINET.planWith(".stopsAt(\"95 deg\")", "");
        assertThat(verdict(unsaid, "Door swing")).isEqualTo(Check.Verdict.NOT_KNOWN);
        assertThat(verdict(unsaid, "Eave drop")).isEqualTo(Check.Verdict.NOT_KNOWN);
        Plan late = Sample.CABINET.planWith("stopsAt(\"95 deg\")", "stopsAt(\"110 deg\")");
        assertThat(verdict(late, "Door swing")).isEqualTo(Check.Verdict.SHORT);
    }

    /**
     * The eave is 2 · sin 30° = 1 below the wall's 24, its trim hangs to 21.948 and the door's top is at 22. In plan the trim's end,
     * cut by the door's top, stands 4.62035 beside and 2.625 before the hinges: the door's outer face comes onto it at
     * atan2(2.625, −4.62035) − asin(t / 5.31402) = 142.62°.
     */
    @Test
    void eave_hangsLowerThanTheDoorsTop_butTheDoorIsStoppedBefore() {
        Check drop = check("Eave drop: Roof over Door");
        assertThat(drop.result())
                .isEqualTo(
                        "The eave ends 1 in below the wall's top edge. Eave trim hangs to 2 3/64 in below it, the door's"
                                + " top is 2 in below it. So the door is 3/64 in too high to open under it, and meets it at 142.62°."
                                + " It is stopped at 95°.");
        double r = Math.hypot(2.625, 4.62035);
        double meets = Math.toDegrees(Math.atan2(2.625, -4.62035) - Math.asin(0.71875 / r));
        assertThat(drop.verdict()).isEqualTo(Check.Verdict.HOLDS);
        assertThat(drop.level().orElseThrow()).isCloseTo((meets - 95) / meets, within(1e-5));
        assertThat(plan.placed().stream()
                        .filter(p -> p.solid().part().equals("Eave trim"))
                        .mapToDouble(p -> p.solid().bounds().low().z() / 25.4 - 33.5)
                        .min()
                        .orElseThrow())
                .isCloseTo(21.948, within(5e-4));
    }

    /** The door's face stands 1/8 + t = 0.84375 before the front; 2 − 0.84375 = 1.15625. */
    @Test
    void overhang_reachesPastTheDoor() {
        Check cover = check("Eave cover: Roof");
        assertThat(cover.result()).contains("Door (its knob not counted) 27/32 in: 1 5/32 in past it");
        assertThat(cover.level().orElseThrow() + 1).isCloseTo(1.15625, within(1e-6));
    }

    @Test
    void screwReach_withNumberEight_isShort() {
        // No. 8 in the same place: D 0.164 in, reach 5.9 D; and in the sheet's edge 0.359 < 0.410 in.
        Plan thicker = Sample.CABINET.planWith("woodScrew(6, \"1 5/8 in\")", "woodScrew(8, \"1 5/8 in\")");
        assertThat(verdict(thicker, "Screw reach: Back to Floor")).isEqualTo(Check.Verdict.SHORT);
        assertThat(verdict(thicker, "Edge distance: Back to Floor")).isEqualTo(Check.Verdict.SHORT);
    }

    private static Check.Verdict verdict(Plan of, String name) {
        return of.checks().stream()
                .filter(c -> c.name().startsWith(name))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    @Test
    void hole_volumes_andHeights_followFromTheSite() {
        SitePlan site = plan.site().orElseThrow();
        assertThat(site.hole().value().inCubicFeet()).isCloseTo(2.0, within(0.001));
        assertThat(site.gravel().value().inCubicFeet()).isCloseTo(0.1818, within(0.0001));
        assertThat(inches(site.inGround().value())).isEqualTo(40);
        assertThat(inches(site.boxBottom().orElseThrow().value())).isEqualTo(33.5);
        assertThat(inches(site.latch().orElseThrow().value())).isEqualTo(45.5);
    }

    @Test
    void kit_withFreight_is273() {
        assertThat(plan.cost().compare()).hasSize(1);
        assertThat(plan.cost().compare().get(0).total().value().toString()).isEqualTo("USD 273.00");
        assertThat(plan.cost().notKnown()).isEmpty();
    }

    @Test
    void letters_skipIAndO_andFollowFirstUse() {
        assertThat(plan.parts())
                .extracting(p -> p.letter() + " " + p.name())
                .startsWith(
                        "A Floor",
                        "B Back",
                        "C Side",
                        "D Shelf",
                        "E Front",
                        "F Roof",
                        "G Rake trim",
                        "H Eave trim",
                        "J Ridge cap",
                        "K Door");
    }

    /**
     * Capability 1 of the trade's list, inside sizes held (W 22, D 11, E 24, slope 30°), worked by hand for any thickness: what
     * lies between two others keeps its size, what covers two of them changes by twice the difference, and what hangs on slope
     * or thickness follows.
     */
    @Test
    void caliper_anyThickness_changesExactlyWhatDependsOnIt() {
        double tan = Math.tan(Math.PI / 6);
        double cos = Math.cos(Math.PI / 6);
        Touched.atSomeThicknesses(Sample.CABINET, plan, t -> {
            double wide = 22 + 2 * t;
            double peak = 24 + wide / 2 * tan;
            double roofUp = wide / 2 / cos + 2 + t * tan;
            double roofDeep = 11 + 2 * t + 4;
            return new Touched()
                    .with("Floor, thickness", t)
                    .with("Back, along the grain", peak)
                    .with("Back, across the grain", wide)
                    .with("Back, thickness", t)
                    .with("Side, along the grain", 24 + t * tan)
                    .with("Side, thickness", t)
                    .with("Side, top, long point inside: short side less by", t * tan)
                    .with("Shelf, thickness", t)
                    .with("Front, along the grain", peak)
                    .with("Front, across the grain", wide)
                    .with("Front, thickness", t)
                    .with("Roof, along the grain", roofDeep)
                    .with("Roof, across the grain", roofUp)
                    .with("Roof, thickness", t)
                    .with("Roof, ridge, long point on the upper face: short side less by", t * tan)
                    .with("Rake trim, along the grain", roofUp)
                    .with("Eave trim, along the grain", roofDeep + 1.5)
                    .with("Ridge cap, along the grain", roofDeep + 1.5)
                    .with("Door, thickness", t);
        });
    }

    @Test
    void caliper_fromThreeQuartersToFiveEighths_isToldOldAndNew() {
        Plan thinner = Sample.CABINET.plan(Map.of("Sheet by caliper", "19/32 in"));
        assertThat(Touched.words(plan, thinner))
                .contains(
                        "Sheet by caliper: 23/32 in → 19/32 in",
                        "what holds together with Floor, left to right: 23 7/16 in → 23 3/16 in",
                        "Front, across the grain: 23 7/16 in → 23 3/16 in",
                        // t / cos 30° + 1/4: 1.07994 and 0.93560.
                        "circular saw, top, long point inside; ridge, long point on the upper face, blade depth:"
                                + " 1 3/32 in light → 15/16 in",
                        "Edge distance: Back to Floor: holds → short")
                .noneMatch(words -> words.startsWith("exterior plywood, bought"))
                .noneMatch(words -> words.contains(", tilt"));
    }

    @Test
    void chains_closeOnTheInsideSizes() {
        assertThat(plan.chains())
                .filteredOn(chain -> chain.build() == 0)
                .extracting(chain -> chain.words(plan.style()) + ". " + chain.heldIn(plan.style()))
                .containsExactly(
                        "Side 23/32 + Floor 22 + Side 23/32 = 23 7/16 in outside. Width inside 22 in",
                        "Front 23/32 + Floor 11 + Back 23/32 = 12 7/16 in outside. Depth inside 11 in",
                        // Peak 30.76582; to the roof's top 31.59576, and the cap's 1/8 · cos 30° on it.
                        "Back 30 25/32 light + Roof 27/32 light + Ridge cap 5/32 light = 31 3/4 in light outside. ");
    }

    @Test
    void prose_liveValues_areThePlansOwn() {
        Prose prose = Sample.CABINET.prose();
        assertThat(words(prose.lead()))
                .contains("It is 22 in wide and 11 in deep inside, its roof slopes 30°, and 1 sheet of plywood");
        assertThat(words(section(prose, "What we buy"))).contains("sold as 3/4 in; a caliper says 23/32 in");
        assertThat(words(section(prose, "The roof"))).contains("meet at 120°", "set to 30°");
    }

    private static List<Prose.Block> section(Prose prose, String title) {
        return prose.sections().stream()
                .filter(s -> s.title().equals(title))
                .findFirst()
                .orElseThrow()
                .blocks();
    }

    private static String words(List<Prose.Block> blocks) {
        return blocks.stream()
                .filter(Prose.Block.Paragraph.class::isInstance)
                .flatMap(block -> ((Prose.Block.Paragraph) block).runs().stream())
                .map(Prose.Run::text)
                .collect(Collectors.joining());
    }

    @Test
    void sizes_tried_changeThePlanWithoutChangingTheFile() {
        Plan narrower = Sample.CABINET.plan(Map.of("Width inside", "20 in"));
        assertThat(inches(narrower.part("Floor").orElseThrow().length().value()))
                .isEqualTo(20);
        assertThat(inches(narrower.part("Front").orElseThrow().width().value())).isEqualTo(21.4375);
    }

    /** Guide line t/2 = 23/64 from the bottom edge; screws 1 1/2 in from the contact's ends, 4 3/4 in apart, t further in. */
    @Test
    void back_marking_isOutsideUpWithTheFloorsLineAtHalfItsThickness() {
        Marking back = plan.markings().stream()
                .filter(m -> m.part().equals("Back"))
                .findFirst()
                .orElseThrow();
        assertThat(back.up()).isEqualTo(SheetSide.OUTSIDE);
        GuideLine floor = back.guides().stream()
                .filter(g -> g.words().equals("middle of Floor"))
                .findFirst()
                .orElseThrow();
        assertThat(floor.from().y() / 25.4).isCloseTo(0.359375, FIVE_DECIMALS);
        assertThat(floor.to().y() / 25.4).isCloseTo(0.359375, FIVE_DECIMALS);
        List<Double> stations = back.holes().stream()
                .filter(h -> Math.abs(h.y() - floor.from().y()) < 1e-6)
                .map(h -> h.x() / 25.4)
                .sorted()
                .toList();
        double[] expected = {2.21875, 6.96875, 11.71875, 16.46875, 21.21875};
        assertThat(stations).hasSize(5);
        for (int i = 0; i < expected.length; i++) {
            assertThat(stations.get(i)).isCloseTo(expected[i], FIVE_DECIMALS);
        }
    }

    /** The door is 20 in high and begins 2 in above the front's foot: hinges at 20/6 and 20 - 20/6. */
    @Test
    void door_hingesCatchesAndKnob_areAsWorkedOutByHand() {
        HungDoor door = plan.doors().hung().get(0);
        assertThat(door.hinges().stream().map(h -> h.value().inInches()))
                .satisfiesExactly(
                        low -> assertThat(low).isCloseTo(20 / 6.0, FIVE_DECIMALS),
                        high -> assertThat(high).isCloseTo(100 / 6.0, FIVE_DECIMALS));
        assertThat(door.carcass()).contains("Front");
        assertThat(door.onCarcass().get(0).value().inInches()).isCloseTo(2 + 20 / 6.0, FIVE_DECIMALS);
        assertThat(door.catches()).hasSize(2);
        assertThat(inches(door.knobHole().orElseThrow().value())).isEqualTo(7 / 32.0);
        assertThat(inches(door.backset().orElseThrow().value())).isEqualTo(1.25);
        assertThat(inches(door.standOff().orElseThrow().value())).isEqualTo(0.125);
    }

    /** Pocket 14 x 16 in; 1/16 in of tape and 1/8 in of acrylic fill a rabbet of 3/16 in, of 23/32 in are 17/32 in left. */
    @Test
    void pane_pocketRabbetAndBeads_areAsWorkedOutByHand() {
        GlazedPane pane = plan.doors().panes().get(0);
        assertThat(inches(pane.pocketWide().value())).isEqualTo(14);
        assertThat(inches(pane.pocketHigh().value())).isEqualTo(16);
        assertThat(inches(pane.fills().orElseThrow().value())).isEqualTo(3 / 16.0);
        assertThat(inches(pane.lip().orElseThrow().value())).isEqualTo(17 / 32.0);
        // Tape and pane fill the rabbet, so the beads lie on the face: 3/4 in less 1/2 is over wood at each end.
        assertThat(inches(pane.beadWide().orElseThrow().value())).isEqualTo(14.5);
        assertThat(inches(pane.beadOver().orElseThrow().value())).isEqualTo(0.25);
        assertThat(inches(pane.pinDeep().orElseThrow().value())).isEqualTo(23 / 32.0 - 1 / 16.0);
        assertThat(verdict(plan, "Beads: Pane")).isEqualTo(Check.Verdict.HOLDS);
        assertThat(verdict(plan, "Rabbet depth: Pane")).isEqualTo(Check.Verdict.HOLDS);
        assertThat(verdict(plan, "Pane corner: Pane")).isEqualTo(Check.Verdict.HOLDS);
        assertThat(verdict(Sample.CABINET.planWith(".cornersSquared()", ""), "Pane corner: Pane"))
                .as("its cutter of 1 3/8 in leaves corners of 11/16 in")
                .isEqualTo(Check.Verdict.SHORT);
    }

    @Test
    void fastened_countsAreTheHardwareLists() {
        Map<String, Integer> placed = new TreeMap<>();
        plan.fastened().forEach(f -> placed.merge(f.fastener(), f.driven().size(), Integer::sum));
        Map<String, Integer> listed = new TreeMap<>();
        plan.hardware().stream()
                .filter(h -> placed.containsKey(h.what()))
                .forEach(h -> listed.put(h.what(), h.need().value()));
        assertThat(placed).isEqualTo(listed).hasSize(5);
        assertThat(check("Screws meet").verdict()).isEqualTo(Check.Verdict.HOLDS);
        assertThat(check("Screws meet").result()).contains("No row had to move");
    }
}
