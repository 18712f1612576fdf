package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.sketch.Side.BACK;
import static org.kerfleaf.sketch.Side.TOP;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.OpeningOf;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;

/** What the planner says when a sketch does not make sense; the rest of it is planned all the same. */
class PlannerProblemsTest {
    @Test
    void fasten_partsThatDoNotTouch_namesBothTheGapAndTheAxis() {
        List<String> problems = Bench.problems(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part shelf = b.keep(panel("Shelf", b.ply()).wide("20 in").deep("10 in"));
            Placing floorIn = b.keep(place(floor));
            Placing shelfIn = b.keep(place(shelf).above(floorIn, "8 1/4 in"));
            b.keep(fasten(shelfIn).to(floorIn).screwed(woodScrew(8, "2 in"), every("5 in")));
        });
        assertThat(problems)
                .containsExactly("Shelf and Floor are fastened but do not touch: 8 1/4 in apart, up and down.");
    }

    @Test
    void fasten_partsInOnePlace_saysHowMuchOfBoth() {
        List<String> problems = Bench.problems(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part block = b.keep(panel("Block", b.ply()).wide("6 in").deep("4 in"));
            Placing floorIn = b.keep(place(floor));
            Placing underIn = b.keep(place(block).under(floorIn));
            Placing blockIn = b.keep(place(block).onTopOf(underIn));
            b.keep(fasten(blockIn).to(floorIn).screwed(woodScrew(8, "2 in"), every("5 in")));
        });
        assertThat(problems).containsExactly("Block and Floor are in one place: 6 × 4 × 3/4 in of both.");
    }

    @Test
    void place_wordsThatDisagree_saysByHowMuch() {
        List<String> problems = Bench.problems(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part back = b.keep(panel("Back", b.ply()).wide("20 in").high("10 in"));
            Placing floorIn = b.keep(place(floor));
            b.keep(place(back).behind(floorIn).flushAt(BACK));
        });
        assertThat(problems).containsExactly("Back: “behind” and “flush at back” disagree by 3/4 in front to back.");
    }

    @Test
    void check_twoPartsInOnePlace_isShortAndSaysTheOverlap() {
        Plan plan = Bench.plan(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part block = b.keep(panel("Block", b.ply()).wide("6 in").deep("4 in"));
            Placing floorIn = b.keep(place(floor));
            Placing underIn = b.keep(place(block).under(floorIn));
            b.keep(place(block).onTopOf(underIn));
        });
        assertThat(plan.check("One place, one part").orElseThrow().result())
                .isEqualTo("Floor and Block are in one place: 6 × 4 × 3/4 in of both.");
    }

    @Test
    void laps_openingThatIsNotThere_saysWhatToWrite() {
        List<String> problems = Bench.problems(b -> {
            Part front = b.keep(panel("Front", b.ply()).wide("20 in").high("20 in"));
            b.keep(panel("Door", b.ply()).laps(front.opening("doorway"), "1 in"));
        });
        assertThat(problems)
                .containsExactly(
                        "“Front” has no opening “doorway”. Say .opening(\"doorway\", rectangle(...)) where it is made.");
    }

    @Test
    void opening_largerThanItsPart_showsBothSizes() {
        List<String> problems = Bench.problems(b -> b.keep(panel("Front", b.ply())
                .wide("20 in")
                .high("20 in")
                .opening("doorway", rectangle(Length.parse("22 in"), Length.parse("10 in")))));
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0)).contains("“doorway” of “Front” is 22 in by 10 in", "within its 20 in by 20 in");
    }

    @Test
    void panel_oneSizeOnly_saysWhichTwoMakeItStand() {
        List<String> problems =
                Bench.problems(b -> b.keep(panel("Front", b.ply()).wide("20 in")));
        assertThat(problems)
                .containsExactly(
                        "“Front” needs two sizes: wide and deep to lie flat, wide and high to face front, deep and high to face a side.");
    }

    @Test
    void bevelledTop_withoutAFace_asksWhichFaceWasMeasured() {
        List<String> problems = Bench.problems(
                b -> b.keep(panel("Side", b.ply()).deep("10 in").high("20 in").topRisesInward(Angle.ofDegrees(30))));
        assertThat(problems)
                .containsExactly(
                        "“Side” has a bevelled top, so its two faces differ in height. Say .sizedOn(OUTSIDE) or .sizedOn(INSIDE).");
    }

    @Test
    void sizes_thatGoRound_nameTheRing() {
        List<String> problems = Bench.problems(b -> {
            Part a = b.keep(
                    panel("A", b.ply()).laps(new OpeningOf("B", "hole"), "1 in").opening("hole", frame("1 in")));
            b.keep(panel("B", b.ply()).laps(a.opening("hole"), "1 in").opening("hole", frame("1 in")));
        });
        assertThat(problems).anyMatch(p -> p.startsWith("Sizes go round in a ring: A takes from B takes from A."));
    }

    @Test
    void part_largerThanTheSheet_showsBothAndTheRestIsPlanned() {
        Plan plan = Bench.plan(b -> {
            b.keep(panel("Roof", b.ply()).wide("60 in").deep("97 in"));
            b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
        });
        assertThat(plan.problems()).hasSize(1);
        assertThat(plan.problems().get(0).words()).contains("Roof is ").contains("plywood");
        assertThat(plan.parts()).extracting(PlannedPart::name).containsExactly("Roof", "Floor");
    }

    @Test
    void board_ofUnknownSection_asksForIt() {
        List<String> problems = Bench.problems(b -> {
            var bar = b.keep(moulding("angle bar").lengths("6 ft"));
            b.keep(board("Bar", bar).cutTo("20 in"));
        });
        assertThat(problems)
                .containsExactly(
                        "The section of “angle bar” is not known. Say it: .section(\"3/4 in\", \"3 1/2 in\"), thickness first.");
    }

    @Test
    void pane_ofUnknownMaterial_isNotKnownRatherThanGuessed() {
        List<String> problems = Bench.problems(b -> {
            var clear = b.keep(sheet("clear stuff", "18 in", "24 in").soldAs("1/8 in"));
            b.keep(pane("Pane", clear)
                    .fitsFrame(Length.parse("10 in"), Length.parse("12 in"), wide("1/2 in"), deep("1/4 in"))
                    .warmer("60 F"));
        });
        assertThat(problems)
                .containsExactly(
                        "How much “clear stuff” grows with warmth is not known. Name its sheet acrylic, polycarbonate or glass.");
    }

    @Test
    void part_saidOftenerThanPlaced_saysBothNumbers() {
        List<String> problems = Bench.problems(b -> {
            Part floor =
                    b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in").times(3));
            b.keep(place(floor));
        });
        assertThat(problems)
                .containsExactly(
                        "“Floor” is said 3 times but used 1 times. What is placed is counted; leave .times(3) away.");
    }

    @Test
    void gather_partPlacedButKeptNowhere_isPointedOut() {
        var gathered = Bench.gathered(
                b -> b.keep(place(panel("Floor", b.ply()).wide("20 in").deep("10 in"))));
        assertThat(gathered.problems())
                .extracting(p -> p.words())
                .containsExactly(
                        "“Floor” is placed but kept nowhere. Write: Part name = panel(...), then place(name).");
    }

    @Test
    void gather_oneNameTwice_pointsAtBoth() {
        var gathered = Bench.gathered(b -> {
            b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            b.keep(panel("Floor", b.ply()).wide("21 in").deep("10 in"));
        });
        assertThat(gathered.problems())
                .extracting(p -> p.words())
                .containsExactly("“Floor” is made twice: here and in line 0. One name, one thing.");
    }

    @Test
    void place_sideOfNothing_isSaid() {
        List<String> problems = Bench.problems(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            b.keep(place(floor).flushAt(TOP));
        });
        assertThat(problems)
                .containsExactly(
                        "“Floor” is flush or in the middle, but of what? Name a part first: .behind(floorIn).");
    }
}
