package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.testing.Draw;
import org.kerfleaf.testing.Property;

/** First contacts of what turns, against closed formulas in the plane, against clashes at single angles, and wherever a build stands. */
class SweepTest {
    private static final Angle HALF = Angle.ofDegrees(180);
    private static final Angle WHOLE = Angle.ofDegrees(360);
    private static final double HUNDREDTH = 0.01;

    // ---- the cabinet ---------------------------------------------------------------------------------------------

    /** The door's left edge, in the plane of the face that looks at the front. */
    private static final HingeLine HINGES =
            new HingeLine(CabinetSolids.at(2, -CabinetSolids.T.inInches() - 0.125, 0), Vector.Z.negated());

    private static List<PlacedSolid> hung() {
        return CabinetSolids.all().stream().filter(SweepTest::isHung).toList();
    }

    private static List<PlacedSolid> fixed() {
        return CabinetSolids.all().stream().filter(s -> !isHung(s)).toList();
    }

    private static boolean isHung(PlacedSolid solid) {
        return solid.part().equals("Door") || solid.part().equals("Pane");
    }

    @Test
    void of_cabinetDoor_meetsItsOwnFrontThenTheEaveTrim() {
        List<Sweep> met = Sweep.of(hung(), HINGES, HALF, fixed());

        assertThat(met.get(0).turned().part()).isEqualTo("Door");
        assertThat(met.get(0).met().part()).isEqualTo("Front");
        double folds = 90 + StrictMath.toDegrees(StrictMath.asin(0.125 / CabinetSolids.T.inInches()));
        assertThat(met.get(0).at().inDegrees()).isEqualTo(folds, within(1e-4));
        assertThat(met.get(1).met().part()).isEqualTo("Eave trim");
        assertThat(met.get(1).at().inDegrees()).isBetween(120.0, 150.0);
    }

    /** Folded flat, the door would lie in the front by its thickness less the stand-off, over all that is left of the front. */
    @Test
    void into_cabinetDoorFoldedFlat_isAsDeepAsTheThicknessLessTheStandOff() {
        Sweep front = Sweep.of(hung(), HINGES, HALF, fixed()).get(0);

        Clash clash = front.into(HALF).orElseThrow();

        double t = CabinetSolids.T.inInches();
        assertThat(clash.sizes().get(0).inInches()).isEqualTo(2 + t, within(1e-5));
        assertThat(clash.sizes().get(1).inInches()).isEqualTo(20, within(1e-5));
        assertThat(clash.sizes().get(2).inInches()).isEqualTo(t - 0.125, within(1e-5));
        assertThat(front.into(Angle.ofDegrees(100))).isEmpty();
    }

    @Test
    void of_cabinetTurnedAndMoved_sameAngles() {
        RandomGenerator random = Property.seeded(61);
        List<Sweep> here = Sweep.of(hung(), HINGES, HALF, fixed());
        for (int i = 0; i < 10; i++) {
            Pose elsewhere = elsewhere(random);
            HingeLine line = new HingeLine(elsewhere.toWorld(HINGES.point()), elsewhere.turned(HINGES.axis()));
            List<Sweep> there = Sweep.of(moved(hung(), elsewhere), line, HALF, moved(fixed(), elsewhere));
            assertThat(there).hasSameSizeAs(here);
            for (int j = 0; j < here.size(); j++) {
                assertThat(there.get(j).met().part())
                        .isEqualTo(here.get(j).met().part());
                assertThat(there.get(j).at().inDegrees())
                        .isEqualTo(here.get(j).at().inDegrees(), within(2e-4));
            }
        }
    }

    private static Pose elsewhere(RandomGenerator random) {
        return Pose.HOME
                .turnedAbout(new Vector(50, 70, 10), direction(random), Angle.ofDegrees(random.nextDouble(360)))
                .moved(new Vector(random.nextDouble(10_000), -random.nextDouble(10_000), 300));
    }

    private static List<PlacedSolid> moved(List<PlacedSolid> solids, Pose elsewhere) {
        return solids.stream().map(s -> s.at(s.pose().then(elsewhere))).toList();
    }

    private static Vector direction(RandomGenerator random) {
        return new Vector(random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextDouble() - 0.5).normalised();
    }

    // ---- what touches ---------------------------------------------------------------------------------------------

    @Test
    void of_lidOnABox_opensWithoutMeetingWhatItLiesOn() {
        PlacedSolid wall = board("Wall", 300, 400, 18, Pose.HOME);
        PlacedSolid lid = board("Lid", 300, 400, 18, Pose.HOME.moved(new Vector(0, 0, 18)));
        HingeLine back = new HingeLine(new Vector(0, 400, 18), Vector.X.negated());

        assertThat(Sweep.of(List.of(lid), back, HALF, List.of(wall))).isEmpty();
        // Half round, its end comes to lie on the back of the wall.
        List<Sweep> all = Sweep.of(List.of(lid), back, WHOLE, List.of(wall));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).at().inDegrees()).isEqualTo(180, within(1e-3));
    }

    @Test
    void of_lyingOnAFace_cannotTurnIntoIt() {
        PlacedSolid wall = board("Wall", 300, 400, 18, Pose.HOME);
        PlacedSolid lid = board("Lid", 300, 400, 18, Pose.HOME.moved(new Vector(0, 0, 18)));
        HingeLine wrongWay = new HingeLine(new Vector(0, 400, 18), Vector.X);

        assertThat(Sweep.of(List.of(lid), wrongWay, HALF, List.of(wall))
                        .get(0)
                        .at()
                        .inDegrees())
                .isEqualTo(0, within(1e-4));
    }

    @Test
    void of_moreThanAWholeTurn_saysWhatWouldBeRight() {
        assertThatThrownBy(() -> Sweep.of(List.of(), HINGES, Angle.ofDegrees(361), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("361 deg");
    }

    // ---- closed formulas: boxes that stand on end, about an upright line
    // ---------------------------------------------

    private record Plan(double u, double v, double wide, double deep, double turned) {
        static Plan any(RandomGenerator random) {
            return new Plan(
                    random.nextDouble(-600, 600),
                    random.nextDouble(-600, 600),
                    random.nextInt(5, 400),
                    random.nextInt(5, 400),
                    random.nextDouble(360));
        }

        double[][] corners() {
            double cos = StrictMath.cos(StrictMath.toRadians(turned));
            double sin = StrictMath.sin(StrictMath.toRadians(turned));
            double[][] corners = new double[4][];
            for (int i = 0; i < 4; i++) {
                double a = i == 1 || i == 2 ? wide : 0;
                double b = i >= 2 ? deep : 0;
                corners[i] = new double[] {u + a * cos - b * sin, v + a * sin + b * cos};
            }
            return corners;
        }

        PlacedSolid solid(String name) {
            Pose pose = Pose.HOME.turnedAbout(Vector.ZERO, Vector.Z, Angle.ofDegrees(turned));
            return board(name, wide, deep, 100, pose.moved(new Vector(u, v, 0)));
        }
    }

    /** Where the circle of each corner of one about the origin first crosses a side of the other, either turning. */
    private static OptionalDouble byCircles(Plan moving, Plan still) {
        double first = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                first = Math.min(first, circle(moving.corners()[i], still.corners(), j, 1));
                first = Math.min(first, circle(still.corners()[i], moving.corners(), j, -1));
            }
        }
        return Double.isInfinite(first) ? OptionalDouble.empty() : OptionalDouble.of(first);
    }

    private static double circle(double[] corner, double[][] ring, int side, int sense) {
        double[] p = ring[side];
        double[] q = ring[(side + 1) % 4];
        double dx = q[0] - p[0];
        double dy = q[1] - p[1];
        double a = dx * dx + dy * dy;
        double b = p[0] * dx + p[1] * dy;
        double c = p[0] * p[0] + p[1] * p[1] - corner[0] * corner[0] - corner[1] * corner[1];
        double root = b * b - a * c;
        double first = Double.POSITIVE_INFINITY;
        for (int sign = -1; root >= 0 && sign <= 1; sign += 2) {
            double t = (-b + sign * StrictMath.sqrt(root)) / a;
            if (t >= 0 && t <= 1) {
                double there = StrictMath.atan2(p[1] + t * dy, p[0] + t * dx);
                double turn = sense * (there - StrictMath.atan2(corner[1], corner[0]));
                first = Math.min(first, (StrictMath.toDegrees(turn) % 360 + 360) % 360);
            }
        }
        return first;
    }

    @Test
    void of_uprightBoxes_meetWhereCirclesCrossSides() {
        List<Boolean> met = new ArrayList<>();
        HingeLine line = new HingeLine(Vector.ZERO, Vector.Z);
        forAll(62, 1000, random -> List.of(Plan.any(random), Plan.any(random)), pair -> {
            PlacedSolid moving = pair.get(0).solid("Moving");
            PlacedSolid still = pair.get(1).solid("Still");
            if (Touching.between(moving, still).isAny()) {
                return;
            }
            OptionalDouble expected = byCircles(pair.get(0), pair.get(1));
            List<Sweep> found = Sweep.of(List.of(moving), line, WHOLE, List.of(still));
            met.add(expected.isPresent());
            assertThat(found).hasSize(expected.isPresent() ? 1 : 0);
            expected.ifPresent(at -> assertThat(found.get(0).at().inDegrees()).isEqualTo(at, within(HUNDREDTH)));
        });
        assertThat(met).filteredOn(m -> m).hasSizeGreaterThan(500);
        assertThat(met).filteredOn(m -> !m).hasSizeGreaterThan(20);
    }

    // ---- clashes at single angles: frames and boards anyhow, about any line
    // -------------------------------------------

    private record Case(PlacedSolid moving, PlacedSolid still, HingeLine line) {
        static Case any(RandomGenerator random) {
            return new Case(
                    piece("Moving", random),
                    piece("Still", random),
                    new HingeLine(point(random, 400), direction(random)));
        }

        private static PlacedSolid piece(String name, RandomGenerator random) {
            double wide = random.nextInt(60, 300);
            double high = random.nextInt(60, 300);
            Outline outline = Outline.rectangle(Length.ofMillimetres(wide), Length.ofMillimetres(high));
            if (random.nextBoolean()) {
                Outline opening = Outline.rectangle(Length.ofMillimetres(wide / 2), Length.ofMillimetres(high / 2));
                outline = outline.opening(
                        "opening", opening.moved(Length.ofMillimetres(wide / 4), Length.ofMillimetres(high / 4)));
            }
            Solid solid = Solid.of(outline, Draw.length(random, Length.ofMillimetres(5), Length.ofMillimetres(60)));
            Pose pose = Pose.HOME.turnedAbout(Vector.ZERO, direction(random), Angle.ofDegrees(random.nextDouble(360)));
            return new PlacedSolid(name, 1, solid, pose.moved(point(random, 250)));
        }

        private static Vector point(RandomGenerator random, double most) {
            return new Vector(random.nextDouble(most), random.nextDouble(most), random.nextDouble(most));
        }

        /** What both share at that angle, in mm³. */
        double shared(double degrees) {
            PlacedSolid there = line.turned(moving, Angle.ofDegrees(degrees));
            double sum = 0;
            for (ConvexPiece other : still.solid().pieces()) {
                ConvexPiece seen = other.seenFrom(still.pose(), there.pose());
                for (ConvexPiece piece : there.solid().pieces()) {
                    sum += piece.shared(seen).map(ConvexPiece::volume).orElse(0.0);
                }
            }
            return sum;
        }
    }

    @Test
    void of_anyPieces_shareNothingBeforeAndSomethingAfter() {
        List<Boolean> met = new ArrayList<>();
        forAll(63, 150, Case::any, some -> {
            Optional<Sweep> found = Sweep.of(List.of(some.moving()), some.line(), WHOLE, List.of(some.still())).stream()
                    .findFirst();
            double first = found.map(s -> s.at().inDegrees()).orElse(360.0);
            for (double degrees = 0; degrees < first - HUNDREDTH; degrees += 5) {
                assertThat(some.shared(degrees)).isLessThan(1e-6);
            }
            if (found.isPresent()) {
                met.add(first > 0);
                assertThat(first == 0 ? 0 : some.shared(first - HUNDREDTH)).isLessThan(1e-6);
                assertThat(some.shared(first + HUNDREDTH)).isPositive();
            }
        });
        assertThat(met).filteredOn(m -> m).hasSizeGreaterThan(50);
    }

    private static PlacedSolid board(String name, double wide, double deep, double thick, Pose pose) {
        Outline outline = Outline.rectangle(Length.ofMillimetres(wide), Length.ofMillimetres(deep));
        return new PlacedSolid(name, 1, Solid.of(outline, Length.ofMillimetres(thick)), pose);
    }
}
