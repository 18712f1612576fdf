package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.testing.Property.forAll;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Chain.Held;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.testing.Draw;

/** How the sizes of a build add up, direction by direction. */
class ChainsTest {
    private static final double MICRON = 1e-3 / 25.4;

    private static Chain chain(Plan plan, Axis axis) {
        return plan.chains().stream().filter(c -> c.axis() == axis).findFirst().orElseThrow();
    }

    private static String words(Plan plan, Axis axis) {
        return chain(plan, axis).words(plan.style());
    }

    @Test
    void cabinet_everyDirection_isPartByPart() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        assertThat(words(plan, Axis.X)).isEqualTo("Side 23/32 + Floor 22 + Side 23/32 = 23 7/16 in outside");
        assertThat(words(plan, Axis.Y)).isEqualTo("Front 23/32 + Floor 11 + Back 23/32 = 12 7/16 in outside");
        // Peak 30.76582, roof t / cos 30 = 0.82994, cap 1/8 / cos 30 = 0.14434 where it is bent: 31.74010.
        assertThat(words(plan, Axis.Z))
                .isEqualTo("Back 30 25/32 light + Roof 27/32 light + Ridge cap 5/32 light = 31 3/4 in light outside");
        assertThat(plan.chains()).filteredOn(c -> c.build() == 0).hasSize(3).allMatch(Chain::closes);
        assertThat(chain(plan, Axis.X).links().get(1).letter()).isEqualTo("A");
    }

    @Test
    void cabinet_itsArms_areABuildOfTheirOwn() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        List<Chain> arms =
                plan.chains().stream().filter(c -> c.first().equals("Post")).toList();
        assertThat(arms).hasSize(3).allMatch(c -> c.build() == 1);
        assertThat(arms.get(0).words(plan.style())).isEqualTo("Seat 20 in outside");
    }

    /** A second way: the height over all from rise and run, at random sizes and thicknesses. */
    @Test
    void cabinet_atRandomSizes_closesAndIsAsHighAsRiseAndRunSay() {
        forAll(
                31,
                40,
                random -> {
                    Cabinet cabinet = new Cabinet();
                    cabinet.width = Draw.sixtyFourths(random, Length.ofInches(18L), Length.ofInches(30L));
                    cabinet.depth = Draw.sixtyFourths(random, Length.ofInches(8L), Length.ofInches(14L));
                    cabinet.slope = Angle.ofDegrees(20 + random.nextInt(26));
                    cabinet.caliper = Length.ofMillimetres(11 + random.nextInt(100) / 10.0)
                            .toString();
                    return cabinet;
                },
                cabinet -> {
                    Plan plan = Planner.plan(cabinet.sketch(), Bench.DAY);
                    double t = Length.parse(cabinet.caliper).inInches();
                    double w = cabinet.width.inInches();
                    double tan = Math.tan(Math.toRadians(cabinet.slope.inDegrees()));
                    double cos = 1 / Math.hypot(1, tan);
                    double peak = cabinet.eaves.inInches() + (w / 2 + t) * tan;
                    assertThat(plan.chains()).allMatch(Chain::closes);
                    assertThat(chain(plan, Axis.X).overall().inInches()).isCloseTo(w + 2 * t, within(MICRON));
                    assertThat(chain(plan, Axis.Y).overall().inInches())
                            .isCloseTo(cabinet.depth.inInches() + 2 * t, within(MICRON));
                    assertThat(chain(plan, Axis.Z).overall().inInches())
                            .isCloseTo(peak + t / cos + 1 / cos / 8, within(MICRON));
                });
    }

    /** A floor between two sides, as wide as a size says, and a back that laps all. */
    private static void box(Bench bench, String floorDeep) {
        Length width = size("Width inside", "20 in");
        Length depth = size("Depth", "10 3/4 in");
        size("Sheet by caliper", "3/4 in");
        Length t = bench.ply().thickness();
        Part floor = bench.keep(panel("Floor", bench.ply()).wide(width).deep(floorDeep));
        Part side = bench.keep(
                panel("Side", bench.ply()).deep(depth.minus(t)).high("18 in").pair());
        Part back = bench.keep(panel("Back", bench.ply()).wide(width.plus(t, t)).high("18 in"));
        var floorIn = bench.keep(place(floor));
        bench.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
        bench.keep(place(back).behind(floorIn).flushAt(BOTTOM));
    }

    @Test
    void held_sizes_areTheWholeOrTheClearBetween() {
        Plan plan = Bench.plan(b -> box(b, "10 in"));
        assertThat(chain(plan, Axis.X).held())
                .containsExactly(new Held("Width inside", Length.ofInches(20L), "between Side and Side"));
        // 10 and the back's 3/4; a caliper is what the sheet is, nothing that is held.
        assertThat(chain(plan, Axis.Y).held()).containsExactly(new Held("Depth", Length.parse("10 3/4 in"), "outside"));
        assertThat(chain(plan, Axis.Z).held()).isEmpty();
        assertThat(chain(plan, Axis.X).heldIn(plan.style())).isEqualTo("Width inside 20 in");
    }

    @Test
    void heldSize_ofOneLink_namesThePart() {
        Plan plan = Bench.plan(b -> {
            Length high = size("Leg", "20 in");
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part leg = b.keep(panel("Leg", b.ply()).deep("10 in").high(high));
            b.keep(place(floor).onTopOf(b.keep(place(leg))));
        });
        assertThat(chain(plan, Axis.Z).held()).containsExactly(new Held("Leg", Length.ofInches(20L), "Leg"));
    }

    /** A cleat and a floor; the side stands 1/64 in past the floor, held by a lid that touches no cleat. */
    private static void gapped(Bench bench) {
        Part floor = bench.keep(panel("Floor", bench.ply()).wide("20 in").deep("10 in"));
        Part cleat = bench.keep(panel("Cleat", bench.ply()).deep("10 in").high("1 in"));
        Part lid = bench.keep(panel("Lid", bench.ply()).wide("20 1/64 in").deep("10 in"));
        Part side = bench.keep(panel("Side", bench.ply()).deep("10 in").high("18 in"));
        var floorIn = bench.keep(place(floor));
        bench.keep(place(cleat).leftOf(floorIn).flushAt(BOTTOM));
        var lidIn = bench.keep(place(lid).above(floorIn, "2 in").flushAt(LEFT));
        bench.keep(place(side).rightOf(lidIn).flushAt(BOTTOM));
    }

    @Test
    void chain_thatEndsTooSoon_namesThePartAndTheAmount() {
        Plan plan = Bench.plan(ChainsTest::gapped);
        Chain chain = chain(plan, Axis.X);
        assertThat(chain.closes()).isFalse();
        assertThat(chain.words(plan.style()))
                .isEqualTo("Cleat 3/4 + Floor 20 = 20 3/4 in, not 21 33/64 in outside: short by 49/64 in");
        Check check = plan.check("Sizes close: left to right, Floor").orElseThrow();
        assertThat(check.verdict()).isEqualTo(Check.Verdict.SHORT);
        assertThat(check.advice())
                .isEqualTo("Nothing touches the far side of Floor. A part 49/64 in longer, or moved, would close it.");
    }
}
