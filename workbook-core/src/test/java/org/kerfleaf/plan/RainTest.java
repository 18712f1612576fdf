package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.*;
import static org.kerfleaf.words.Words.*;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Part;

/** Rain on small builds, each rule with one that trips it and one that holds, a word or a size apart. */
class RainTest {
    private static Plan outdoors(Consumer<Bench> said) {
        return in(true, said);
    }

    private static Plan in(boolean outdoors, Consumer<Bench> said) {
        return Bench.plan(bench -> {
            said.accept(bench);
            bench.keep(outdoors ? site().outdoors() : site().underRoof());
        });
    }

    private static Verdict verdict(Plan plan, String rule) {
        return plan.check(rule).map(Check::verdict).orElseThrow();
    }

    /** A tray of a floor between four walls. @param high of its front */
    private static void tray(Bench bench, String high, boolean drained) {
        Part floor = panel("Floor", bench.ply()).wide("20 in").deep("10 in");
        if (drained) {
            floor = floor.hole("drain", round("1/2 in"));
        }
        var floorIn = bench.keep(place(bench.keep(floor)));
        Part side =
                bench.keep(panel("Side", bench.ply()).deep("10 in").high("6 in").pair());
        Part front = bench.keep(panel("Front", bench.ply()).wide("21 1/2 in").high(high));
        Part back = bench.keep(panel("Back", bench.ply()).wide("21 1/2 in").high("6 in"));
        bench.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
        bench.keep(place(front).inFrontOf(floorIn).flushAt(BOTTOM));
        bench.keep(place(back).behind(floorIn).flushAt(BOTTOM));
    }

    private static void post(Bench bench, boolean capped) {
        var lumber = bench.keep(lumber("4x4").lengths("8 ft"));
        var post = bench.keep(
                place(bench.keep(board("Post", lumber).cutTo("30 in"))).standing());
        if (capped) {
            var cap =
                    bench.keep(moulding("copper cap").section("1/8 in", "5 in").lengths("1 ft"));
            bench.keep(place(bench.keep(board("Cap", cap).cutTo("5 in")))
                    .running(org.kerfleaf.sketch.Way.LEFT_TO_RIGHT)
                    .flat()
                    .onTopOf(post)
                    .centred());
        }
    }

    @Test
    void rain_notSaid_isNotKnown() {
        Plan plan = Bench.plan(bench -> tray(bench, "6 in", true));
        assertThat(plan.rain()).isEmpty();
        assertThat(verdict(plan, "Rain")).isEqualTo(Verdict.NOT_KNOWN);
    }

    @Test
    void rain_underARoof_fallsOnNothing() {
        Plan plan = in(false, bench -> tray(bench, "6 in", false));
        assertThat(plan.rain()).isEmpty();
        assertThat(plan.checks()).noneMatch(c -> c.name().startsWith("Rain"));
    }

    @Test
    void traps_trayWithoutADrain_isShort() {
        assertThat(verdict(outdoors(bench -> tray(bench, "6 in", false)), "Rain in traps"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict(outdoors(bench -> tray(bench, "6 in", true)), "Rain in traps"))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(outdoors(bench -> tray(bench, "3/4 in", false)), "Rain in traps"))
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void ledges_levelFloorOpenInFront_isOne() {
        assertThat(verdict(outdoors(bench -> tray(bench, "3/4 in", false)), "Rain on ledges"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict(outdoors(bench -> tray(bench, "6 in", true)), "Rain on ledges"))
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void edges_topOfAPost_isEndGrainUnlessCapped() {
        Plan bare = outdoors(bench -> post(bench, false));
        assertThat(verdict(bare, "Rain on edges")).isEqualTo(Verdict.SHORT);
        assertThat(bare.rain().orElseThrow().marks()).singleElement().satisfies(mark -> {
            assertThat(mark.title()).isEqualTo("Post, upper face");
            assertThat(mark.words()).startsWith("End grain, level,");
            assertThat(mark.much().orElseThrow().value().inMillimetres())
                    .isCloseTo(Length.parse("3 1/2 in").inMillimetres(), within(1e-6));
        });
        assertThat(verdict(outdoors(bench -> post(bench, true)), "Rain on edges"))
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void seams_ofATray_areCaulkedByTheirName() {
        Consumer<Bench> caulked = bench -> {
            tray(bench, "6 in", true);
            var sealer = bench.keep(caulk("acrylic latex").cartridge("10.1 fl oz"));
            bench.keep(seal(wetSeams()).with(sealer, bead("1/4 in")));
        };
        Plan open = outdoors(bench -> tray(bench, "6 in", true));
        Plan closed = outdoors(caulked);
        assertThat(verdict(open, "Rain in seams")).isEqualTo(Verdict.SHORT);
        assertThat(verdict(closed, "Rain in seams")).isEqualTo(Verdict.HOLDS);
        double marked = open.rain().orElseThrow().of(RainMark.Kind.SEAM).stream()
                .mapToDouble(m -> m.much().orElseThrow().value().inMillimetres())
                .sum();
        assertThat(((Length) closed.finish().get(0).extent().value()).inMillimetres())
                .isCloseTo(marked, within(0.01));
        // Inside, the floor meets all four walls and the walls meet in four corners, 5 1/4 in high; on top the corners
        // go on over
        // 3/4 in; outside, the sides' ends lie between front and back: 6 in down at each of four, and the floor's seam
        // is below.
        double inches = marked / 25.4;
        assertThat(inches).isCloseTo(2 * 20 + 2 * 10 + 4 * 5.25 + 4 * 0.75 + 4 * 6, within(0.01));
    }

    @Test
    void drips_levelLid_wantsAGroove() {
        assertThat(verdict(outdoors(bench -> lid(bench, false)), "Rain under edges"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict(outdoors(bench -> lid(bench, true)), "Rain under edges"))
                .isEqualTo(Verdict.HOLDS);
    }

    /** A lid that reaches 2 in past a wall in front and behind, with grooves near both edges or without. */
    private static void lid(Bench bench, boolean grooved) {
        Part wall = bench.keep(panel("Wall", bench.ply()).wide("20 in").deep("10 in"));
        Part lid = panel("Lid", bench.ply()).wide("20 in").deep("14 in");
        if (grooved) {
            lid = lid.groove("front drip", OUTSIDE, from(FRONT, "1/2 in"), wide("1/8 in"), deep("1/8 in"))
                    .groove("back drip", OUTSIDE, from(BACK, "1/2 in"), wide("1/8 in"), deep("1/8 in"));
        }
        var wallIn = bench.keep(place(wall));
        bench.keep(place(bench.keep(lid)).onTopOf(wallIn).centred());
    }

    @Test
    void cap_overTheRidge_isOnePiece() {
        Rain rain = Planner.plan(new Cabinet().sketch(), Bench.DAY).rain().orElseThrow();
        assertThat(rain.marks()).noneMatch(m -> m.parts().contains("Ridge cap"));
        assertThat(rain.of(RainMark.Kind.TRAP)).isEmpty();
        assertThat(rain.of(RainMark.Kind.LEDGE)).isEmpty();
    }

    @Test
    void seams_glued_areClosedIfTheGlueStandsWater() {
        Plan closed = outdoors(bench -> glued(bench, "exterior PVA"));
        Plan open = outdoors(bench -> glued(bench, "white glue"));
        assertThat(verdict(closed, "Rain in seams")).isEqualTo(Verdict.HOLDS);
        assertThat(verdict(open, "Rain in seams")).isEqualTo(Verdict.SHORT);
    }

    private static void glued(Bench bench, String name) {
        Part left = bench.keep(panel("Left", bench.ply()).wide("20 in").deep("10 in"));
        Part right = bench.keep(panel("Right", bench.ply()).wide("20 in").deep("10 in"));
        var leftIn = bench.keep(place(left));
        var rightIn = bench.keep(place(right).rightOf(leftIn));
        bench.keep(fasten(rightIn).to(leftIn).glued(bench.keep(woodGlue(name))));
    }
}
