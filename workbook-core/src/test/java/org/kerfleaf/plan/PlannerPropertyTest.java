package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.time.LocalDate;
import java.util.random.RandomGenerator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.testing.Draw;

/**
 * The cabinet's figures at random sizes against a second derivation: plain decimal inches, rises and runs instead of the
 * planner's exact lengths and angles, areas put together face by face instead of by boxes and contacts.
 */
class PlannerPropertyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 12);
    private static final Offset<Double> A_MICRON = within(1e-3 / 25.4);

    /** The sizes of one case, in inches. */
    private record Case(
            double w, double d, double e, double run, double rise, double past, double doorW, double doorH, double t) {
        double half() {
            return w / 2 + t;
        }

        /** Rise over run. */
        double pitch() {
            return rise / run;
        }

        double peak() {
            return e + half() * pitch();
        }

        double gable() {
            return 2 * half() * e + half() * half() * pitch();
        }

        double roofUnder() {
            return Math.hypot(half(), half() * pitch()) + past;
        }

        double roofUpper() {
            return roofUnder() + t * pitch();
        }

        Cabinet cabinet() {
            Cabinet cabinet = new Cabinet();
            cabinet.width = Length.ofInches(w);
            cabinet.depth = Length.ofInches(d);
            cabinet.eaves = Length.ofInches(e);
            cabinet.slope = Length.ofInches(rise).over(Length.ofInches(run));
            cabinet.overhang = Length.ofInches(past);
            cabinet.doorWide = Length.ofInches(doorW);
            cabinet.doorHigh = Length.ofInches(doorH);
            cabinet.caliper = Length.ofInches(t).toString();
            return cabinet;
        }
    }

    private static Case draw(RandomGenerator random) {
        double w = inches(random, 16, 30);
        double e = inches(random, 20, 30);
        double t = Draw.oneOf(random, 15, 19, 23, 24) / 32.0;
        return new Case(
                w,
                inches(random, 8, 14),
                e,
                12,
                inches(random, 5, 12),
                inches(random, 1, 4),
                inches(random, 12, w - 2),
                inches(random, 12, e - 6),
                t);
    }

    private static double inches(RandomGenerator random, double least, double most) {
        return Draw.sixtyFourths(random, Length.ofInches(least), Length.ofInches(most))
                .inInches();
    }

    private static Plan plan(Case c) {
        Plan plan = Planner.plan(c.cabinet().sketch(), DAY);
        assertThat(plan.problems()).isEmpty();
        return plan;
    }

    private static void size(Plan plan, String name, double length, double width) {
        PlannedPart part = plan.part(name).orElseThrow();
        assertThat(part.length().value().inInches())
                .as("%s along the grain", name)
                .isCloseTo(length, A_MICRON);
        assertThat(part.width().value().inInches())
                .as("%s across the grain", name)
                .isCloseTo(width, A_MICRON);
    }

    @Test
    void parts_atRandomSizes_agreeWithRiseAndRun() {
        forAll(11, 60, PlannerPropertyTest::draw, c -> {
            Plan plan = plan(c);
            size(plan, "Floor", Math.max(c.w, c.d), Math.min(c.w, c.d));
            size(plan, "Side", c.e + c.t * c.pitch(), c.d);
            size(plan, "Back", c.peak(), 2 * c.half());
            size(plan, "Front", c.peak(), 2 * c.half());
            size(plan, "Door", c.doorH + 2, c.doorW + 2);
            double roofDeep = c.d + 2 * c.t + 2 * c.past;
            size(plan, "Roof", Math.max(roofDeep, c.roofUpper()), Math.min(roofDeep, c.roofUpper()));
            size(plan, "Rake trim", c.roofUpper(), 1.5);
            size(plan, "Eave trim", roofDeep + 1.5, 1.5);
            size(plan, "Ridge cap", roofDeep + 1.5, 4);
            PlannedPart.PlannedEdge mitre =
                    plan.part("Rake trim").orElseThrow().edges().get(0);
            assertThat(mitre.shorter().value().inInches()).isCloseTo(1.5 * c.pitch(), A_MICRON);
        });
    }

    @Test
    void pane_atRandomSizes_isTheLargestThatStillFitsWhenWarm() {
        forAll(12, 60, PlannerPropertyTest::draw, c -> {
            PlannedPart pane = plan(c).part("Pane").orElseThrow();
            double[] pocket = {c.doorW + 2 - 5 + 1, c.doorH + 2 - 5 + 1};
            double longer = Math.max(pocket[0], pocket[1]);
            double cut = pane.length().value().inInches();
            // Cast acrylic grows 4.0e-5 for each °F (makers' glazing guides, facts of the trade); 60 °F make 0.0024.
            assertThat(cut * 1.0024).isLessThanOrEqualTo(longer + 1e-9);
            assertThat((cut + 1 / 32.0) * 1.0024).isGreaterThan(longer - 1e-9);
        });
    }

    @Test
    void screws_atRandomSizes_areTheFewestThatKeepTheSpacing() {
        forAll(13, 60, PlannerPropertyTest::draw, c -> {
            double tall = c.e + c.t * c.pitch();
            int screws = fewest(c.w)
                    + 2 * fewest(c.d)
                    + 2 * fewest(tall)
                    + 2 * 2 * fewest(8)
                    + 2 * fewest(c.w)
                    + fewest(c.w)
                    + 2 * fewest(tall)
                    + 4 * fewest(Math.hypot(c.half(), c.half() * c.pitch()))
                    + 2 * fewest(c.d);
            assertThat(plan(c).hardware().get(0).need().value()).isEqualTo(screws);
        });
    }

    /** The fewest screws, the first and last 1 1/2 in from the ends, that stand no more than 5 in apart. */
    private static int fewest(double contact) {
        int many = 2;
        while ((contact - 3) / (many - 1) > 5) {
            many++;
        }
        return many;
    }

    @Test
    void paint_atRandomSizes_coversEveryFaceOnceLessWhatTouches() {
        forAll(14, 60, PlannerPropertyTest::draw, c -> {
            double tall = c.e + c.t * c.pitch();
            double doorway = c.doorW * c.doorH - (4 - Math.PI) / 16;
            double weeps = 2 * Math.PI * 0.1875 * 0.1875;
            double vents = 2 * Math.PI * 0.25;
            double inside = c.w * c.d
                    - weeps
                    + 2 * (c.d * tall - 2 * 8 * c.t)
                    + (c.gable() - vents - c.w * c.t - (c.e + tall) * c.t - 2 * c.w * c.t)
                    + (c.gable() - doorway - c.w * c.t - (c.e + tall) * c.t)
                    + 2 * 2 * c.w * 8;
            // A side stands on no floor edge inside: the floor's ends touch its inside face.
            inside -= 2 * c.d * c.t;
            double roofDeep = c.d + 2 * c.t + 2 * c.past;
            // The cap's two legs of 2 in lie on the roof's upper faces; its under sides count as inside and come too
            // late.
            double door = (c.doorW + 2) * (c.doorH + 2) - (c.doorW - 3) * (c.doorH - 3);
            double outside = c.w * c.d
                    - weeps
                    + 2 * c.d * c.e
                    + c.gable()
                    - vents
                    + c.gable()
                    - doorway
                    + 2 * roofDeep * (c.roofUpper() - 2)
                    + 2 * (roofDeep * c.roofUnder() - (c.d + 2 * c.t) * Math.hypot(c.half(), c.half() * c.pitch()))
                    + 2 * door;
            Plan plan = plan(c);
            FinishLine primer = plan.finish().stream()
                    .filter(f -> f.what().equals("exterior primer"))
                    .findFirst()
                    .orElseThrow();
            double painted = ((Area) primer.extent().value()).inSquareInches();
            assertThat(painted).isCloseTo(inside + outside, within(1e-3));
        });
    }

    @Test
    void caulk_atRandomSizes_runsAlongEveryInsideCorner() {
        forAll(15, 60, PlannerPropertyTest::draw, c -> {
            double tall = c.e + c.t * c.pitch();
            double floor = 2 * c.w + 2 * c.d;
            double backCorners = 2 * (tall - 3 * c.t);
            double frontCorners = 2 * (tall - c.t);
            double shelves = 2 * (2 * c.w) + 4 * (8 + 8 + c.t);
            // A shelf as deep as the inside would reach the front and hide its own front edge.
            if (c.d > 8) {
                FinishLine caulk = plan(c).finish().stream()
                        .filter(f -> f.task() == FinishLine.Task.CAULK)
                        .findFirst()
                        .orElseThrow();
                double run = ((Length) caulk.extent().value()).inInches();
                assertThat(run).isCloseTo(floor + backCorners + frontCorners + shelves, A_MICRON);
            }
        });
    }

    @Test
    void plan_madeTwice_isTheSame() {
        forAll(16, 5, PlannerPropertyTest::draw, c -> {
            Plan once = plan(c);
            Plan again = plan(c);
            assertThat(again.parts()).isEqualTo(once.parts());
            assertThat(again.sheets()).isEqualTo(once.sheets());
            assertThat(again.boards()).isEqualTo(once.boards());
            assertThat(again.cost()).isEqualTo(once.cost());
            assertThat(again.checks()).isEqualTo(once.checks());
            assertThat(again.steps()).isEqualTo(once.steps());
        });
    }

    @Test
    void slope_asDegreesOrRiseInRun_givesTheSameParts() {
        Cabinet degrees = new Cabinet();
        degrees.slope = Angle.ofDegrees(45);
        Cabinet pitch = new Cabinet();
        pitch.slope = Angle.parse("12 in 12");
        assertThat(Planner.plan(pitch.sketch(), DAY).parts())
                .isEqualTo(Planner.plan(degrees.sketch(), DAY).parts());
    }
}
