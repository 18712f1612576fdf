package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.kerfleaf.sketch.Side.*;
import static org.kerfleaf.words.Words.*;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Loads.Contained;
import org.kerfleaf.plan.Loads.Room;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Contents;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.SketchException;

/** A case 20 in wide, 10 in deep inside, a shelf of 8 in against its back, 6 in clear over its floor and 9 in over the shelf. */
class StoringTest {
    private static Plan plan(UnaryOperator<Contents> said) {
        return Bench.plan(bench -> {
            Part floor = bench.keep(panel("Floor", bench.ply()).wide("20 in").deep("10 in"));
            Part shelf = bench.keep(panel("Shelf", bench.ply()).wide("20 in").deep("8 in"));
            Part side = bench.keep(
                    panel("Side", bench.ply()).deep("10 in").high("17 1/4 in").pair());
            Part back = bench.keep(panel("Back", bench.ply()).wide("21 1/2 in").high("17 1/4 in"));
            Part front =
                    bench.keep(panel("Front", bench.ply()).wide("21 1/2 in").high("17 1/4 in"));
            Part lid = bench.keep(panel("Lid", bench.ply()).wide("21 1/2 in").deep("11 1/2 in"));
            Placing floorIn = bench.keep(place(floor));
            Placing sidesIn = bench.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            Placing backIn = bench.keep(place(back).behind(floorIn).flushAt(BOTTOM));
            Placing frontIn = bench.keep(place(front).inFrontOf(floorIn).flushAt(BOTTOM));
            Placing shelfIn = bench.keep(place(shelf).above(floorIn, "6 in").against(backIn));
            bench.keep(place(lid).onTopOf(sidesIn));
            Contents things = bench.keep(said.apply(contents("Box")));
            bench.keep(carries(shelfIn, things).between(sidesIn));
        });
    }

    private static Contents box(Contents things, String wide, String deep, String high) {
        return things.wide(wide).deep(deep).high(high).weighs("2 lb");
    }

    private static Check room(Plan plan, String way) {
        return plan.check("Room for what goes in: Box on Shelf, " + way).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "wide, 9 in, 7 in, 7 in, holds",
        "wide, 9 1/32 in, 7 in, 7 in, short",
        "deep, 9 in, 8 in, 7 in, holds",
        "deep, 9 in, 8 1/32 in, 7 in, short",
        "high, 9 in, 7 in, 7 3/4 in, holds",
        "high, 9 in, 7 in, 7 25/32 in, short"
    })
    void room_turnsWhereHandAndThingsFillTheInside(String way, String wide, String deep, String high, String verdict) {
        Plan plan = plan(things -> box(things, wide, deep, high).times(2));

        assertThat(room(plan, way).verdict().word()).isEqualTo(verdict);
        if (verdict.equals("short")) {
            assertThat(room(plan, way).advice()).startsWith("They no longer fit.");
        }
    }

    @Test
    void rooms_sayWhatIsNeededAndWhatIsThere() {
        Contained boxes = plan(things -> box(things, "4 in", "3 in", "5 in")
                        .times(4)
                        .sideBySide(2)
                        .handRoom("1 in"))
                .loads()
                .contents()
                .get(0);

        assertThat(boxes.each()).isEqualTo(4);
        assertThat(boxes.rooms()).extracting(Room::way).containsExactly("wide", "deep", "high");
        assertThat(boxes.rooms())
                .extracting(room -> room.need().value())
                .containsExactly(Length.ofInches(9), Length.ofInches(7), Length.ofInches(6));
        assertThat(boxes.rooms())
                .extracting(room -> room.there().orElseThrow().value())
                .containsExactly(Length.ofInches(20), Length.ofInches(10), Length.ofInches(9.75));
    }

    @Test
    void load_isWhatAllTheThingsWeigh() {
        Plan plan = plan(things -> box(things, "4 in", "3 in", "5 in").times(3));

        assertThat(plan.loads().carried().get(0).load().value().inPounds())
                .isCloseTo(6, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(plan.loads().carried().get(0).load().reason().rule()).contains("what stands on it");
    }

    @Test
    void whatWasNotSaid_isNotKnown() {
        Plan withoutWeight = plan(things -> things.wide("4 in").deep("3 in").high("5 in"));
        assertThat(withoutWeight.loads().carried()).isEmpty();
        assertThat(withoutWeight.check("Sag: Shelf").orElseThrow().verdict()).isEqualTo(Verdict.NOT_KNOWN);

        Plan withoutDepth = plan(things -> things.wide("4 in").high("5 in").weighs("1 lb"));
        Check missing =
                withoutDepth.check("Room for what goes in: Box on Shelf").orElseThrow();
        assertThat(missing.verdict()).isEqualTo(Verdict.NOT_KNOWN);

        Plan nowhere = Bench.plan(bench -> bench.keep(contents("Box").wide("4 in")));
        assertThat(nowhere.check("Room for what goes in: Box").orElseThrow().advice())
                .contains("carries(shelfIn");
    }

    /** A shelf by itself: nothing stands beside it or above, so its edges count and upward it is open. */
    @Test
    void room_onAShelfInTheOpen_endsAtItsEdges() {
        Plan plan = Bench.plan(bench -> {
            Part shelf = bench.keep(panel("Shelf", bench.ply()).wide("20 in").deep("8 in"));
            Placing shelfIn = bench.keep(place(shelf));
            bench.keep(carries(shelfIn, bench.keep(box(contents("Box"), "18 in", "6 1/16 in", "30 in"))));
        });

        assertThat(room(plan, "wide").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(room(plan, "deep").verdict()).isEqualTo(Verdict.SHORT);
        assertThat(room(plan, "high").result()).contains("open that way");
    }

    @Test
    void words_thatMakeNoSense_sayWhatWould() {
        assertThatThrownBy(() -> plan(things -> things.times(0)))
                .isInstanceOf(SketchException.class)
                .hasMessageContaining("1 or more");
        assertThatThrownBy(() -> plan(things -> things.sideBySide(-1))).hasMessageContaining("1 or more");
        assertThatThrownBy(() -> Bench.plan(bench -> {
                    Part shelf =
                            bench.keep(panel("Shelf", bench.ply()).wide("20 in").deep("8 in"));
                    bench.keep(carries(bench.keep(place(shelf))));
                }))
                .hasMessageContaining("carries nothing");
    }
}
