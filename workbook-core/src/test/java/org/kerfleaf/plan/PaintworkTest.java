package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Paint;
import org.kerfleaf.sketch.Part;

/** A small box that a lid closes: painted before and after, with and without masks, a word apart. */
class PaintworkTest {
    private enum Painted {
        BEFORE_THE_LID,
        AFTER_THE_LID,
        THE_LID_TOO,
        THE_LID_MASKED
    }

    private static Plan box(Painted when) {
        return Bench.plan(bench -> box(bench, when));
    }

    /** 20 by 10 by 6 in inside, of 3/4 in; the lid lies on the walls and is glued to them. */
    private static void box(Bench bench, Painted when) {
        Paint paint = bench.keep(
                paint("exterior latex").covers("350 sq ft", perGallon()).cans("1 qt"));
        Glue glue = bench.keep(woodGlue("exterior PVA").bottle("8 fl oz"));
        Part floor = bench.keep(panel("Floor", bench.ply()).wide("20 in").deep("10 in"));
        Part side = bench.keep(
                panel("Side", bench.ply()).deep("10 in").high("6 3/4 in").pair());
        Part wall = bench.keep(panel("Wall", bench.ply()).wide("21 1/2 in").high("6 3/4 in"));
        Part lid = bench.keep(panel("Lid", bench.ply()).wide("21 1/2 in").deep("11 1/2 in"));
        var floorIn = bench.keep(place(floor));
        var sides = bench.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
        var front = bench.keep(place(wall).inFrontOf(floorIn).flushAt(BOTTOM));
        var back = bench.keep(place(wall).behind(floorIn).flushAt(BOTTOM));
        if (when != Painted.AFTER_THE_LID) {
            bench.keep(coat(insideFaces()).with(paint));
        }
        if (when == Painted.THE_LID_TOO) {
            bench.keep(coat(undersideOf(lid)).with(paint));
        }
        if (when == Painted.THE_LID_MASKED) {
            bench.keep(coat(undersideOf(lid)).with(paint).maskedWhereGlued());
        }
        var lidOn = bench.keep(place(lid).onTopOf(sides).centred());
        bench.keep(fasten(lidOn).to(sides, front, back).glued(glue));
        if (when == Painted.AFTER_THE_LID) {
            bench.keep(coat(insideFaces()).with(paint));
        }
    }

    private static List<Check> of(Plan plan, String rule) {
        return plan.checks().stream().filter(c -> c.name().startsWith(rule)).toList();
    }

    @Test
    void inside_afterTheLid_isOutOfReach() {
        Plan plan = box(Painted.AFTER_THE_LID);
        assertThat(plan.problems()).isEmpty();
        assertThat(of(plan, "Paint in reach")).singleElement().satisfies(check -> {
            assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
            assertThat(check.name()).contains("Floor, upper face", "Side, inside face", "Lid, underside");
            assertThat(check.result()).contains("Lid closes it in");
            assertThat(check.advice()).contains("before Lid is put in place");
        });
    }

    @Test
    void inside_beforeTheLid_leavesOnlyTheLidBare() {
        assertThat(of(box(Painted.BEFORE_THE_LID), "Paint in reach"))
                .singleElement()
                .satisfies(check -> {
                    assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
                    assertThat(check.name()).isEqualTo("Paint in reach: Lid, underside");
                    assertThat(check.result()).contains("no coat comes to it");
                });
    }

    @Test
    void inside_withTheLidsUnderside_isInReach() {
        Plan plan = box(Painted.THE_LID_TOO);
        assertThat(of(plan, "Paint in reach")).singleElement().satisfies(check -> {
            assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(check.result()).contains("Lid, underside");
        });
        assertThat(of(plan, "Glue on bare wood")).singleElement().satisfies(check -> {
            assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
            assertThat(check.advice()).contains("3/4 in wide");
        });
    }

    @Test
    void lid_masked_isBareWhereItIsGlued() {
        Plan plan = box(Painted.THE_LID_MASKED);
        assertThat(of(plan, "Glue on bare wood"))
                .singleElement()
                .extracting(Check::verdict)
                .isEqualTo(Verdict.HOLDS);
        // 21 1/2 x 11 1/2 less the rims of the walls: 20 x 10 stay.
        assertThat(area(plan, "Lid", "underside")).isCloseTo(200, within(1e-6));
        assertThat(area(box(Painted.THE_LID_TOO), "Lid", "underside")).isCloseTo(21.5 * 11.5, within(1e-6));
        assertThat(plan.paintwork().bare())
                .filteredOn(bare -> bare.masked().isEmpty())
                .extracting(bare -> bare.part() + " " + bare.face())
                .containsExactlyInAnyOrder("Side top edge", "Wall top edge");
    }

    @Test
    void faces_addUpToWhatIsBought() {
        Plan plan = box(Painted.THE_LID_MASKED);
        double faces = plan.paintwork().faces().stream()
                .mapToDouble(f -> f.area().value().squareMillimetres() * f.coats())
                .sum();
        double bought = plan.finish().stream()
                .filter(line -> line.what().equals("exterior latex"))
                .mapToDouble(line -> line.need().value().cubicMillimetres())
                .sum();
        // 350 sq ft with a gallon of 231 cu in.
        assertThat(faces / (350 * 144 * 25.4 * 25.4) * 231 * 25.4 * 25.4 * 25.4).isCloseTo(bought, within(1e-3));
        // Floor 20 x 10, sides 10 x 6 twice, walls 20 x 6 twice, the lid 20 x 10.
        assertThat(faces / 645.16).isCloseTo(200 + 120 + 240 + 200, within(1e-6));
    }

    @Test
    void underside_ofAWall_isRefused() {
        Consumer<Bench> said = bench -> {
            box(bench, Painted.BEFORE_THE_LID);
            Part board = bench.keep(
                    panel("Board", bench.ply()).wide("10 in").high("5 in").times(1));
            bench.keep(coat(undersideOf(board)).with(paint("oil")));
        };
        assertThat(Bench.problems(said)).singleElement().asString().contains("Board", "facesOf");
    }

    @Test
    void cabinet_insideBeforeTheRoof_isInReach() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        assertThat(plan.paintwork().order())
                .filteredOn(by -> by.painted().isPresent())
                .isNotEmpty()
                .allSatisfy(by -> assertThat(by.inTime()).isTrue());
    }

    private static double area(Plan plan, String part, String face) {
        return plan.paintwork().faces().stream()
                .filter(f -> f.part().equals(part) && f.face().equals(face))
                .mapToDouble(f -> f.area().value().inSquareInches())
                .sum();
    }

    /** The walls' edges, by hand: the floor is hidden all round, a wall shows its two ends, its top and its foot of 3/4 in. */
    @Test
    void edges_lieOpenWhereNothingCoversThem_andDrinkTwiceAsMuch() {
        Plan before = Bench.plan(bench -> edges(bench, false));
        Plan after = Bench.plan(bench -> edges(bench, true));
        // One wall: 2 · (21 1/2 + 6 3/4) · 3/4 = 42 3/8 sq in; two of them, none covered at an edge.
        assertThat(edgeArea(before, "Wall")).isCloseTo(2 * 42.375, within(1e-3));
        assertThat(edgeArea(before, "Floor")).isCloseTo(0, within(1e-3));
        // The lid lies on the walls' top edges: 21 1/2 of each is covered.
        assertThat(edgeArea(after, "Wall")).isCloseTo(2 * (42.375 - 21.5 * 0.75), within(1e-3));
        // Twice the area at 350 ft² a gallon.
        assertThat(before.finish().get(0).need().value().inGallons())
                .isCloseTo(2 * 2 * 42.375 / 144 / 350, within(1e-6));
        assertThat(before.finish().get(0).need().reason().rule()).contains("area");
    }

    private static double edgeArea(Plan plan, String part) {
        return plan.paintwork().faces().stream()
                .filter(face -> face.part().equals(part) && face.face().equals("edges"))
                .mapToDouble(face -> face.area().value().inSquareInches())
                .sum();
    }

    private static void edges(Bench bench, boolean lidFirst) {
        Paint paint = bench.keep(
                paint("exterior latex").covers("350 sq ft", perGallon()).cans("1 qt"));
        Part floor = bench.keep(panel("Floor", bench.ply()).wide("20 in").deep("10 in"));
        Part side = bench.keep(
                panel("Side", bench.ply()).deep("10 in").high("6 3/4 in").pair());
        Part wall = bench.keep(panel("Wall", bench.ply()).wide("21 1/2 in").high("6 3/4 in"));
        Part lid = bench.keep(panel("Lid", bench.ply()).wide("21 1/2 in").deep("11 1/2 in"));
        var floorIn = bench.keep(place(floor));
        var sides = bench.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
        bench.keep(place(wall).inFrontOf(floorIn).flushAt(BOTTOM));
        bench.keep(place(wall).behind(floorIn).flushAt(BOTTOM));
        if (lidFirst) {
            bench.keep(place(lid).onTopOf(sides).centred());
        }
        bench.keep(coat(edgesOf(wall), edgesOf(floor)).with(paint));
    }
}
