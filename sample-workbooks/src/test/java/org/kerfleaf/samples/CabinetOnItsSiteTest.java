package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.Department;
import org.kerfleaf.cost.LikeForLike;
import org.kerfleaf.export.drawing.Drawings;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.site.Filling;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.site.WindLoad;

/** The seed-swap cabinet on its post: the figures of its site worked by hand, and the checks of wind, hole, reach and path. */
class CabinetOnItsSiteTest {
    private static final Plan PLAN = Sample.CABINET.plan();
    private static final double INCH = 25.4;
    private static final double FOOT = 304.8;
    private static final String TAMPED = ".tampedBack(SAND)";
    private static final Set<String> ON_THE_POST = Set.of("Post", "Arm", "Seat");

    private static WindLoad wind(Plan plan) {
        return plan.site().flatMap(SitePlan::wind).orElseThrow();
    }

    /** Two people, one at either end: a hand before and one behind the balance, under the box and not under its roof's overhang. */
    @Test
    void lift_hasAPlaceForEveryHand() {
        Loads.Lifted lifted = PLAN.loads().lifted().get(0);
        double under =
                PLAN.site().orElseThrow().boxBottom().orElseThrow().value().inMillimetres();
        assertThat(lifted.grips()).extracting(Loads.Grip::person).containsExactly(1, 1, 2, 2);
        assertThat(lifted.grips()).allSatisfy(grip -> assertThat(grip.at().z()).isCloseTo(under, within(0.01)));
        Vector balance = lifted.balance().orElseThrow();
        double left = lifted.grips().get(0).at().x();
        double right = lifted.grips().get(2).at().x();
        assertThat(balance.x()).isBetween(left, right);
        // 22 in inside and two sides of 23/32 in.
        assertThat(right - left).isCloseTo((22 + 2 * 23 / 32.0) * INCH, within(0.1));
        assertThat(Drawings.of(PLAN)
                        .named(Drawings.LIFT)
                        .orElseThrow()
                        .within(120, 80)
                        .height())
                .isBetween(40.0, 80.0);
    }

    /** A prototype's silhouette; ASCE 7-16 26.10-1; IBC 1807.3.2.1 with a 4x4's diagonal in sand. */
    @Test
    void wind_onTheBox_isAsWorkedByHand() {
        // The prototype had no ridge cap: 1/8 in thick, it would add 0.003 ft².
        WindLoad wind = wind(Sample.CABINET.planWith("var capIn   = place(cap).over(roofs);", ""));
        assertThat(wind.from()).isEqualTo("the front");
        assertThat(wind.pressure().value().inPoundsPerSquareFoot()).isCloseTo(24.461, within(0.001));
        assertThat(wind.seen().value().inSquareFeet()).isCloseTo(4.649, within(0.0005));
        assertThat(wind.centre().value().inInches() - 33.5).isCloseTo(14.29, within(0.005));
        assertThat(wind.push().value().inPounds()).isCloseTo(75.4, within(0.05));
        assertThat(wind.moment().value().inPoundFeet()).isCloseTo(75.4 * 3.982, within(0.3));
        WindLoad.Needs needs = wind.needs().orElseThrow();
        assertThat(needs.across().value().inMillimetres() / FOOT).isCloseTo(0.4125, within(0.0001));
        assertThat(needs.plain().orElseThrow().value().inInches()).isCloseTo(50.1, within(0.05));
        assertThat(needs.doubled().orElseThrow().value().inInches()).isCloseTo(38.2, within(0.05));
    }

    static Stream<Map<String, String>> variants() {
        // Where a doorway is wider than its front there is no front to look at.
        return Built.variants(PLAN, 47).stream()
                .filter(sizes -> Sample.CABINET.plan(sizes).problems().isEmpty())
                .limit(20);
    }

    /** The silhouette by another library, the depth as the root of d³ = a (d + 1.09 h), a = 7.02 P/(f s b). */
    @ParameterizedTest
    @MethodSource("variants")
    void wind_anySize_agreesWithASecondDerivation(Map<String, String> sizes) {
        Plan plan = Sample.CABINET.plan(sizes);
        WindLoad wind = wind(plan);
        double front = silhouette(plan, Vector.X, Vector.Y);
        double side = silhouette(plan, Vector.Y, Vector.X);
        double seen = wind.seen().value().squareMillimetres();
        assertThat(seen).isCloseTo(wind.from().equals("the front") ? front : side, within(seen * 1e-6));
        double p = 0.00256 * 0.85 * 0.85 * 115 * 115 * 0.6 * 0.85 * 1.3 * seen / (FOOT * FOOT);
        assertThat(wind.push().value().inPounds()).isCloseTo(p, within(1e-6));
        double h = wind.centre().value().inMillimetres() / FOOT;
        double b = 3.5 * StrictMath.sqrt(2) / 12;
        WindLoad.Needs needs = wind.needs().orElseThrow();
        assertThat(needs.plain().orElseThrow().value().inMillimetres() / FOOT)
                .isCloseTo(root(7.02 * p / (150 * b), h), within(1e-6));
        assertThat(needs.doubled().orElseThrow().value().inMillimetres() / FOOT)
                .isCloseTo(root(7.02 * p / (300 * b), h), within(1e-6));
    }

    private static double root(double a, double h) {
        double low = 0;
        double high = 100;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            boolean more = middle * middle * middle < a * (middle + 1.09 * h);
            low = more ? middle : low;
            high = more ? high : middle;
        }
        return low;
    }

    private static double silhouette(Plan plan, Vector sideways, Vector away) {
        Area all = new Area();
        plan.placed().stream()
                .filter(p -> !ON_THE_POST.contains(p.solid().part()))
                .flatMap(p -> p.solid().faces().stream())
                .filter(face -> Math.abs(face.normal().dot(away)) > 1e-6)
                .forEach(face -> all.add(new Area(outer(face, sideways))));
        return areaOf(all);
    }

    private static Path2D outer(Face face, Vector sideways) {
        Path2D path = new Path2D.Double();
        List<Vector> corners = face.corners();
        for (int i = 0; i < corners.size(); i++) {
            double x = corners.get(i).dot(sideways);
            if (i == 0) {
                path.moveTo(x, corners.get(i).z());
            } else {
                path.lineTo(x, corners.get(i).z());
            }
        }
        path.closePath();
        return path;
    }

    private static double areaOf(Area area) {
        double twice = 0;
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        double fromX = 0;
        double fromY = 0;
        for (PathIterator i = area.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                fromX = at[0];
                fromY = at[1];
            } else {
                double toX = kind == PathIterator.SEG_CLOSE ? fromX : at[0];
                double toY = kind == PathIterator.SEG_CLOSE ? fromY : at[1];
                twice += x * toY - toX * y;
                at[0] = toX;
                at[1] = toY;
            }
            x = at[0];
            y = at[1];
        }
        return Math.abs(twice / 2);
    }

    /** figures.md: 40 in in the ground holds with the doubling only. */
    @Test
    void postDepth_holdsWithTheDoublingOnly_andFallsInMoreWind() {
        assertThat(check(PLAN, "Post depth").result())
                .contains("It holds only if the soil's bearing may be doubled", SitePlan.DEFERS)
                .contains("more than it has, with the wind on post and arms as well");
        assertThat(check(PLAN, "Post depth").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith("115 mph", "130 mph"), "Post depth")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(check(Sample.CABINET.planWith(TAMPED, ""), "Post depth").verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check(Sample.CABINET.planWith(TAMPED, ".tampedBack(CLAY)"), "Post depth")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(check(Sample.CABINET.planWith(".wind(\"115 mph\", OPEN_GROUND)", ""), "Post depth")
                        .source())
                .contains("rule of thumb");
    }

    /** Concrete 10 in across is held on a wider front than a 4x4's diagonal: IBC 1807.3.2.1 by hand. */
    @Test
    void inConcrete_thePierIsHeldOnItsDiameter() {
        Plan plan = Sample.CABINET.planWith(TAMPED, ".setInConcrete(bag(\"60 lb\").costs(\"5.80\"))");
        assertThat(wind(plan).needs()).isEmpty();
        Plan known = Sample.CABINET.planWith(
                TAMPED + ".frost(\"36 in\").forPost(postIn).leftLong(\"3 in\");\nvar site   = site()",
                ".setInConcrete(bag(\"60 lb\").costs(\"5.80\")).frost(\"36 in\").forPost(postIn).leftLong(\"3 in\");\nvar site   = site().ground(SAND)");
        WindLoad.Needs needs = wind(known).needs().orElseThrow();
        double p = wind(known).push().value().inPounds();
        double h = wind(known).centre().value().inMillimetres() / FOOT;
        assertThat(needs.plain().orElseThrow().value().inMillimetres() / FOOT)
                .isCloseTo(root(7.02 * p / (150 * 10 / 12.0), h), within(1e-6));
    }

    /** (π/4 · 10² − 3.5²) · 40 in³; 60 lb make 0.45 ft³ (bag makers' sheets): 1.534 ft³ take 4 bags. */
    @Test
    void filling_concreteByBags_orSoilInLifts() {
        Filling concrete = Sample.CABINET
                .planWith(TAMPED, ".setInConcrete(bag(\"60 lb\").costs(\"5.80\"))")
                .site()
                .flatMap(SitePlan::filling)
                .orElseThrow();
        double cubicInches = (Math.PI / 4 * 100 - 12.25) * 40;
        assertThat(concrete.volume().value().inCubicInches()).isCloseTo(cubicInches, within(1e-6));
        assertThat(concrete.bags().orElseThrow().value()).isEqualTo(4);
        assertThat(concrete.toPutSomewhere().value().inCubicFeet()).isCloseTo(2.0 * 1.25, within(0.001));
        Filling sand = PLAN.site().flatMap(SitePlan::filling).orElseThrow();
        assertThat(sand.lifts().orElseThrow().value()).isEqualTo(7);
        assertThat(sand.toPutSomewhere().value().inCubicInches())
                .isCloseTo((Math.PI / 4 * 100 * 44 - cubicInches) * 1.25, within(1e-6));
        assertThat(Sample.CABINET.planWith(TAMPED, "").site().flatMap(SitePlan::filling))
                .isEmpty();
    }

    @Test
    void concrete_isBoughtInBags() {
        assertThat(Sample.CABINET
                        .planWith(TAMPED, ".setInConcrete(bag(\"60 lb\").costs(\"5.80\"))")
                        .cost()
                        .lines())
                .anySatisfy(line -> {
                    assertThat(line.what()).isEqualTo("dry concrete mix");
                    assertThat(line.bought().orElseThrow().toString()).isEqualTo("USD 23.20");
                });
    }

    @Test
    void post_isLeftLong_andCutAtTheHeightLine() {
        SitePlan site = PLAN.site().orElseThrow();
        assertThat(site.cutPostTo().orElseThrow().value().inInches()).isEqualTo(75);
        assertThat(site.heightLine().orElseThrow().value().inMillimetres() / INCH)
                .isEqualTo(32);
        assertThat(check(PLAN, "Post cut last").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith("leftLong(\"3 in\")", "leftLong(\"1 in\")"), "Post cut last")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(check(Sample.CABINET.planWith(".leftLong(\"3 in\")", ""), "Post cut last")
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    // ---- people and path -----------------------------------------------------------------------------------------

    /** ADA 308.1: the knob at 45 1/2 in is within an adult's band and beyond that of a child of 5 to 8, 18 to 40 in. */
    @Test
    void reach_knob_isForAdults_notForSmallChildren() {
        assertThat(check(PLAN, "Latch use: Knob").verdict()).isEqualTo(Verdict.HOLDS);
        Plan children = Sample.CABINET.planWith("reachedBy(ADULT)", "reachedBy(ADULT, CHILD_5_TO_8).inReach(shelves)");
        Check child = check(children, "Latch use: Knob, a child of 5 to 8");
        assertThat(child.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(child.margin()).isEqualTo("over by 5 1/2 in");
        // The shelves' tops: 33 1/2 + 23/32 + 8 + 23/32 = 42 15/16 and 7 in more.
        assertThat(check(children, "Reach: Shelf").result()).startsWith("Shelf is 42 15/16 in above the ground");
        assertThat(check(children, "Reach: Shelf, a child").verdict()).isEqualTo(Verdict.SHORT);
    }

    /** ADA 305: 30 by 48 in, no steeper than 1 in 48. */
    @Test
    void groundSpace_wantsRoomAndAFlatPlace() {
        assertThat(check(PLAN, "Ground space").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith("1 in 60", "1 in 40"), "Ground space")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(check(Sample.CABINET.planWith("\"36 in\", \"48 in\"", "\"28 in\", \"48 in\""), "Ground space")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(check(Sample.CABINET.planWith(".slopes(\"1 in 60\")", ""), "Ground space")
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    // ---- kit and tool --------------------------------------------------------------------------------------------

    /** The post's board 14.60; the paint's packs as bought are added too: then kit and build hold the same things. */
    @Test
    void kit_likeForLike_addsWhatItLeavesOut_andPaysForATool() {
        Cost cost = PLAN.cost();
        LikeForLike both = cost.compare().get(0).likeForLike().orElseThrow();
        double lacked = cost.lines().stream()
                .filter(line -> line.what().startsWith("4x4")
                        || line.department() == Department.FINISH
                                && PLAN.finish().stream()
                                        .anyMatch(f -> f.task() == FinishLine.Task.PAINT
                                                && f.what().equals(line.what())))
                .mapToDouble(line -> line.bought().orElseThrow().getAmount().doubleValue())
                .sum();
        assertThat(both.lacked().value().getAmount().doubleValue()).isCloseTo(lacked, within(1e-9));
        double saved =
                273 + lacked - cost.bought().orElseThrow().value().getAmount().doubleValue();
        assertThat(both.asBought().value().getAmount().doubleValue()).isCloseTo(saved, within(1e-9));
        assertThat(both.asUsed().orElseThrow().value().getAmount().doubleValue())
                .isCloseTo(
                        273
                                + lacked
                                - cost.used().orElseThrow().value().getAmount().doubleValue(),
                        within(1e-9));
        assertThat(both.tools().get(0).builds().orElseThrow().value()).isEqualTo((int) Math.ceil(389 / saved));
        assertThat(check(PLAN, "Like for like").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith("\"post\", \"paint\"", "\"post\", \"a bell\""), "Like for like")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
        assertThat(check(
                                Sample.CABINET.planWith(
                                        ".treated().lengths(\"8 ft\").costs(\"14.60\")",
                                        ".treated().lengths(\"8 ft\")"),
                                "Like for like")
                        .verdict())
                .isNotEqualTo(Verdict.HOLDS);
    }

    @Test
    void prices_olderThan60Days_areAskedAgain() {
        assertThat(check(PLAN, "Price age").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith("2026-04-12", "2026-02-11"), "Price age")
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith("2026-04-12", "2026-02-10"), "Price age")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    // ---- lifting it -----------------------------------------------------------------------------------------------

    /** NIOSH 94-110: 51 · 10/H · (1 − 0.0075 |V − 30|) · (0.82 + 1.8/D) · 0.9, H = 8 + half of the depth; two share 2/3. */
    @Test
    void lift_byTwo_isAsWorkedByHand() {
        Loads.Lifted box = PLAN.loads().lifted().get(0);
        double deep = 11 + 2 * 0.71875 + 4 + 2 * 0.75;
        double hands = 8 + deep / 2;
        double limit = 51 * 10 / hands * 1 * (0.82 + 1.8 / 10) * 0.9 * 2 * 2 / 3;
        assertThat(box.limit().orElseThrow().value().inPounds()).isCloseTo(limit, within(1e-6));
        assertThat(box.people()).isEqualTo(2);
        assertThat(check(PLAN, "Lift: ").verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check(Sample.CABINET.planWith("\"23/32 in\"", "\"1/2 in\""), "Lift: ")
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(check(Sample.CABINET.planWith(".liftedFrom(\"30 in\")", ""), "Lift: ")
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check(Sample.CABINET.planWith(".species(\"ponderosa pine\")", ""), "Lift: ")
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Left and right are alike, so it balances in the middle; front and back are not, for the door hangs in front. */
    @Test
    void balance_isInTheMiddleAndTowardsTheDoor() {
        Loads.Lifted box = PLAN.loads().lifted().get(0);
        assertThat(box.share().orElseThrow().value().inPounds())
                .isCloseTo(box.weight().orElseThrow().value().inPounds() / 2, within(0.001));
        double mass = 0;
        double moment = 0;
        for (PlacedPart placed : PLAN.placed()) {
            if (!ON_THE_POST.contains(placed.solid().part())) {
                double grams = PLAN.part(placed.solid().part())
                        .flatMap(PlannedPart::weight)
                        .orElseThrow()
                        .value()
                        .grams();
                mass += grams;
                moment += grams * placed.solid().centroid().y();
            }
        }
        assertThat(box.weight().orElseThrow().value().grams()).isCloseTo(mass, within(1e-6));
        double out = box.outOfPost().orElseThrow().value().inMillimetres();
        double postAt = new Built(PLAN).piece("Post").centroid().y();
        assertThat(out).isCloseTo(Math.abs(moment / mass - postAt), within(0.001));
        assertThat(box.tipping().orElseThrow().value().newtonMetres())
                .isCloseTo(mass / 1000 * 9.80665 * out / 1000, within(1e-6));
    }

    @Test
    void letGo_wantsTwoFixingsOnEachSide() {
        assertThat(check(PLAN, "Let go").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(
                                Sample.CABINET.planWith(
                                        "screwed(woodScrew(10, \"2 in\").stainless().costs(\"0.40\")).times(4)",
                                        "screwed(woodScrew(10, \"2 in\").stainless().costs(\"0.40\")).times(2)"),
                                "Let go")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    static Check check(Plan plan, String name) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith(name))
                .findFirst()
                .orElseThrow();
    }
}
