package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.*;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;

/** A door that stands between its sides, 1/8 in from each, of a sheet or of one wide board of eastern white pine. */
class DoorEdgesTest {

    @Test
    void sheet_insideItsSides_tellsItsGapsAndSwellsNothing() {
        HungDoor door = plan(false, "", true).doors().hung().get(0);

        assertThat(door.edges()).allMatch(HungDoor.DoorEdge::inset);
        assertThat(door.edges().stream().map(HungDoor.DoorEdge::side))
                .containsExactlyInAnyOrder("left", "right", "bottom");
        assertThat(door.edges())
                .allSatisfy(e -> assertThat(e.size().value().inInches()).isCloseTo(0.125, within(1e-6)));
        HungDoor.Room room = door.room().orElseThrow();
        assertThat(room.film().value().inInches()).isEqualTo(1 / 32.0);
        assertThat(room.swelling().orElseThrow().value().isZero()).isTrue();
        assertThat(room.left().orElseThrow().value().inInches()).isCloseTo(3 / 32.0, within(1e-6));
        assertThat(door.under().orElseThrow().part()).isEqualTo("Floor");
        assertThat(door.under().orElseThrow().clear().value().inInches()).isCloseTo(0.125, within(1e-6));
    }

    /** 19 3/4 in · 0.00212 · 1 % = 0.0419 of 1/8 leaves 0.0831; 2 % leaves 0.0413, less than 1/16. Without paint. */
    @ParameterizedTest
    @CsvSource({"12 %, HOLDS", "11 %, SHORT", "'', NOT_KNOWN"})
    void board_swellsIntoItsGap(String now, Verdict verdict) {
        Plan plan = plan(true, now, false);

        Check check = plan.checks().stream()
                .filter(c -> c.name().startsWith("Door gap"))
                .findFirst()
                .orElseThrow();
        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(plan.doors().hung().get(0).room().orElseThrow().left().isPresent())
                .isEqualTo(verdict != Verdict.NOT_KNOWN);
    }

    @Test
    void overlay_tellsHowFarItLapsItsOpening() {
        Plan plan = Bench.plan(b -> {
            Part front = b.keep(panel("Front", b.ply())
                    .wide("20 in")
                    .high("24 in")
                    .opening(
                            "doorway",
                            rectangle(length("12 in"), length("14 in")).up("4 in")));
            Part door = b.keep(panel("Door", b.ply()).laps(front.opening("doorway"), "1/2 in"));
            Placing frontIn = b.keep(place(front));
            Placing doorIn = b.keep(place(door).inFrontOf(frontIn).over("doorway"));
            b.keep(fit(hinge("overlay")).times(2).at(doorIn, LEFT));
        });

        HungDoor hung = plan.doors().hung().get(0);
        assertThat(hung.room()).isEmpty();
        assertThat(hung.edges()).hasSize(4).allSatisfy(edge -> {
            assertThat(edge.inset()).isFalse();
            assertThat(edge.size().value().inInches()).isCloseTo(0.5, within(1e-6));
        });
        // 15 in high, hinges 2 1/2 in from either end; the door begins 3 1/2 in up the front.
        assertThat(hinges(plan, "Door", "middle of hinge")).containsExactlyInAnyOrder(2.5, 12.5);
        assertThat(hinges(plan, "Front", "hinge of Door")).containsExactlyInAnyOrder(6.0, 16.0);
    }

    /** How far up a part the lines of those words are marked, in inches. */
    private static List<Double> hinges(Plan plan, String part, String words) {
        return plan.markings().stream()
                .filter(m -> m.part().equals(part))
                .flatMap(m -> m.guides().stream())
                .filter(g -> g.words().equals(words))
                .map(g -> Math.round(g.from().y() / 25.4 * 1e6) / 1e6)
                .toList();
    }

    private static Plan plan(boolean ofBoard, String now, boolean painted) {
        Plan plan = Bench.plan(b -> {
            Lumber pine = lumber("wide board")
                    .section("3/4 in", "19 3/4 in")
                    .species("eastern white pine")
                    .flatSawn()
                    .lengths("8 ft");
            Lumber board = b.keep(now.isEmpty() ? pine : pine.moisture(now));
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part side = b.keep(panel("Side", b.ply()).deep("10 in").high("20 in"));
            Part door = b.keep(
                    ofBoard
                            ? board("Door", board).cutTo("18 in")
                            : panel("Door", b.ply()).wide("19 3/4 in").high("18 in"));
            Placing floorIn = b.keep(place(floor));
            b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            Placing at = ofBoard ? place(door).standing() : place(door);
            Placing doorIn = b.keep(at.above(floorIn, "1/8 in").flushAt(FRONT));
            b.keep(fit(hinge("butt")).times(2).at(doorIn, LEFT));
            b.keep(site().woodBetween("8 %", "13 %"));
            if (painted) {
                b.keep(coat(facesOf(door)).with(paint("exterior latex")));
            }
        });
        assertThat(plan.problems()).isEmpty();
        return plan;
    }
}
