package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BACK;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.FRONT;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.sketch.Side.OUTSIDE;
import static org.kerfleaf.sketch.Side.RIGHT;
import static org.kerfleaf.sketch.Way.FRONT_TO_BACK;
import static org.kerfleaf.sketch.Way.LEFT_TO_RIGHT;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;

/** Words that place in rows, on one slope, in a ring and between; and what is said when they make no sense. */
class PlacementWordsTest {
    private static final double INCH = 25.4;

    private static List<PlacedSolid> pieces(Plan plan, String part) {
        return plan.placed().stream()
                .map(PlacedPart::solid)
                .filter(s -> s.part().equals(part))
                .toList();
    }

    @Test
    void evenlyBetween_leavesEqualGaps() {
        Plan plan = Bench.plan(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("30 in").deep("10 in"));
            Part side = b.keep(panel("Side", b.ply()).deep("10 in").high("12 in"));
            Part divider = b.keep(panel("Divider", b.ply()).deep("10 in").high("12 in"));
            Placing floorIn = b.keep(place(floor));
            Placing left = b.keep(place(side).leftOf(floorIn).flushAt(BOTTOM));
            Placing right = b.keep(place(side).rightOf(floorIn).flushAt(BOTTOM));
            b.keep(place(divider).evenlyBetween(left, right, 3).flushAt(BOTTOM));
        });
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.part("Divider").orElseThrow().count()).isEqualTo(3);
        double gap = (30 - 3 * 0.75) / 4 * INCH;
        double from = pieces(plan, "Side").get(0).bounds().high().x();
        for (PlacedSolid divider : pieces(plan, "Divider")) {
            assertThat(divider.bounds().low().x() - from).isCloseTo(gap, within(1e-6));
            from = divider.bounds().high().x();
        }
    }

    @Test
    void evenlyBetween_withoutRoom_saysHowMuchThereIs() {
        assertThat(Bench.problems(b -> {
                    Part floor = b.keep(panel("Floor", b.ply()).wide("2 in").deep("10 in"));
                    Part side = b.keep(panel("Side", b.ply()).deep("10 in").high("12 in"));
                    Placing floorIn = b.keep(place(floor));
                    Placing left = b.keep(place(side).leftOf(floorIn));
                    Placing right = b.keep(place(side).rightOf(floorIn));
                    b.keep(place(side).evenlyBetween(left, right, 3));
                }))
                .containsExactly("3 × “Side”, 3/4 in left to right, do not fit in the 2 in between."
                        + " Fewer, or narrower, would do.");
    }

    @Test
    void sideBySide_isOneRowInTheMiddleOrFlush() {
        Plan plan = Bench.plan(b -> {
            Lumber slat = b.keep(lumber("1x2").lengths("8 ft"));
            Part rail = b.keep(board("Rail", slat).cutTo("20 in"));
            Part across = b.keep(board("Slat", slat).cutTo("10 in"));
            Placing railIn = b.keep(place(rail).running(LEFT_TO_RIGHT));
            b.keep(place(across).running(FRONT_TO_BACK).flat().onTopOf(railIn).sideBySide(5, "1 in"));
        });
        List<PlacedSolid> slats = pieces(plan, "Slat");
        double row = (5 * 1.5 + 4 * 1) * INCH;
        double middle = pieces(plan, "Rail").get(0).bounds().middle().x();
        assertThat(slats.get(0).bounds().low().x()).isCloseTo(middle - row / 2, within(1e-5));
        IntStream.range(1, 5)
                .forEach(i -> assertThat(slats.get(i).bounds().low().x()
                                - slats.get(i - 1).bounds().high().x())
                        .isCloseTo(INCH, within(1e-5)));
    }

    /** A lid over walls that slope the other way, or sideways; on every support it lies. */
    @Test
    void restsOn_anySlopeAnyWay_touchesAllThatCarriesIt() {
        Random random = new Random(71);
        for (int i = 0; i < 50; i++) {
            Length front = Length.ofSixtyFourths(64 * 6 + random.nextInt(64 * 8));
            Length back = Length.ofSixtyFourths(64 * 6 + random.nextInt(64 * 8));
            Plan plan = Bench.plan(b -> {
                Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("16 in"));
                Part side = b.keep(panel("Side", b.ply()).deep("16 in").highFrontToBack(front, back));
                Part lid = b.keep(panel("Lid", b.ply())
                        .overSlope(side)
                        .past(FRONT, Length.parse("2 in"))
                        .past(BACK, Length.parse("1 in"))
                        .past(LEFT, Length.parse("1/2 in"))
                        .past(RIGHT, Length.parse("1/2 in")));
                Placing floorIn = b.keep(place(floor));
                Placing sides = b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
                b.keep(place(lid).restsOn(sides));
            });
            assertThat(plan.problems()).isEmpty();
            PlacedSolid lid = pieces(plan, "Lid").get(0);
            double run = 16 * INCH;
            double slope = Math.hypot(run, front.minus(back).inMillimetres());
            for (PlacedSolid side : pieces(plan, "Side")) {
                assertThat(Touching.between(lid, side).area().squareMillimetres())
                        .isCloseTo(slope * 0.75 * INCH, within(1e-3));
            }
            double cos = run / slope;
            // The side past which it goes 2 in is in front whichever way it falls.
            assertThat(pieces(plan, "Side").get(0).bounds().low().y()
                            - lid.face("OUTSIDE").bounds().low().y())
                    .isCloseTo(2 * INCH * cos, within(1e-5));
            assertThat(lid.face("OUTSIDE").bounds().sizes().x()).isCloseTo((20 + 1.5 + 1) * INCH, within(1e-5));
        }
    }

    @Test
    void restsOn_aWallThatIsTooLow_saysWhichAndHowFar() {
        assertThat(Bench.problems(b -> {
                    Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("16 in"));
                    Part side = b.keep(panel("Side", b.ply())
                            .deep("16 in")
                            .highFrontToBack(Length.parse("10 in"), Length.parse("10 in")));
                    Part back = b.keep(panel("Back", b.ply()).wide("20 in").high("9 3/4 in"));
                    Part lid = b.keep(panel("Lid", b.ply()).overSlope(side, back));
                    Placing floorIn = b.keep(place(floor));
                    Placing sides = b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
                    Placing backIn = b.keep(place(back).behind(floorIn).flushAt(BOTTOM));
                    b.keep(place(lid).restsOn(sides, backIn));
                }))
                .containsExactly("“Lid” rests on “Back”, but they are 1/4 in apart, up and down.");
    }

    @Test
    void restsOn_nothingThatSlopes_saysWhatToWrite() {
        assertThat(Bench.problems(b -> {
                    Part side = b.keep(panel("Side", b.ply()).deep("16 in").high("10 in"));
                    Part lid = b.keep(panel("Lid", b.ply()).overSlope(side));
                    Placing sideIn = b.keep(place(side));
                    b.keep(place(lid).restsOn(sideIn));
                }))
                .first()
                .isEqualTo("“Lid” lies on a slope, but none of Side has a sloping top."
                        + " Say .highFrontToBack(...) of one.");
    }

    @Test
    void plumbAt_theLowerEnd_namesTheUpperOne() {
        assertThat(Bench.problems(b -> {
                    Part side = b.keep(panel("Side", b.ply())
                            .deep("16 in")
                            .highFrontToBack(Length.parse("8 in"), Length.parse("10 in")));
                    Part lid = b.keep(panel("Lid", b.ply()).overSlope(side).plumbAt(FRONT));
                    Placing sideIn = b.keep(place(side));
                    b.keep(place(lid).restsOn(sideIn));
                }))
                .first()
                .isEqualTo("“Lid” is plumb at front, but its upper end is at back. plumbAt(BACK) would be right.");
    }

    @Test
    void mount_onNothing_saysWhatToWrite() {
        assertThat(Bench.problems(b -> {
                    Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("16 in"));
                    b.keep(mount(b.keep(place(floor))));
                }))
                .containsExactly("Mounted on what? Say .onTopOf(seatIn), or .restsOn(frontIn, sidesIn).");
    }

    @Test
    void mount_flushAtASideThatIsNoEndOfTheSlope_namesTheEnds() {
        assertThat(Bench.problems(b -> {
                    Part side = b.keep(panel("Side", b.ply())
                            .deep("16 in")
                            .highFrontToBack(Length.parse("8 in"), Length.parse("10 in")));
                    Part lid = b.keep(panel("Lid", b.ply()).wide("10 in").deep("17 in"));
                    Placing sideIn = b.keep(place(side));
                    Placing lidIn = b.keep(place(lid));
                    b.keep(mount(lidIn).restsOn(sideIn).flushAt(LEFT));
                }))
                .contains("The slope's ends are at front and back, not at left.");
    }

    @Test
    void ring_placedPlainly_saysRound() {
        assertThat(Bench.problems(b -> {
                    Part side = b.keep(
                            panel("Side", b.ply()).wide("10 in").high("12 in").ringOf(5, "10 deg"));
                    b.keep(place(side));
                }))
                .containsExactly("“Side” is one of a ring. Say .round().");
    }

    @Test
    void ring_thatClosesBeforeItsFoot_saysWhatWouldDo() {
        assertThat(Bench.problems(b ->
                        b.keep(panel("Side", b.ply()).wide("4 in").high("20 in").ringOf(6, "25 deg"))))
                .containsExactly("“Side” leans out so much that the ring closes before its foot."
                        + " Less lean, or a wider top, would do.");
    }

    /** Rings of any number of sides close, upright ones too, and carry a floor. */
    @Test
    void ring_ofAnyNumberOfSides_closes() {
        for (int sides = 3; sides <= 12; sides++) {
            for (int lean : List.of(0, 12)) {
                int n = sides;
                Plan plan = Bench.plan(b -> {
                    Part side = b.keep(
                            panel("Side", b.ply()).wide("12 in").high("6 in").ringOf(n, Angle.ofDegrees(lean)));
                    Part floor = b.keep(panel("Floor", b.ply()).fitsInRing(side, "1 in"));
                    Placing ring = b.keep(place(side).round());
                    b.keep(fasten(ring).toEachOther().glued(b.keep(woodGlue("glue"))));
                    b.keep(place(floor).restsIn(ring));
                });
                assertThat(plan.problems())
                        .as("%d sides, %d degrees", sides, lean)
                        .isEmpty();
                List<PlacedSolid> all = pieces(plan, "Side");
                assertThat(all).hasSize(n);
                for (int i = 0; i < n; i++) {
                    assertThat(Touching.between(all.get(i), all.get((i + 1) % n))
                                    .area()
                                    .squareMillimetres())
                            .isCloseTo(all.get(i).solid().area("LEFT").squareMillimetres(), within(1e-2));
                }
            }
        }
    }

    /** A frame of boards, rabbeted round: what the rabbet takes is a ring less the opening, and the pane lies in it. */
    @Test
    void glaze_intoAFrame_takesTheRabbetOutOfItsBoards() {
        Plan plan = Bench.plan(b -> {
            Lumber strip = b.keep(lumber("1x3").lengths("8 ft"));
            var clear = b.keep(sheet("acrylic", "24 in", "24 in").measured("1/8 in"));
            Part stile = b.keep(board("Stile", strip).cutTo("20 in"));
            Part rail = b.keep(board("Rail", strip).cutTo("10 in"));
            Part pane = b.keep(pane("Pane", clear)
                    .fitsFrame(Length.parse("10 in"), Length.parse("15 in"), wide("1/2 in"), deep("1/4 in"))
                    .warmer("60 F"));
            Placing left = b.keep(place(stile).running(FRONT_TO_BACK).flat());
            Placing front = b.keep(
                    place(rail).running(LEFT_TO_RIGHT).flat().rightOf(left).flushAt(FRONT));
            Placing back = b.keep(
                    place(rail).running(LEFT_TO_RIGHT).flat().rightOf(left).flushAt(BACK));
            Placing right = b.keep(
                    place(stile).running(FRONT_TO_BACK).flat().rightOf(front).flushAt(FRONT));
            b.keep(glaze(pane).into(left, front, back, right));
        });
        assertThat(plan.problems()).isEmpty();
        double wood = plan.placed().stream()
                .map(PlacedPart::solid)
                .filter(s -> !s.part().equals("Pane"))
                .mapToDouble(s -> s.volume().cubicMillimetres())
                .sum();
        double whole = (2 * 20 + 2 * 10) * 2.5 * 0.75;
        double rabbet = (11 * 16 - 10 * 15) * 0.25;
        assertThat(wood / Math.pow(INCH, 3)).isCloseTo(whole - rabbet, within(1e-6));
        PlacedSolid pane = pieces(plan, "Pane").get(0);
        assertThat(pane.bounds().high().z()).isCloseTo((0.75 - 0.125) * INCH, within(1e-6));
        assertThat(Touching.all(plan.placed().stream().map(PlacedPart::solid).toList()))
                .allSatisfy(t -> assertThat(t.clash()).isEmpty());
    }

    @Test
    void boardThatStands_saysItsHeightLikeAPanel() {
        Plan plan = Bench.plan(b -> {
            Lumber plank = b.keep(lumber("1x6").lengths("8 ft"));
            Part back = b.keep(board("Back", plank)
                    .high("14 in")
                    .sizedOn(OUTSIDE)
                    .topRisesInward(Angle.ofDegrees(20))
                    .hole("nail hole", round("1/4 in").up("12 in")));
            b.keep(place(back));
        });
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.part("Back").orElseThrow().length().value().inInches())
                .isCloseTo(14 + 0.75 * Math.tan(Math.toRadians(20)), within(1e-6));
        assertThat(plan.sawSettings().stream()
                        .filter(s -> !s.tilt().value().isZero())
                        .toList())
                .singleElement()
                .satisfies(s -> assertThat(s.saw()).isEqualTo("mitre saw"));
    }
}
