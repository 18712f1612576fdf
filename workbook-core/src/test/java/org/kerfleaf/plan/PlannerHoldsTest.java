package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.testing.Property.forAll;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.testing.Draw;

/** Whatever is left out of a sketch, and however odd its sizes: there is a plan, and what is wrong is a problem. */
class PlannerHoldsTest {
    @Test
    void plan_withThingsLeftOut_neverFails() {
        Sketch whole = new Cabinet().sketch();
        forAll(
                21,
                150,
                random -> Draw.listOf(
                        random, 1, 8, r -> r.nextInt(whole.declared().size())),
                dropped -> {
                    List<Declaration> left = new ArrayList<>();
                    for (int i = 0; i < whole.declared().size(); i++) {
                        if (!dropped.contains(i)) {
                            left.add(whole.declared().get(i));
                        }
                    }
                    assertThat(Planner.plan(new Sketch(whole.title(), whole.steps(), left), Bench.DAY)
                                    .title())
                            .isEqualTo(whole.title());
                });
    }

    private record Odd(Length w, Length d, Length e, double slope, Length past, Length doorW, Length doorH, String t) {}

    @Test
    void plan_atOddSizes_neverFails() {
        forAll(22, 150, PlannerHoldsTest::odd, odd -> {
            Cabinet cabinet = new Cabinet();
            cabinet.width = odd.w;
            cabinet.depth = odd.d;
            cabinet.eaves = odd.e;
            cabinet.slope = Angle.ofDegrees(odd.slope);
            cabinet.overhang = odd.past;
            cabinet.doorWide = odd.doorW;
            cabinet.doorHigh = odd.doorH;
            cabinet.caliper = odd.t;
            assertThat(Planner.plan(cabinet.sketch(), Bench.DAY).steps()).hasSize(9);
        });
    }

    private static Odd odd(RandomGenerator random) {
        return new Odd(
                inches(random, 1, 120),
                inches(random, 1, 60),
                inches(random, 1, 120),
                random.nextDouble(-10, 89),
                inches(random, 0, 30),
                inches(random, 0, 90),
                inches(random, 0, 90),
                Draw.oneOf(random, "1/16 in", "23/32 in", "4 in"));
    }

    private static Length inches(RandomGenerator random, long least, long most) {
        return Draw.sixtyFourths(random, Length.ofInches(least), Length.ofInches(most));
    }
}
