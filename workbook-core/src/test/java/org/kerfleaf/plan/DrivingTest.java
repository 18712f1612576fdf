package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.FRONT;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.sketch.Side.TOP;
import static org.kerfleaf.sketch.Way.FRONT_TO_BACK;
import static org.kerfleaf.sketch.Way.LEFT_TO_RIGHT;
import static org.kerfleaf.testing.Property.forAll;
import static org.kerfleaf.words.Words.*;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.testing.Draw;

/** Where fasteners stand, worked out a second time from the sizes of the build. */
class DrivingTest {
    private static final double IN = 25.4;

    private static Fastened contact(Plan plan, String joint, String through, int piece, String into, int intoPiece) {
        return plan.fastened().stream()
                .filter(f -> f.joint().equals(joint)
                        && f.through().equals(new Fastened.Bound(through, piece))
                        && f.into().contains(new Fastened.Bound(into, intoPiece)))
                .findFirst()
                .orElseThrow();
    }

    private static PlacedSolid solid(Plan plan, String part, int number) {
        return plan.placed().stream()
                .map(PlacedPart::solid)
                .filter(s -> s.part().equals(part))
                .skip(number - 1L)
                .findFirst()
                .orElseThrow();
    }

    /** The first and last 1 1/2 in from the ends, between them as few as stand no more than 5 in apart. */
    private static double[] stations(double contact) {
        int many = 2;
        while ((contact - 3) / (many - 1) > 5) {
            many++;
        }
        double[] at = new double[many];
        for (int i = 0; i < many; i++) {
            at[i] = 1.5 + (contact - 3) * i / (many - 1);
        }
        return at;
    }

    // ---- the cabinet at random sizes ------------------------------------------------------------------------------

    private record Case(double w, double d, double e, double slope, double t) {
        Plan plan() {
            Cabinet cabinet = new Cabinet();
            cabinet.width = Length.ofInches(w);
            cabinet.depth = Length.ofInches(d);
            cabinet.eaves = Length.ofInches(e);
            cabinet.slope = Angle.ofDegrees(slope);
            cabinet.doorWide = Length.ofInches(12);
            cabinet.doorHigh = Length.ofInches(12);
            cabinet.caliper = Length.ofInches(t).toString();
            Plan plan = Planner.plan(cabinet.sketch(), Bench.DAY);
            assertThat(plan.problems()).isEmpty();
            return plan;
        }
    }

    private static Case draw(RandomGenerator random) {
        return new Case(
                inches(random, 16, 30),
                inches(random, 8, 14),
                inches(random, 18, 30),
                random.nextInt(20, 46),
                Draw.oneOf(random, 15, 19, 23, 24) / 32.0);
    }

    private static double inches(RandomGenerator random, double least, double most) {
        return Draw.sixtyFourths(random, Length.ofInches(least), Length.ofInches(most))
                .inInches();
    }

    /** Looking from behind: u from the back's left edge as one sees it, the build's right; v from its foot. */
    @Test
    void back_atRandomSizes_isMarkedOutsideAtHalfTheMatingPart() {
        forAll(31, 50, DrivingTest::draw, c -> {
            Plan plan = c.plan();
            Marking back = marking(plan, "Back");
            assertThat(back.up()).isEqualTo(SheetSide.OUTSIDE);
            List<String> expected = new ArrayList<>();
            double half = c.t / 2;
            for (double x : stations(c.w)) {
                expected.add(at(c.t + x, half));
                expected.add(at(c.t + x, 5 + c.t + half));
                expected.add(at(c.t + x, 11 + c.t + half));
            }
            double tall = c.e + c.t * Math.tan(Math.toRadians(c.slope));
            for (double z : stations(tall)) {
                expected.add(at(half, z));
                expected.add(at(c.w + 2 * c.t - half, z));
            }
            assertThat(back.holes().stream().map(h -> at(h.x() / IN, h.y() / IN)))
                    .containsExactlyInAnyOrderElementsOf(expected);
            assertThat(back.guides())
                    .filteredOn(g -> g.words().equals("middle of Floor"))
                    .singleElement()
                    .satisfies(g -> {
                        assertThat(g.from().y() / IN).isCloseTo(half, within(1e-6));
                        assertThat(g.to().y() / IN).isCloseTo(half, within(1e-6));
                        assertThat(Math.abs(g.to().x() - g.from().x()) / IN).isCloseTo(c.w, within(1e-6));
                    });
        });
    }

    private static String at(double u, double v) {
        return "%.4f %.4f".formatted(u + 1e-9, v + 1e-9);
    }

    @Test
    void fasteners_atRandomSizes_standOnWoodApartAndAsManyAsCounted() {
        forAll(32, 50, DrivingTest::draw, c -> {
            Plan plan = c.plan();
            int screws = plan.fastened().stream()
                    .filter(f -> f.fastener().contains("No. 6"))
                    .mapToInt(f -> f.driven().size())
                    .sum();
            assertThat(screws).isEqualTo(plan.hardware().get(0).need().value());
            for (Fastened f : plan.fastened()) {
                PlacedSolid through =
                        solid(plan, f.through().part(), f.through().piece());
                PlacedSolid into =
                        solid(plan, f.into().get(0).part(), f.into().get(0).piece());
                for (DrivenFastener one : f.driven()) {
                    assertThat(through.holds(one.head().plus(one.way()))).isTrue();
                    assertThat(through.holds(one.head().minus(one.way()))).isFalse();
                    double s = 1;
                    while (through.holds(one.head().plus(one.way().times(s)))) {
                        s += 0.5;
                    }
                    // Just past the one part it is in the other.
                    assertThat(into.holds(one.head().plus(one.way().times(s + 1))))
                            .as("%s in %s", one, into)
                            .isTrue();
                }
            }
            clear(plan);
        });
    }

    /** No two from two directions in one piece come nearer than their radii and a quarter inch. */
    private static void clear(Plan plan) {
        for (Fastened f : plan.fastened()) {
            for (Fastened g : plan.fastened()) {
                boolean shared = f.through().equals(g.through())
                        || f.into().contains(g.through())
                        || g.into().contains(f.through())
                        || f.into().stream().anyMatch(g.into()::contains);
                for (DrivenFastener a : shared ? f.driven() : List.<DrivenFastener>of()) {
                    for (DrivenFastener b : g.driven()) {
                        if (a.isCrossedBy(b)) {
                            assertThat(a.between(b)).isGreaterThanOrEqualTo(a.wanted(b));
                        }
                    }
                }
            }
        }
    }

    private static Marking marking(Plan plan, String part) {
        return plan.markings().stream()
                .filter(m -> m.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    // ---- marks lie where the fasteners are ----------------------------------------------------------------------

    /** Laid back from the bench into the build, every hole of a drawing is a head on the face that lies up. */
    @Test
    void holes_laidBackIntoTheBuild_areTheHeadsOnTheFaceThatLiesUp() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        for (String part : List.of("Back", "Front", "Side", "Roof", "Rake trim", "Eave trim", "Floor", "Seat")) {
            Marking marking = marking(plan, part);
            PlacedSolid first = solid(plan, part, 1);
            Face face = first.face(marking.up().name());
            double thick = marking.solid().thickness().inMillimetres();
            List<String> heads = plan.fastened().stream()
                    .filter(f -> f.through().equals(new Fastened.Bound(part, 1)))
                    .flatMap(f -> f.driven().stream())
                    .map(d -> point(d.head()))
                    .toList();
            assertThat(marking.holes()).as(part).isNotEmpty();
            assertThat(marking.holes().stream()
                            .map(h -> new Vector(h.x(), h.y(), thick))
                            .map(h -> first.pose().toWorld(marking.lying().toLocal(h)))
                            .peek(h -> assertThat(face.inFront(h)).isCloseTo(0, within(1e-6)))
                            .map(DrivingTest::point))
                    .as(part)
                    .containsExactlyInAnyOrderElementsOf(heads);
        }
    }

    private static String point(Vector p) {
        return "%.3f %.3f %.3f".formatted(p.x() + 1e-7, p.y() + 1e-7, p.z() + 1e-7);
    }

    @Test
    void markings_ofTheCabinet_areOneForEachDifferentPieceAndFace() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        assertThat(plan.markings().stream()
                        .map(m -> m.title().substring(2) + " | " + m.hand())
                        .toList())
                .containsExactly(
                        "Floor | ",
                        "Back | ",
                        "Side | Drawn for the left one; the right one is its mirror image.",
                        "Front | ",
                        "Roof | Mark both alike.",
                        "Rake trim | Drawn for the back left and front right one; the front left and back right ones are its mirror images.",
                        "Eave trim | Mark both alike.",
                        "Door | ",
                        "Arm, front | ",
                        "Seat | ");
        assertThat(marking(plan, "Side").faceUp()).isEqualTo("OUTSIDE up, the top at the top, the front at the right.");
        assertThat(marking(plan, "Back").drilling()).contains("No. 6", "clearance hole 9/64 in", "pilot hole 1/16 in");
        // The door is screwed to nothing, but its window and the rabbet on its inside are marked.
        assertThat(marking(plan, "Door").up()).isEqualTo(SheetSide.INSIDE);
        assertThat(marking(plan, "Door").holes()).isEmpty();
    }

    /** A low wall on a base, screwed down through its height: marked on its upper edge, in the middle of its thickness. */
    @Test
    void markings_drivenThroughAnEdge_lieOnThatEdge() {
        Plan plan = Bench.plan(b -> {
            var base = b.keep(panel("Base", b.ply()).wide("20 in").deep("12 in"));
            var wall = b.keep(panel("Wall", b.ply()).wide("20 in").high("3 in"));
            var baseIn = b.keep(place(base));
            var wallIn = b.keep(place(wall).onTopOf(baseIn).centred());
            b.keep(fasten(wallIn).to(baseIn).screwed(woodScrew(10, "3 1/2 in"), every("10 in")));
        });
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.markings()).singleElement().satisfies(m -> {
            assertThat(m.title()).isEqualTo("B Wall");
            assertThat(m.faceUp()).startsWith("Edge at the top up,");
            assertThat(m.outline().wide()).isEqualTo(Length.parse("20 in"));
            assertThat(m.outline().high()).isEqualTo(Length.parse("3/4 in"));
            assertThat(m.holes().stream().map(h -> at(h.x() / IN, h.y() / IN)))
                    .containsExactlyInAnyOrder(at(1.5, 0.375), at(10, 0.375), at(18.5, 0.375));
            assertThat(m.guides())
                    .singleElement()
                    .satisfies(g -> assertThat(g.words()).isEqualTo("over Base"));
        });
    }

    // ---- numbers that are said ----------------------------------------------------------------------------------

    @Test
    void times_onAWideContact_standsInTwoRows_andABoltGoesThroughAll() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        Fastened seat = contact(plan, "Floor to Seat", "Floor", 1, "Seat", 1);
        // The contact is 20 x 7 1/4: No. 10 stands 10 diameters, 1.9 in, from its ends and 1 1/2 in from its edges.
        assertThat(corners(seat))
                .containsExactlyInAnyOrder("-8.100 -2.125", "8.100 -2.125", "-8.100 2.125", "8.100 2.125");
        Fastened arms = contact(plan, "Arm to Post", "Arm", 1, "Arm", 2);
        assertThat(arms.into()).containsExactly(new Fastened.Bound("Post", 1), new Fastened.Bound("Arm", 2));
        assertThat(arms.driven())
                .hasSize(2)
                .allSatisfy(bolt -> assertThat(bolt.tip().minus(bolt.head()).length() / IN)
                        .isCloseTo(1.5 + 3.5 + 1.5, within(1e-6)));
    }

    /** From the middle of them all, across the build and deep. */
    private static List<String> corners(Fastened f) {
        double x = f.driven().stream().mapToDouble(d -> d.head().x()).average().orElseThrow();
        double y = f.driven().stream().mapToDouble(d -> d.head().y()).average().orElseThrow();
        return f.driven().stream()
                .map(d ->
                        "%.3f %.3f".formatted((d.head().x() - x) / IN, (d.head().y() - y) / IN))
                .collect(Collectors.toList());
    }

    @Test
    void times_overUnlikeContacts_isSharedOut() {
        Plan plan = Bench.plan(b -> {
            var top = b.keep(panel("Top", b.ply()).wide("30 in").deep("10 in"));
            var leg = b.keep(panel("Leg", b.ply()).deep("10 in").high("12 in").pair());
            var topIn = b.keep(place(top));
            var legs = b.keep(place(leg).leftAndRightOf(topIn).flushAt(TOP));
            b.keep(fasten(legs).to(topIn).screwed(woodScrew(6, "1 5/8 in")).times(5));
        });
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.fastened()).extracting(f -> f.driven().size()).containsExactly(3, 2);
    }

    // ---- openings in the way -----------------------------------------------------------------------------------

    /** A lid lies on a board 30 in long and 4 in wide; a slot through the lid runs over where the middle screw would stand. */
    private static Plan slotted(String slot) {
        return Bench.plan(b -> {
            var lid = b.keep(panel("Lid", b.ply())
                    .wide("30 in")
                    .deep("4 in")
                    .hole("eye", round(slot).from(LEFT, "15 in").from(FRONT, "2 in")));
            var base = b.keep(panel("Base", b.ply()).wide("30 in").deep("4 in"));
            var baseIn = b.keep(place(base));
            var lidIn = b.keep(place(lid).above(baseIn, "0 in"));
            b.keep(fasten(lidIn).to(baseIn).screwed(woodScrew(6, "1 1/4 in"), every("14 in")));
        });
    }

    @Test
    void every_overAHole_movesToTheNearestPlaceThatIsFree() {
        Plan plan = slotted("1 in");
        assertThat(plan.problems()).isEmpty();
        List<Double> along = plan.fastened().get(0).driven().stream()
                .map(d -> d.head().x() / IN)
                .toList();
        assertThat(along.get(0)).isCloseTo(1.5, within(1e-6));
        // Half the hole and 2 1/2 diameters of 0.138 in from its middle, to the 1/64 in beyond.
        assertThat(along.get(1)).isBetween(15 - 0.845 - 1.01 / 64, 15 - 0.845);
        assertThat(along.get(2)).isCloseTo(28.5, within(1e-6));
    }

    @Test
    void every_withoutAnyWood_isAProblemThatNamesBoth() {
        Plan plan = Bench.plan(b -> {
            var lid = b.keep(panel("Lid", b.ply())
                    .wide("6 in")
                    .deep("6 in")
                    .hole("eye", round("5 1/2 in").from(LEFT, "3 in").from(FRONT, "3 in")));
            var base = b.keep(panel("Base", b.ply()).wide("6 in").deep("6 in"));
            var baseIn = b.keep(place(base));
            var lidIn = b.keep(place(lid).above(baseIn, "0 in"));
            b.keep(fasten(lidIn).to(baseIn).screwed(woodScrew(6, "1 1/4 in"), every("3 in")));
        });
        assertThat(plan.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.words()).contains("Lid and Base", "find wood"));
        assertThat(plan.fastened()).isEmpty();
    }

    /** Square to a roof of 30°, a screw in the middle of a 23/32 side has t/2 / sin 30° = 23/32 in of wood, then it is inside the box. */
    @Test
    void tip_ofAScrewThatLeans_comesOutOfAThinWall() {
        Plan plan = Planner.plan(new Cabinet().sketch(), Bench.DAY);
        Check tip = plan.checks().stream()
                .filter(c -> c.name().equals("Screw tip: Roof to Side"))
                .findFirst()
                .orElseThrow();
        assertThat(tip.verdict()).isEqualTo(Check.Verdict.SHORT);
        assertThat(tip.result()).contains("goes 31/32 in into 23/32 in of wood");
    }

    // ---- screws that would meet --------------------------------------------------------------------------------

    /** Rails from the left and from behind at one height: both drive through the post's other sides into them. */
    private static Plan post(String rail, String times) {
        return Bench.plan(b -> {
            var four = b.keep(lumber("4x4").lengths("8 ft"));
            var two = b.keep(lumber("2x8").lengths("8 ft"));
            var post = b.keep(board("Post", four).cutTo("40 in"));
            var side = b.keep(board("Side rail", two).cutTo(rail));
            var postIn = b.keep(place(post).standing());
            var front = b.keep(board("Front rail", two).cutTo("20 in"));
            var frontIn =
                    b.keep(place(front).running(LEFT_TO_RIGHT).inFrontOf(postIn).flushAt(TOP));
            var sideIn =
                    b.keep(place(side).running(FRONT_TO_BACK).rightOf(postIn).flushAt(TOP));
            b.keep(fasten(frontIn).to(postIn).screwed(woodScrew(10, "4 in"), every(times)));
            b.keep(fasten(sideIn).to(postIn).screwed(woodScrew(10, "4 in"), every(times)));
        });
    }

    @Test
    void rowsThatMeetInAPost_theLaterMovesByTheLeast() {
        Plan plan = post("20 in", "5 in");
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.fastened().get(0).moved()).isEqualTo(Length.ZERO);
        Length moved = plan.fastened().get(1).moved();
        // Without it they meet in the post's middle: 0.190 in and 1/4 in are wanted, 28.16 sixty-fourths.
        assertThat(moved).isEqualTo(Length.ofSixtyFourths(29));
        clear(plan);
        Check check = meeting(plan);
        assertThat(check.verdict()).isEqualTo(Check.Verdict.HOLDS);
        assertThat(check.result()).contains("1 row moved").contains("29/64 in apart");
    }

    @Test
    void screwsThatMeetWhereNothingClears_areACheckThatNamesBothJoints() {
        Plan plan = Bench.plan(b -> {
            var stick = b.keep(lumber("2x2").lengths("8 ft"));
            var postIn =
                    b.keep(place(b.keep(board("Post", stick).cutTo("40 in"))).standing());
            var front = b.keep(board("Front rail", stick).cutTo("20 in"));
            var side = b.keep(board("Side rail", stick).cutTo("20 in"));
            var frontIn =
                    b.keep(place(front).running(LEFT_TO_RIGHT).inFrontOf(postIn).flushAt(TOP));
            var sideIn =
                    b.keep(place(side).running(FRONT_TO_BACK).rightOf(postIn).flushAt(TOP));
            b.keep(fasten(frontIn).to(postIn).screwed(woodScrew(10, "2 1/2 in")).times(1));
            b.keep(fasten(sideIn).to(postIn).screwed(woodScrew(10, "2 1/2 in")).times(1));
        });
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.fastened()).extracting(Fastened::moved).containsOnly(Length.ZERO);
        Check check = meeting(plan);
        assertThat(check.verdict()).isEqualTo(Check.Verdict.SHORT);
        assertThat(check.name()).contains("Front rail to Post", "Side rail to Post");
        assertThat(check.result()).contains("0 in apart");
    }

    private static Check meeting(Plan plan) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith("Screws meet"))
                .findFirst()
                .orElseThrow();
    }
}
