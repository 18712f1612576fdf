package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.sketch.Side.*;
import static org.kerfleaf.words.Words.*;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;

/** A box of six panels out of doors, with and without holes. */
class AiringTest {

    @Test
    void box_withAWeepAndAVent_holds() {
        Check check = wayOut(true, true, true, true).orElseThrow();

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result()).contains("Floor, weep", "Back, vent");
    }

    @Test
    void box_withoutOneOfThem_saysWhereItBelongs() {
        assertThat(wayOut(false, true, true, true).orElseThrow().advice()).contains("through Floor");
        assertThat(wayOut(true, false, true, true).orElseThrow().advice()).contains("vents");
    }

    @Test
    void box_withoutALid_isNotClosed() {
        assertThat(wayOut(false, false, false, true)).isEmpty();
    }

    @Test
    void box_underARoof_isNotAsked() {
        assertThat(wayOut(false, false, true, false)).isEmpty();
    }

    /** A hole that wood closes is no way out: the floor stands on a plate without one. */
    @Test
    void weep_thatWoodCloses_doesNotCount() {
        Plan plan = plan(true, true, true, true, true);

        assertThat(find(plan).orElseThrow().result()).contains("Open low: nothing");
    }

    private static Optional<Check> wayOut(boolean weep, boolean vent, boolean lid, boolean outdoors) {
        return find(plan(weep, vent, lid, outdoors, false));
    }

    private static Optional<Check> find(Plan plan) {
        assertThat(plan.problems()).isEmpty();
        return plan.checks().stream()
                .filter(c -> c.name().startsWith("Way out for damp"))
                .findFirst();
    }

    private static Plan plan(boolean weep, boolean vent, boolean lid, boolean outdoors, boolean plate) {
        return Bench.plan(b -> {
            Part bare = panel("Floor", b.ply()).wide("20 in").deep("12 in");
            Part floor = b.keep(
                    weep ? bare.hole("weep", round("3/8 in").from(LEFT, "4 in").from(FRONT, "2 in")) : bare);
            Part side = b.keep(panel("Side", b.ply()).deep("12 in").high("20 in"));
            Part wall = panel("Back", b.ply()).wide("21 1/2 in").high("20 in");
            Part back = b.keep(vent ? wall.hole("vent", round("1 in").up("17 in")) : wall);
            Part front = b.keep(panel("Front", b.ply()).wide("21 1/2 in").high("20 in"));
            Placing floorIn = b.keep(place(floor));
            Placing sidesIn = b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            b.keep(place(back).behind(floorIn).flushAt(BOTTOM));
            b.keep(place(front).inFrontOf(floorIn).flushAt(BOTTOM));
            if (lid) {
                b.keep(place(b.keep(panel("Lid", b.ply()).wide("24 in").deep("16 in")))
                        .onTopOf(sidesIn)
                        .centred());
            }
            if (plate) {
                b.keep(place(b.keep(panel("Plate", b.ply()).wide("20 in").deep("12 in")))
                        .under(floorIn));
            }
            b.keep(outdoors ? site().outdoors() : site().underRoof());
        });
    }
}
