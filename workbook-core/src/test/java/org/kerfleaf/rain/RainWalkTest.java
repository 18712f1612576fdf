package org.kerfleaf.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Sizes in millimetres, chosen so that what is wet is plain arithmetic. */
class RainWalkTest {
    private static Length mm(double number) {
        return Length.ofMillimetres(number);
    }

    private static PlacedSolid box(String name, double x, double y, double z, double wide, double deep, double high) {
        Solid solid = Solid.of(Outline.rectangle(mm(wide), mm(deep)), mm(high));
        return new PlacedSolid(name, 0, solid, Pose.of(new Vector(x, y, z), Vector.X, Vector.Y));
    }

    /** A plate that falls toward the front by an angle, its lower front corner at that point. */
    private static PlacedSolid plate(String name, Vector at, double wide, double along, double thick, double degrees) {
        double slope = StrictMath.toRadians(degrees);
        Vector up = new Vector(0, StrictMath.cos(slope), StrictMath.sin(slope));
        Solid solid = Solid.of(Outline.rectangle(mm(wide), mm(along)), mm(thick));
        return new PlacedSolid(name, 0, solid, Pose.of(at, Vector.X, up));
    }

    private static <T extends Wet> List<T> all(Class<T> kind, PlacedSolid... solids) {
        return RainWalk.over(List.of(solids)).wet().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static double area(List<Wet.Surface> surfaces, String part) {
        return surfaces.stream()
                .filter(s -> s.solid().part().equals(part))
                .mapToDouble(Wet.Surface::squareMillimetres)
                .sum();
    }

    // ---- what sees the sky ---------------------------------------------------------------------------------------

    @Test
    void surface_levelTop_isWetAndWaterStands() {
        List<Wet.Surface> wet = all(Wet.Surface.class, box("Block", 0, 0, 0, 100, 50, 30));
        assertThat(wet).singleElement().satisfies(top -> {
            assertThat(top.squareMillimetres()).isCloseTo(5000, within(1e-6));
            assertThat(top.longest()).isCloseTo(100, within(1e-6));
            assertThat(top.stands()).isEqualTo(Wet.Stands.OPEN);
        });
    }

    @Test
    void surface_slopeUnderAPlate_isWetWhereThePlateDoesNotReach() {
        // The plate falls by 60 degrees: 200 along it are 100 in plan, of which the board above takes 40.
        PlacedSolid slope = plate("Slope", Vector.ZERO, 100, 200, 20, 60);
        PlacedSolid above = box("Above", 0, 0, 400, 100, 100 - 20 * StrictMath.sin(StrictMath.toRadians(60)) - 60, 10);
        double wet = area(all(Wet.Surface.class, slope, above), "Slope");
        // The upper face begins 20 · sin 60 before the plate's lower corner.
        double shaded = 100 - 20 * StrictMath.sin(StrictMath.toRadians(60)) - 60;
        double expected = 100 * (100 - shaded) / 0.5 + 100 * 20;
        assertThat(wet).isCloseTo(expected, within(0.01));
    }

    @Test
    void surface_randomBoxes_catchWhatTheirShadowIsLarge() {
        // Rain that falls on a build falls on some upward face of it: all wet areas in plan are the area of its shadow.
        Random random = new Random(35);
        for (int round = 0; round < 60; round++) {
            List<PlacedSolid> solids = new ArrayList<>();
            int count = 2 + random.nextInt(6);
            for (int i = 0; i < count; i++) {
                Vector at = new Vector(random.nextInt(200), random.nextInt(200), 40 * i + 300);
                solids.add(
                        random.nextBoolean()
                                ? box(
                                        "P" + i,
                                        at.x(),
                                        at.y(),
                                        at.z() - 300,
                                        20 + random.nextInt(150),
                                        20 + random.nextInt(150),
                                        10)
                                : plate(
                                        "P" + i,
                                        at.plus(Vector.Z.times(300 * i)),
                                        20 + random.nextInt(150),
                                        20 + random.nextInt(150),
                                        10,
                                        2 + random.nextInt(78)));
            }
            double wet = new RainFall(new Surfaces(solids))
                    .rained().stream()
                            .flatMap(r -> r.plan().stream())
                            .mapToDouble(Geometry::getArea)
                            .sum();
            assertThat(wet).as("round %s", round).isCloseTo(shadow(solids), within(0.5));
        }
    }

    private static double shadow(List<PlacedSolid> solids) {
        GeometryFactory factory = new GeometryFactory();
        List<Geometry> shadows = new ArrayList<>();
        for (PlacedSolid solid : solids) {
            Coordinate[] corners = solid.corners().stream()
                    .map(c -> new Coordinate(c.x(), c.y()))
                    .toArray(Coordinate[]::new);
            shadows.add(factory.createMultiPointFromCoords(corners).convexHull());
        }
        return OverlayNGRobust.union(shadows).getArea();
    }

    // ---- where it goes -------------------------------------------------------------------------------------------

    @Test
    void ways_offASlope_fallOnWhatLiesBelowAndOnToTheGround() {
        PlacedSolid slope = plate("Slope", new Vector(0, 100, 300), 100, 200, 20, 30);
        PlacedSolid step = box("Step", -50, 0, 0, 200, 110, 50);
        List<Way> ways = RainWalk.over(List.of(slope, step)).ways();
        // Water clings to the plate's lower end, which leans back under it, and falls from its lower edge at y = 100.
        assertThat(ways)
                .anySatisfy(way -> {
                    assertThat(way.kind()).isEqualTo(Way.Kind.FALLS);
                    assertThat(way.to().z()).isCloseTo(50, within(1e-6));
                    assertThat(way.across().length()).isCloseTo(100, within(1e-6));
                })
                .anySatisfy(way -> {
                    assertThat(way.kind()).isEqualTo(Way.Kind.FALLS);
                    assertThat(way.to().z()).isCloseTo(0, within(1e-6));
                });
    }

    // ---- seams ---------------------------------------------------------------------------------------------------

    @Test
    void seam_betweenTwoTopsInLine_isWet() {
        List<Wet.Seam> seams =
                all(Wet.Seam.class, box("Left", 0, 0, 0, 100, 50, 30), box("Right", 100, 0, 0, 100, 50, 30));
        // Along the top, and down both ends where the water runs off.
        assertThat(seams).hasSize(3);
        assertThat(seams.stream().mapToDouble(Wet.Seam::length).sum()).isCloseTo(50 + 2 * 30, within(1e-3));
    }

    @Test
    void seam_underAnOverhang_isDry() {
        List<Wet.Seam> seams = all(
                Wet.Seam.class,
                box("Left", 0, 0, 0, 100, 50, 30),
                box("Right", 100, 0, 0, 100, 50, 30),
                box("Lid", -20, -20, 100, 240, 90, 10));
        assertThat(seams).isEmpty();
    }

    @Test
    void seam_ofALap_leadsUphillAndStaysDry() {
        // A strip that lies on a slope: at its lower edge the joint climbs, at its upper edge and its ends it does not.
        double slope = StrictMath.toRadians(30);
        Vector up = new Vector(0, StrictMath.cos(slope), StrictMath.sin(slope));
        Vector out = new Vector(0, -StrictMath.sin(slope), StrictMath.cos(slope));
        PlacedSolid roof = plate("Roof", Vector.ZERO, 100, 200, 20, 30);
        PlacedSolid strip = plate("Strip", out.times(20).plus(up.times(80)), 100, 40, 5, 30);
        List<Wet.Seam> seams = all(Wet.Seam.class, roof, strip);
        double lower = up.times(80).plus(out.times(20)).z();
        assertThat(seams)
                .isNotEmpty()
                .noneMatch(s -> Math.abs(s.from().z() - lower) < 0.1 && Math.abs(s.to().z() - lower) < 0.1);
        assertThat(seams).anyMatch(s -> s.length() > 99 && s.from().z() > lower + 10);
    }

    // ---- traps ---------------------------------------------------------------------------------------------------

    private static PlacedSolid[] tray(double frontHigh, boolean drained) {
        Outline outline = Outline.rectangle(mm(100), mm(60));
        Outline floor =
                drained ? outline.opening("drain", Outline.circle(mm(10)).moved(mm(50), mm(30))) : outline;
        PlacedSolid bottom =
                new PlacedSolid("Floor", 0, Solid.of(floor, mm(10)), Pose.of(Vector.ZERO, Vector.X, Vector.Y));
        return new PlacedSolid[] {
            bottom,
            box("Left", -10, -10, 0, 10, 80, 40),
            box("Right", 100, -10, 0, 10, 80, 40),
            box("Back", 0, 60, 0, 100, 10, 40),
            box("Front", 0, -10, 0, 100, 10, frontHigh)
        };
    }

    @Test
    void trap_trayWithRims_isOne() {
        assertThat(all(Wet.Trap.class, tray(40, false)))
                .singleElement()
                .satisfies(trap -> assertThat(trap.solids().get(0).part()).isEqualTo("Floor"));
    }

    @Test
    void trap_trayWithADrain_isNone() {
        assertThat(all(Wet.Trap.class, tray(40, true))).isEmpty();
        assertThat(all(Wet.Surface.class, tray(40, true)))
                .filteredOn(s -> s.solid().part().equals("Floor"))
                .extracting(Wet.Surface::stands)
                .containsExactly(Wet.Stands.IN_A_BASIN);
    }

    @Test
    void trap_trayOpenInFront_isNone() {
        assertThat(all(Wet.Trap.class, tray(10, false))).isEmpty();
    }

    @Test
    void trap_ledgeAcrossASlope_holdsWaterOnlyBetweenCheeks() {
        double slope = StrictMath.toRadians(20);
        Vector up = new Vector(0, StrictMath.cos(slope), StrictMath.sin(slope));
        Vector out = new Vector(0, -StrictMath.sin(slope), StrictMath.cos(slope));
        PlacedSolid roof = plate("Roof", Vector.ZERO, 100, 200, 20, 20);
        PlacedSolid ledge = plate("Ledge", out.times(20).plus(up.times(50)), 100, 10, 15, 20);
        assertThat(all(Wet.Trap.class, roof, ledge)).isEmpty();
        PlacedSolid leftOn = plate("Cheek", out.times(20).plus(up.times(50)), 5, 150, 15, 20);
        PlacedSolid rightOn =
                plate("Cheek 2", out.times(20).plus(up.times(50)).plus(Vector.X.times(95)), 5, 150, 15, 20);
        PlacedSolid between = plate("Ledge", out.times(20).plus(up.times(50)).plus(Vector.X.times(5)), 90, 10, 15, 20);
        assertThat(all(Wet.Trap.class, roof, between, leftOn, rightOn)).hasSize(1);
    }

    // ---- drip groove ---------------------------------------------------------------------------------------------

    @Test
    void creep_levelOverhang_comesToTheWall() {
        List<Wet.Creep> creeps =
                all(Wet.Creep.class, box("Lid", 0, 0, 100, 200, 100, 20), box("Wall", 20, 20, 0, 160, 60, 100));
        assertThat(creeps).hasSize(4).allSatisfy(c -> assertThat(c.far()).isCloseTo(20, within(1e-6)));
        assertThat(creeps.stream().mapToDouble(Wet.Creep::length).sum()).isCloseTo(2 * 160 + 2 * 60, within(1e-6));
    }

    @Test
    void creep_wideOverhang_dripsBefore() {
        assertThat(all(Wet.Creep.class, box("Lid", 0, 0, 100, 400, 400, 20), box("Wall", 150, 150, 0, 100, 100, 100)))
                .isEmpty();
    }

    @Test
    void creep_slopingOverhang_dripsAtItsLowerEdge() {
        // The under side climbs from the lower edge to the wall, so water would have to climb with it.
        PlacedSolid roof = plate("Roof", new Vector(0, 0, 100), 100, 200, 20, 30);
        assertThat(all(Wet.Creep.class, roof)).isEmpty();
    }

    @Test
    void over_sameSolidsTwice_isTheSameToTheLastDigit() {
        List<PlacedSolid> solids = List.of(tray(40, true));
        assertThat(RainWalk.over(solids).ways()).isEqualTo(RainWalk.over(solids).ways());
        assertThat(RainWalk.over(solids).wet().stream().map(Wet::at).toList())
                .isEqualTo(RainWalk.over(solids).wet().stream().map(Wet::at).toList());
    }

    @Test
    void face_ofEverySurface_looksUp() {
        for (Wet.Surface wet : all(Wet.Surface.class, tray(40, true))) {
            Face face = wet.face();
            assertThat(face.normal().z()).isPositive();
        }
    }
}
