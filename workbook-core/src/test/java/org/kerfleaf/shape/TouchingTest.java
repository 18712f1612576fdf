package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.shape.CabinetSolids.at;
import static org.kerfleaf.shape.CabinetSolids.in;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.geom.Polygon;

/** Contacts of the cabinet: areas reworked by hand in its page of figures. */
class TouchingTest {
    private static final List<PlacedSolid> CABINET = CabinetSolids.all();
    private static final List<Touching> TOUCHING = Touching.all(CABINET);
    private static final PlacedSolid FLOOR = CABINET.get(0);

    private static double area(String a, int pieceA, String b, int pieceB) {
        return pair(a, pieceA, b, pieceB).area().inSquareInches();
    }

    private static Touching pair(String a, int pieceA, String b, int pieceB) {
        return TOUCHING.stream()
                .filter(t -> t.a().part().equals(a) && t.a().piece() == pieceA)
                .filter(t -> t.b().part().equals(b) && t.b().piece() == pieceB)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void all_cabinet_fortyContactsAndNoClash() {
        assertThat(TOUCHING).allMatch(t -> t.clash().isEmpty());
        assertThat(TOUCHING.stream().mapToInt(t -> t.touches().size()).sum()).isEqualTo(40);
        assertThat(TOUCHING.stream().flatMap(t -> t.touches().stream()))
                .allMatch(t -> t.worstGap().isShorterThan(Length.ofMillimetres(1e-5)));
    }

    @Test
    void all_cabinet_linesOnlyAtTheRidge() {
        // There the mitred end of each trim meets the corner of the other roof half.
        assertThat(TOUCHING.stream().filter(t -> t.touches().isEmpty()).map(t -> t.a() + ", " + t.b()))
                .containsExactly(
                        "Roof 1, Rake trim 2", "Roof 1, Rake trim 3", "Roof 2, Rake trim 1", "Roof 2, Rake trim 4");
        assertThat(TOUCHING.stream().flatMap(t -> t.lines().stream()))
                .allMatch(l -> Math.abs(l.from().x() - 11 * 25.4) < 1e-6 && Math.abs(l.to().x() - 11 * 25.4) < 1e-6);
    }

    @Test
    void all_cabinet_areasWorkedByHand() {
        double t = 0.71875;
        double cos = StrictMath.cos(StrictMath.PI / 6);
        assertThat(area("Floor", 1, "Back", 1)).isEqualTo(22 * t, within(1e-9));
        assertThat(area("Side", 1, "Roof", 2)).isEqualTo(11 * t / cos, within(1e-6));
        assertThat(area("Side", 2, "Roof", 1)).isEqualTo(9.12935, within(5e-6));
        assertThat(area("Back", 1, "Roof", 1)).isEqualTo(9.72587, within(5e-6));
        assertThat(area("Front", 1, "Roof", 2)).isEqualTo(9.72587, within(5e-6));
        assertThat(area("Roof", 1, "Roof", 2)).isEqualTo(13.64216, within(5e-6));
        assertThat(area("Post", 1, "Seat", 1)).isEqualTo(12.25, within(1e-9));
    }

    @Test
    void between_floorAndBack_alongAndAcrossAndWhere() {
        Touch touch = pair("Floor", 1, "Back", 1).touches().get(0);
        assertThat(touch.faceOfA().name()).isEqualTo("TOP");
        assertThat(touch.faceOfB().name()).isEqualTo("INSIDE");
        assertThat(touch.along()).isEqualTo(in(22));
        assertThat(touch.across()).isEqualTo(CabinetSolids.T);
        assertThat(touch.frame().u().x()).isEqualTo(1, within(1e-12));
        assertThat(touch.frame().w().y()).as("out of the floor, into the back").isEqualTo(1, within(1e-12));
    }

    @Test
    void between_roofAndGable_alongTheSlope() {
        Touch touch = pair("Back", 1, "Roof", 1).touches().get(0);
        assertThat(touch.along().inInches()).isEqualTo(13.53165, within(5e-6));
        assertThat(touch.frame().u().z()).isEqualTo(-0.5, within(1e-9));
    }

    @Test
    void between_exchanged_sameAreas() {
        for (Touching pair : TOUCHING) {
            Touching back = Touching.between(pair.b(), pair.a());
            assertThat(back.area().squareMillimetres()).isEqualTo(pair.area().squareMillimetres(), within(1e-6));
            assertThat(back.touches()).hasSameSizeAs(pair.touches());
        }
    }

    @Test
    void gap_sideATenthOff_threeTenths() {
        PlacedSolid off = CabinetSolids.side(1, 0.1);
        for (int i : new int[] {0, 5, 6}) {
            Touching pair = Touching.between(off, CABINET.get(i));
            assertThat(pair.isAny()).isFalse();
            Gap gap = pair.gap().orElseThrow();
            assertThat(gap.size().inMillimetres()).isEqualTo(0.1, within(1e-6));
            assertThat(gap.direction().x()).isEqualTo(1, within(1e-12));
            assertThat(gap.facing()).isTrue();
        }
    }

    @Test
    void gap_withinTheTolerance_touches() {
        assertThat(Touching.between(FLOOR, CabinetSolids.side(1, 0.0099)).touches())
                .hasSize(1);
        assertThat(Touching.between(FLOOR, CabinetSolids.side(1, 0.0101)).touches())
                .isEmpty();
    }

    @Test
    void gap_corners_distanceOfTheBoxes() {
        PlacedSolid away = new PlacedSolid("Away", 1, FLOOR.solid(), Pose.HOME.moved(at(25, 15, 0)));
        Gap gap = Touching.between(FLOOR, away).gap().orElseThrow();
        assertThat(gap.facing()).isFalse();
        assertThat(gap.size().inInches()).isEqualTo(5, within(1e-6));
    }

    @Test
    void clash_shelfAQuarterInTheBack_flushOnTwoFaces() {
        Solid shelf = Solid.of(Outline.rectangle(in(22), in(8.25)), CabinetSolids.T);
        PlacedSolid placed = new PlacedSolid("Shelf", 1, shelf, Pose.HOME.moved(at(0, 3, 9)));
        Clash clash = Touching.between(placed, CABINET.get(3)).clash().orElseThrow();
        assertThat(clash.sizes()).containsExactly(in(22), in(0.25), CabinetSolids.T);
        assertThat(clash.volume().inCubicInches()).isEqualTo(22 * 0.25 * 0.71875, within(1e-9));
    }

    @Test
    void clash_shelfInADado_fitsOrIsTooLong() {
        Length t = Length.ofMillimetres(18.25);
        Solid side = Solid.of(Outline.rectangle(Length.ofMillimetres(300), Length.ofMillimetres(600)), t)
                .groove("dado", "BOTTOM", Length.ofMillimetres(200), t, Length.ofMillimetres(6), SheetSide.INSIDE);
        PlacedSolid placed = new PlacedSolid("Side", 1, side, Pose.of(Vector.ZERO, Vector.Y, Vector.Z));
        Vector from = new Vector(12.25, 0, 200);
        Touching fits = Touching.between(placed, shelf(400, t, from));
        assertThat(fits.clash()).isEmpty();
        assertThat(fits.touches())
                .extracting(touch -> touch.faceOfA().name())
                .containsExactlyInAnyOrder("dado FLOOR", "dado NEAR", "dado FAR");
        Touching tooLong = Touching.between(shelf(400.5, t, from.minus(new Vector(0.5, 0, 0))), placed);
        assertThat(tooLong.clash().orElseThrow().sizes())
                .containsExactly(Length.ofMillimetres(0.5), Length.ofMillimetres(300), t);
        assertThat(tooLong.clash().orElseThrow().volume().cubicMillimetres())
                .isEqualTo(0.5 * 300 * 18.25, within(1e-6));
    }

    private static PlacedSolid shelf(double wide, Length t, Vector at) {
        Solid shelf = Solid.of(Outline.rectangle(Length.ofMillimetres(wide), Length.ofMillimetres(300)), t);
        return new PlacedSolid("Shelf", 1, shelf, Pose.HOME.moved(at));
    }

    @Test
    void clash_doorTurnedIntoTheFront_isFound() {
        PlacedSolid door = CABINET.get(15);
        assertThat(door.part()).isEqualTo("Door");
        Vector hinge = at(2, -0.71875 - 0.125, 2);
        PlacedSolid opened = door.at(door.pose().turnedAbout(hinge, Vector.Z, Angle.ofDegrees(-100)));
        PlacedSolid further = door.at(door.pose().turnedAbout(hinge, Vector.Z, Angle.ofDegrees(-102)));
        // It meets its own front at 90 + asin((1/8)/t) = 100.0154 degrees.
        assertThat(Touching.between(opened, CABINET.get(4)).clash()).isEmpty();
        assertThat(Touching.between(further, CABINET.get(4)).clash()).isPresent();
    }

    @Test
    void hidden_floorsTop_underNothing_itsEdgesWhole() {
        assertThat(Touching.hidden(FLOOR, "TOP", TOUCHING).inSquareInches()).isEqualTo(22 * 0.71875, within(1e-9));
        assertThat(Touching.hidden(FLOOR, "INSIDE", TOUCHING).inSquareInches()).isZero();
        // A side's inner face: the floor's end and the ends of two shelves.
        assertThat(Touching.hidden(CABINET.get(1), "INSIDE", TOUCHING).inSquareInches())
                .isEqualTo((11 + 8 + 8) * 0.71875, within(1e-9));
    }

    @Test
    void hidden_everyFace_contactsDoNotOverlap() {
        // A free check: contacts of one face overlap only where two pieces clash.
        for (PlacedSolid piece : CABINET) {
            for (Face face : piece.faces()) {
                double sum = TOUCHING.stream()
                        .flatMap(pair -> pair.touches().stream())
                        .filter(t -> t.faceOfA() == face || t.faceOfB() == face)
                        .mapToDouble(t -> t.area().squareMillimetres())
                        .sum();
                double union = Touching.hidden(piece, face, TOUCHING).stream()
                        .mapToDouble(Polygon::getArea)
                        .sum();
                assertThat(union).as("%s %s", piece, face).isEqualTo(sum, within(1e-3));
            }
        }
    }

    @Test
    void all_planter_floorTouchesAlongSixLines() {
        List<Touching> planter = Touching.all(PlanterSolids.all());
        List<LineTouch> lines =
                planter.stream().flatMap(t -> t.lines().stream()).toList();
        assertThat(lines).hasSize(6).allMatch(l -> l.edgeOf().part().equals("Floor"));
        assertThat(lines.stream().mapToDouble(LineTouch::length).sum()).isEqualTo(851.099, within(5e-4));
        assertThat(planter).allMatch(t -> t.clash().isEmpty());
        assertThat(planter.stream().filter(t -> !t.touches().isEmpty())).hasSize(6);
    }

    @Test
    void between_boxesMeetingAtAnEdge_oneLine() {
        Solid cube = Solid.of(Outline.rectangle(in(1), in(1)), in(1));
        PlacedSolid a = new PlacedSolid("A", 1, cube, Pose.HOME);
        PlacedSolid b = new PlacedSolid("B", 1, cube, Pose.HOME.moved(at(1, 1, 0)));
        Touching pair = Touching.between(a, b);
        assertThat(pair.touches()).isEmpty();
        assertThat(pair.lines()).hasSize(1);
        assertThat(pair.lines().get(0).length()).isEqualTo(25.4, within(1e-9));
        assertThat(pair.gap()).isEqualTo(Optional.empty());
    }
}
