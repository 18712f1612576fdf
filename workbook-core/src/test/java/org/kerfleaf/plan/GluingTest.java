package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.words.Words.*;

import java.time.Duration;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Joint;

/** Two sides of 3/4 in ply, 12 in deep, glued to the ends of a floor: 9 sq in of contact each. */
class GluingTest {
    private static Plan box(UnaryOperator<Glue> bottle, UnaryOperator<Joint> more, boolean paintedFirst) {
        return Bench.plan(b -> {
            var floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("12 in"));
            var side = b.keep(panel("Side", b.ply()).deep("12 in").high("16 in").pair());
            var floorIn = b.keep(place(floor));
            var sidesIn = b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            if (paintedFirst) {
                b.keep(coat(facesOf(side)).with(paint("primer")));
            }
            b.keep(more.apply(fasten(sidesIn).to(floorIn).glued(bottle.apply(woodGlue("exterior PVA")))));
            if (!paintedFirst) {
                b.keep(coat(facesOf(side)).with(paint("primer")));
            }
        });
    }

    private static Verdict verdict(Plan plan, String rule) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith(rule))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    /** 18 sq in = 0.011613 m²: at 5 m² a litre 2.32 ml or 2.55 g; one side 7 s to spread, and 2 clamps or 3 screws. */
    @Test
    void glued_areaGramsAndClamps_areAsWorkedOutByHand() {
        Plan plan = box(g -> g.covers("5 m2", perLitre()), j -> j, false);
        GluedJoint joint = plan.fastening().glued().get(0);
        assertThat(joint.area().value().inSquareMetres()).isCloseTo(0.01161288, within(1e-8));
        assertThat(joint.grams().value().grams()).isCloseTo(0.01161288 / 5 * 1100, within(1e-6));
        assertThat(joint.clamps().value()).isEqualTo(4);
        assertThat(joint.closing().value()).isEqualTo(Duration.ofSeconds(7 + 60));
    }

    @Test
    void glued_andScrewed_wantsNoClamps() {
        Plan plan = box(g -> g, j -> j.screwed(woodScrew(6, "1 5/8 in"), every("5 in")), false);
        GluedJoint joint = plan.fastening().glued().get(0);
        assertThat(joint.clamps().value()).isZero();
        assertThat(joint.closing().value()).as("3 screws in each side").isEqualTo(Duration.ofSeconds(7 + 90));
        assertThat(joint.grams().reason().source()).contains("from memory");
    }

    @Test
    void glueTime_dependsOnHowLongItStaysOpen() {
        assertThat(verdict(box(g -> g.openFor("2 min"), j -> j, false), "Glue time"))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(box(g -> g.openFor("1 min"), j -> j, false), "Glue time"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict(box(g -> g, j -> j, false), "Glue time")).isEqualTo(Verdict.NOT_KNOWN);
    }

    @Test
    void glueOnPaint_isShort_paintedAfterHolds() {
        assertThat(verdict(box(g -> g, j -> j, true), "Glue on bare wood")).isEqualTo(Verdict.SHORT);
        assertThat(verdict(box(g -> g, j -> j, false), "Glue on bare wood")).isEqualTo(Verdict.HOLDS);
    }

    // ---- a screw from the drawer --------------------------------------------------------------------------------

    @Test
    void drawer_theChosenScrewIsWhatIsBought() {
        Plan plan = box(
                g -> g,
                j -> j.screwedFrom(drawer(woodScrew(6, "1 1/4 in"), woodScrew(6, "1 5/8 in")), every("5 in")),
                false);
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.hardware()).singleElement().satisfies(line -> {
            assertThat(line.what()).isEqualTo("wood screw No. 6 x 1 5/8 in");
            assertThat(line.need().value()).isEqualTo(6);
        });
        assertThat(verdict(plan, "Screw from the drawer")).isEqualTo(Verdict.HOLDS);
        assertThat(plan.fastening().choices()).hasSize(1);
    }

    @Test
    void drawer_noneSuits_saysWhichWould() {
        Plan plan = box(g -> g, j -> j.screwedFrom(drawer(woodScrew(6, "1 1/4 in")), every("5 in")), false);
        assertThat(plan.problems()).isEmpty();
        assertThat(verdict(plan, "Screw from the drawer")).isEqualTo(Verdict.SHORT);
        assertThat(plan.check("Screw from the drawer: Side to Floor")
                        .orElseThrow()
                        .result())
                .contains("though none suits. Not No. 6 x 1 1/4 in: reaches 9/16 in; 6 D are 53/64 in.")
                .contains("A No. 6 x 1 5/8 in would suit.");
    }
}
