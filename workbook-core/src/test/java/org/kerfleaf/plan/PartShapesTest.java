package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BACK;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.FRONT;
import static org.kerfleaf.sketch.Side.INSIDE;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.sketch.Side.OUTSIDE;
import static org.kerfleaf.sketch.Side.RIGHT;
import static org.kerfleaf.sketch.Side.TOP;
import static org.kerfleaf.sketch.Way.FRONT_TO_BACK;
import static org.kerfleaf.sketch.Way.LEFT_TO_RIGHT;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Side;

/** Shapes as a maker says them, placed: volumes against closed forms, and every cut on the side it was said of. */
class PartShapesTest {
    private static final double INCH = 25.4;
    private static final Offset<Double> CUBIC_INCH = within(1e-6);

    private static PlacedSolid placed(Function<Bench, Part> said) {
        Plan plan = Bench.plan(b -> b.keep(place(b.keep(said.apply(b)))));
        assertThat(plan.problems()).isEmpty();
        return plan.placed().get(0).solid();
    }

    private static double cubicInches(PlacedSolid solid) {
        return solid.volume().cubicMillimetres() / (INCH * INCH * INCH);
    }

    @Test
    void disc_isAsRoundAsItsCircle() {
        PlacedSolid disc = placed(b -> panel("Disc", b.ply()).round("12 in"));
        assertThat(cubicInches(disc)).isCloseTo(Math.PI * 36 * 0.75, CUBIC_INCH);
    }

    @Test
    void taper_isATrapezoid() {
        PlacedSolid leg =
                placed(b -> panel("Leg", b.ply()).wide("6 in").high("20 in").wideAtTop("3 in"));
        assertThat(cubicInches(leg)).isCloseTo((6 + 3) / 2.0 * 20 * 0.75, CUBIC_INCH);
        assertThat(leg.face("TOP").bounds().sizes().x()).isCloseTo(3 * INCH, within(1e-6));
    }

    @Test
    void roundedCorners_giveBackWhatFourQuarterCirclesLack() {
        PlacedSolid top =
                placed(b -> panel("Top", b.ply()).wide("20 in").deep("12 in").roundedCorners("2 in"));
        assertThat(cubicInches(top)).isCloseTo((240 - (4 - Math.PI) * 4) * 0.75, CUBIC_INCH);
    }

    @Test
    void corners_giveAnyOutline() {
        PlacedSolid bracket = placed(b -> panel("Bracket", b.ply())
                .deep("8 in")
                .high("10 in")
                .corners(at("0 in", "0 in"), at("8 in", "8 in"), at("8 in", "10 in"), at("0 in", "10 in")));
        // The rectangle less the triangle below its front edge.
        assertThat(cubicInches(bracket)).isCloseTo((80 - 32) * 0.75, CUBIC_INCH);
        // A part that faces a side has its first size from front to back: it reaches down at the front only.
        assertThat(bracket.holds(new Vector(
                        middle(bracket).x(),
                        bracket.bounds().low().y() + 1,
                        bracket.bounds().low().z() + 5)))
                .isTrue();
        assertThat(bracket.holds(new Vector(
                        middle(bracket).x(),
                        bracket.bounds().high().y() - 1,
                        bracket.bounds().low().z() + 5)))
                .isFalse();
    }

    private static Vector middle(PlacedSolid solid) {
        return solid.bounds().middle();
    }

    @Test
    void corners_outsideTheSizes_showWhichAndWhatWouldBeRight() {
        assertThat(Bench.problems(b -> b.keep(panel("Bracket", b.ply())
                        .wide("8 in")
                        .high("10 in")
                        .corners(at("0 in", "0 in"), at("9 in", "0 in"), at("0 in", "10 in")))))
                .containsExactly("A corner of “Bracket” is at 9 in, 0 in, outside its 8 in by 10 in."
                        + " Corners within its two sizes would be right.");
    }

    /** A wall in front, behind, left and right of a floor, grooved at the bottom: the groove always is on the inside. */
    @ParameterizedTest
    @CsvSource({"FRONT", "BACK", "LEFT", "RIGHT"})
    void groove_onTheInside_facesTheMiddleOfTheBuild(Side side) {
        Plan plan = Bench.plan(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("12 in"));
            boolean sideways = side == LEFT || side == RIGHT;
            Part plain = sideways
                    ? panel("Wall", b.ply()).deep("12 in").high("15 in")
                    : panel("Wall", b.ply()).wide("20 in").high("15 in");
            Part wall = b.keep(
                    plain.groove("for the bottom", INSIDE, from(BOTTOM, "1 in"), wide("3/4 in"), deep("1/4 in")));
            Placing floorIn = b.keep(place(floor));
            Placing wallIn = place(wall);
            b.keep(
                    switch (side) {
                        case FRONT -> wallIn.inFrontOf(floorIn).flushAt(BOTTOM);
                        case BACK -> wallIn.behind(floorIn).flushAt(BOTTOM);
                        case LEFT -> wallIn.leftOf(floorIn).flushAt(BOTTOM);
                        default -> wallIn.rightOf(floorIn).flushAt(BOTTOM);
                    });
        });
        assertThat(plan.problems()).isEmpty();
        PlacedSolid wall = piece(plan, "Wall");
        double width = side == LEFT || side == RIGHT ? 12 : 20;
        assertThat(cubicInches(wall)).isCloseTo(width * (15 * 0.75 - 0.75 / 4), CUBIC_INCH);
        Vector toMiddle =
                piece(plan, "Floor").bounds().middle().minus(wall.bounds().middle());
        Vector level = new Vector(toMiddle.x(), toMiddle.y(), 0).normalised();
        Vector inGroove =
                new Vector(wall.bounds().middle().x(), wall.bounds().middle().y(), 1.3 * INCH);
        assertThat(wall.holds(inGroove.plus(level.times(0.3 * INCH)))).isFalse();
        assertThat(wall.holds(inGroove.minus(level.times(0.3 * INCH)))).isTrue();
    }

    @Test
    void rabbetAlongAnEdge_isOnThatEdge() {
        Plan plan = Bench.plan(b -> {
            Part lid = b.keep(panel("Lid", b.ply())
                    .wide("20 in")
                    .deep("12 in")
                    .rabbet(BOTTOM, BACK, wide("1/2 in"), deep("3/8 in")));
            b.keep(place(lid));
        });
        PlacedSolid lid = piece(plan, "Lid");
        assertThat(cubicInches(lid)).isCloseTo(20 * (12 * 0.75 - 0.5 * 0.375), CUBIC_INCH);
        double back = lid.bounds().high().y();
        assertThat(lid.holds(new Vector(10, back - 5, 3))).isFalse();
        assertThat(lid.holds(new Vector(10, back - 5, 15))).isTrue();
        assertThat(plan.part("Lid").orElseThrow().then())
                .containsExactly("rabbet at back, bottom face, 1/2 in wide, 3/8 in deep");
    }

    @Test
    void bevel_keepsTheFaceThatWasNamed() {
        PlacedSolid front =
                placed(b -> panel("Sill", b.ply()).wide("20 in").deep("6 in").bevelled(FRONT, "30 deg", BOTTOM));
        double less = 0.75 * Math.tan(Math.toRadians(30));
        assertThat(front.face("OUTSIDE").bounds().sizes().y()).isCloseTo(6 * INCH, within(1e-6));
        assertThat(front.face("INSIDE").bounds().sizes().y()).isCloseTo((6 - less) * INCH, within(1e-6));
        assertThat(front.face("INSIDE").bounds().high().y())
                .isCloseTo(front.face("OUTSIDE").bounds().high().y(), within(1e-6));
    }

    /** A picture frame's piece: both ends mitred, long points on one edge, whichever way the board runs. */
    @ParameterizedTest
    @CsvSource({"LEFT_TO_RIGHT, true", "LEFT_TO_RIGHT, false", "FRONT_TO_BACK, true", "FRONT_TO_BACK, false"})
    void mitre_longPoint_staysAtTheEdgeSaid(String way, boolean flat) {
        boolean acrossRoom = way.equals("LEFT_TO_RIGHT");
        Plan plan = Bench.plan(b -> {
            Lumber strip = b.keep(lumber("1x2").lengths("8 ft"));
            Side low = acrossRoom ? LEFT : FRONT;
            Side high = acrossRoom ? RIGHT : BACK;
            Side longAt = !flat ? TOP : acrossRoom ? BACK : RIGHT;
            Part rail = b.keep(board("Rail", strip)
                    .cutTo("20 in")
                    .mitred(low, "45 deg", longAt)
                    .mitred(high, "45 deg", longAt));
            Placing in = place(rail).running(acrossRoom ? LEFT_TO_RIGHT : FRONT_TO_BACK);
            b.keep(flat ? in.flat() : in);
        });
        assertThat(plan.problems()).isEmpty();
        PlacedSolid rail = piece(plan, "Rail");
        assertThat(cubicInches(rail)).isCloseTo(0.75 * 1.5 * (20 - 1.5), CUBIC_INCH);
        Vector wide = !flat ? Vector.Z : acrossRoom ? Vector.Y : Vector.X;
        Vector run = acrossRoom ? Vector.X : Vector.Y;
        Vector corner = rail.bounds().middle().plus(run.times(-9.8 * INCH));
        assertThat(rail.holds(corner.plus(wide.times(0.6 * INCH)))).isTrue();
        assertThat(rail.holds(corner.minus(wide.times(0.6 * INCH)))).isFalse();
        assertThat(plan.part("Rail").orElseThrow().edges())
                .hasSize(2)
                .allSatisfy(
                        edge -> assertThat(edge.shorter().value().inInches()).isEqualTo(1.5));
    }

    @Test
    void edge_thatAPartDoesNotHave_isRefusedWithThoseItHas() {
        assertThat(Bench.problems(b ->
                        b.keep(panel("Sill", b.ply()).wide("20 in").deep("6 in").bevelled(TOP, "30 deg", BOTTOM))))
                .containsExactly(
                        "“Sill” has no edge at top as it stands. One of [LEFT, RIGHT, FRONT, BACK] would be right.");
    }

    /** Sides with a dado are left and right; without, equal; with a sloping top, equal when turned over. */
    @Test
    void pair_saysWhetherItsTwoAreOneShape() {
        assertThat(then(b -> panel("Side", b.ply()).deep("10 in").high("20 in").pair()))
                .containsExactly("two equal pieces");
        assertThat(then(b -> panel("Side", b.ply())
                        .deep("10 in")
                        .highFrontToBack(Length.parse("8 in"), Length.parse("10 in"))
                        .pair()))
                .contains("two equal pieces, one of them turned over");
        assertThat(then(b -> panel("Side", b.ply())
                        .deep("10 in")
                        .high("20 in")
                        .rabbet(INSIDE, BACK, wide("3/8 in"), deep("3/8 in"))
                        .dado("for the bottom", INSIDE, from(BOTTOM, "1 in"), wide("3/4 in"), deep("1/4 in"))
                        .pair()))
                .contains("one left, one right");
    }

    private static List<String> then(Function<Bench, Part> said) {
        return Bench.plan(b -> b.keep(said.apply(b))).parts().get(0).then();
    }

    @Test
    void pairFromOneBlank_withARabbet_givesTwoOfOneHand() {
        Plan plan = Bench.plan(b -> b.keep(panel("Side", b.ply())
                .deep("10 in")
                .highFrontToBack(Length.parse("8 in"), Length.parse("10 in"))
                .rabbet(INSIDE, BACK, wide("3/8 in"), deep("3/8 in"))
                .pairFromOneBlank()));
        assertThat(plan.check("Hands from one blank: Side").orElseThrow().verdict())
                .isEqualTo(Check.Verdict.SHORT);
    }

    @Test
    void opening_withUnequalSides_saysByHowMuch() {
        assertThat(then(b -> panel("Door", b.ply())
                        .wide("18 in")
                        .high("20 in")
                        .opening(
                                "window",
                                rectangle(Length.parse("10 in"), Length.parse("12 in"))
                                        .from(LEFT, "3 in")
                                        .up("4 in"))))
                .containsExactly(
                        "opening “window” 10 × 12 in, 1 in off the middle, to the left: 3 in left there, 5 in at the other side");
    }

    @Test
    void weight_isTheVolumesOwn() {
        Plan plan = Bench.plan(b -> b.keep(panel("Side", b.ply())
                .deep("10 in")
                .high("20 in")
                .rabbet(INSIDE, BACK, wide("3/8 in"), deep("3/8 in"))));
        double cubicInches = 10 * 20 * 0.75 - 20 * 0.375 * 0.375;
        var weight = plan.part("Side").orElseThrow().weight().orElseThrow();
        double perCubicInch = weight.value().inPounds() / cubicInches;
        Plan plain = Bench.plan(b -> b.keep(panel("Side", b.ply()).deep("10 in").high("20 in")));
        assertThat(plain.part("Side")
                        .orElseThrow()
                        .weight()
                        .orElseThrow()
                        .value()
                        .inPounds())
                .isCloseTo(perCubicInch * 150, within(1e-6));
    }

    /** Bevelled and mitred at random: the volume is what integrating the cut off wedge leaves. */
    @Test
    void bevel_atRandomTilts_takesAWedge() {
        Random random = new Random(5);
        for (int i = 0; i < 50; i++) {
            double degrees = 1 + Math.floor(random.nextDouble() * 59 * 4) / 4;
            Side edge = List.of(LEFT, RIGHT, TOP, BOTTOM).get(random.nextInt(4));
            Side longOn = random.nextBoolean() ? INSIDE : OUTSIDE;
            PlacedSolid wall = placed(
                    b -> panel("Wall", b.ply()).wide("20 in").high("15 in").bevelled(edge, degrees + " deg", longOn));
            double along = edge == LEFT || edge == RIGHT ? 15 : 20;
            double wedge = along * 0.75 * 0.75 * Math.tan(Math.toRadians(degrees)) / 2;
            assertThat(cubicInches(wall)).as(degrees + " at " + edge).isCloseTo(20 * 15 * 0.75 - wedge, CUBIC_INCH);
        }
    }

    private static PlacedSolid piece(Plan plan, String part) {
        return plan.placed().stream()
                .map(PlacedPart::solid)
                .filter(solid -> solid.part().equals(part))
                .findFirst()
                .orElseThrow();
    }
}
