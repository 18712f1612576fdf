package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BACK;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.FRONT;
import static org.kerfleaf.sketch.Side.INSIDE;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.sketch.Side.RIGHT;
import static org.kerfleaf.sketch.Side.TOP;
import static org.kerfleaf.testing.Property.forAll;
import static org.kerfleaf.words.Words.*;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.SketchException;
import org.kerfleaf.testing.Draw;

/** What doors and lids meet when they open, from the words that hang them to the check. */
class SwingTest {
    private static final Offset<Double> HALF_A_SIXTY_FOURTH = within(1 / 128.0 + 1e-6);
    private static final Pattern MEETS = Pattern.compile("meets Front at ([0-9.]+)°");

    private static final Pattern DROPS =
            Pattern.compile("^The eave ends (.*) below the wall's top edge. Eave trim hangs to (.*) below it,");

    private static Check check(Plan plan, String name) {
        return plan.checks().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Check swing(Consumer<Bench> said, String of) {
        Plan plan = Bench.plan(said);
        assertThat(plan.problems()).isEmpty();
        return check(plan, "Door swing: " + of);
    }

    // ---- the cabinet at random sizes ------------------------------------------------------------------------------

    private record Case(double t, double overhang, double slope, Cabinet cabinet) {
        static Case any(RandomGenerator random) {
            double t = Draw.oneOf(random, 15, 19, 23, 24) / 32.0;
            Cabinet cabinet = new Cabinet();
            cabinet.width = Draw.sixtyFourths(random, Length.ofInches(18), Length.ofInches(30));
            cabinet.eaves = Draw.sixtyFourths(random, Length.ofInches(22), Length.ofInches(30));
            cabinet.slope = Angle.ofDegrees(random.nextInt(20, 46));
            cabinet.overhang = Draw.sixtyFourths(random, Length.ofInches(1), Length.ofInches(4));
            cabinet.doorWide = Draw.sixtyFourths(random, Length.ofInches(12), Length.ofInches(16));
            cabinet.doorHigh = Draw.sixtyFourths(random, Length.ofInches(12), cabinet.eaves.minus(Length.ofInches(5L)));
            cabinet.caliper = Length.ofInches(t).toString();
            return new Case(t, cabinet.overhang.inInches(), StrictMath.toRadians(cabinet.slope.inDegrees()), cabinet);
        }

        /** How far the eave trim, 1 1/2 high and 3/4 thick, hangs below the wall's top edge. */
        double trimHangs() {
            double below = overhang * StrictMath.sin(slope);
            return below + 0.75 * StrictMath.sin(slope) + (1.5 - t) * StrictMath.cos(slope);
        }
    }

    /** Second derivation: plane trigonometry of the corner, the slope and the door's stand-off of 1/8 in. */
    @Test
    void cabinet_atRandomSizes_agreesWithTrigonometry() {
        List<String> first = new ArrayList<>();
        List<Verdict> drops = new ArrayList<>();
        forAll(71, 50, Case::any, c -> {
            Plan plan = Planner.plan(c.cabinet().sketch(), Bench.DAY);
            assertThat(plan.problems()).isEmpty();

            Matcher meets = MEETS.matcher(check(plan, "Door swing: Door").result());
            if (meets.find()) {
                double corner = 90 + StrictMath.toDegrees(StrictMath.asin(0.125 / c.t()));
                assertThat(Double.parseDouble(meets.group(1))).isEqualTo(corner, within(0.0051));
                first.add("Front");
            }
            Check cover = check(plan, "Eave cover: Roof");
            assertThat(cover.level().orElseThrow() + 1).isEqualTo(c.overhang() - (0.125 + c.t()), within(1e-6));

            Check drop = check(plan, "Eave drop: Roof over Door");
            Matcher read = DROPS.matcher(drop.result());
            assertThat(read.find()).isTrue();
            assertThat(inches(read.group(1))).isEqualTo(c.overhang() * StrictMath.sin(c.slope()), HALF_A_SIXTY_FOURTH);
            assertThat(inches(read.group(2))).isEqualTo(c.trimHangs(), HALF_A_SIXTY_FOURTH);
            drops.add(drop.verdict());
            double top = c.cabinet().eaves.inInches() - c.cabinet().doorHigh.inInches() - 4;
            if (top >= c.trimHangs()) {
                assertThat(drop.level().orElseThrow()).isEqualTo((top - c.trimHangs()) / top, within(1e-6));
            }
            assertThat(drop.verdict() == Verdict.HOLDS)
                    .isEqualTo(top >= c.trimHangs() || !drop.result().contains("too high"));
        });
        assertThat(first).hasSizeGreaterThan(40);
        assertThat(drops).contains(Verdict.HOLDS, Verdict.SHORT);
    }

    private static double inches(String text) {
        return Length.parse(text).inInches();
    }

    // ---- a door on its front
    // ------------------------------------------------------------------------------------------

    private static Consumer<Bench> overlay(Side hinges, Item... stays) {
        return b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part front = b.keep(panel("Front", b.ply())
                    .wide("20 in")
                    .high("20 in")
                    .opening(
                            "doorway",
                            rectangle(length("12 in"), length("12 in"))
                                    .centred()
                                    .up("4 in")));
            Part door = b.keep(panel("Door", b.ply()).laps(front.opening("doorway"), "1 in"));
            Placing floorIn = b.keep(place(floor));
            Placing frontIn = b.keep(place(front).inFrontOf(floorIn).flushAt(BOTTOM));
            Placing doorIn = b.keep(place(door).inFrontOf(frontIn).over("doorway"));
            b.keep(fit(hinge("overlay")).times(2).at(doorIn, hinges));
            b.keep(fit(weatherstrip(wide("3/8 in"), thick("1/2 in")).squeezedTo("3/8 in"))
                    .around(doorIn, "doorway"));
            for (Item stay : stays) {
                b.keep(fit(stay).at(doorIn, hinges));
            }
        };
    }

    /** Stand-off 3/8, door 3/4: 90° + asin(1/2) = 120°, at whichever edge it hangs. */
    @Test
    void overlay_atAnyEdge_meetsItsFrontAtAHundredAndTwenty() {
        for (Side side : List.of(LEFT, RIGHT, TOP, BOTTOM)) {
            Check check = swing(overlay(side), "Door");
            assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
            assertThat(check.result())
                    .startsWith("Opened, it meets Front at 120°. Turned on to 180°,")
                    .contains("× 3/8 in of both would be in one place.")
                    .endsWith("Nothing stops it before.");
            assertThat(check.advice()).isEqualTo("A stay that stops it before 120° would keep it off.");
        }
    }

    @Test
    void overlay_stayBeforeTheContact_holds_andAfterIt_isShort() {
        Check before = swing(overlay(LEFT, stay("chain").stopsAt("119.5 deg")), "Door");
        assertThat(before.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(before.margin()).isEqualTo("0.5° to spare");
        assertThat(before.level().orElseThrow()).isEqualTo(0.5 / 120, within(1e-6));

        Check after = swing(overlay(LEFT, stay("chain").stopsAt("120.5 deg")), "Door");
        assertThat(after.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(after.margin()).isEqualTo("over by 0.5°");
        assertThat(after.advice()).isEqualTo("A stay that stops it before 120° would keep it off.");
    }

    @Test
    void overlay_stayWithoutAnAngle_isNotKnown() {
        Check check = swing(overlay(LEFT, stay("chain")), "Door");

        assertThat(check.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check.advice())
                .isEqualTo("A stay that stops it before 120° would keep it off. Say where it stops:"
                        + " stay(\"chain\").stopsAt(\"115 deg\").");
    }

    @Test
    void overlay_hingeWithAStop_countsAsWell() {
        assertThat(swing(overlay(LEFT, hinge("stopped").stopsAt("110 deg")), "Door")
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /** A wall 3 in beside the hinges, its edge 6 7/8 in before them: the door's outer face comes round onto that edge. */
    @Test
    void overlay_wallBesideTheHinges_isMetFirst() {
        Check check = swing(
                overlay(LEFT).andThen(b -> {
                    Part wall = b.keep(panel("Wall", b.ply()).deep("8 in").high("20 in"));
                    Placing front = b.placed("Front");
                    b.keep(place(wall).leftOf(front).flushAt(BACK).flushAt(BOTTOM));
                }),
                "Door");

        double corner = 180
                - StrictMath.toDegrees(StrictMath.atan2(6.875, 3) + StrictMath.asin(0.75 / StrictMath.hypot(6.875, 3)));
        assertThat(check.result()).startsWith("Opened, it meets Wall at %.2f°.".formatted(corner));
        assertThat(check.result()).contains("Next comes Front, at 120°.");
    }

    @Test
    void hinges_withoutAPlace_areNotKnown() {
        Check check = swing(b -> b.keep(fit(hinge("butt")).times(2)), "butt hinge");

        assertThat(check.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check.advice()).contains(".at(lidIn, BACK)");
    }

    @Test
    void hinges_atAFace_areNotKnown() {
        Check check = swing(overlay(INSIDE), "Door");

        assertThat(check.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check.advice()).contains("no edge at the inside");
    }

    @Test
    void stopsAt_whatStopsNothing_saysWhatWouldBeRight() {
        assertThatThrownBy(() -> knob().stopsAt("95 deg"))
                .isInstanceOf(SketchException.class)
                .hasMessage("A knob stops no door. Say it of a stay or a hinge: stay(\"chain\").stopsAt(\"95 deg\").");
        assertThatThrownBy(() -> stay("chain").stopsAt("0 deg"))
                .isInstanceOf(SketchException.class)
                .hasMessage("“0 deg” open: more than 0 and up to 270 deg would be right.");
    }

    // ---- a lid ----------------------------------------------------------------------------------------------------

    private static Consumer<Bench> chest(String lidDeep, boolean shelf) {
        return b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part back = b.keep(panel("Back", b.ply()).wide("20 in").high("12 in"));
            Part lid = b.keep(panel("Lid", b.ply()).wide("20 in").deep(lidDeep));
            Placing floorIn = b.keep(place(floor));
            Placing backIn = b.keep(place(back).behind(floorIn).flushAt(BOTTOM));
            Placing lidIn = b.keep(place(lid).onTopOf(backIn).flushAt(BACK));
            b.keep(fit(hinge("butt")).times(2).at(lidIn, BACK));
            if (shelf) {
                Part over = b.keep(panel("Shelf", b.ply()).wide("20 in").deep("4 in"));
                b.keep(place(over).above(lidIn, "6 in").flushAt(BACK));
            }
        };
    }

    @Test
    void lid_hingedAtTheBack_opensFreely() {
        Check check = swing(chest("10 3/4 in", false), "Lid");

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result()).isEqualTo("Opened to 180° it meets nothing.");
    }

    /** A shelf 6 in over a lid 3/4 thick, its front edge 4 in before the hinges: the lid's upper face comes up to that edge. */
    @Test
    void lid_shelfOverIt_isMetWhereItsEdgeLies() {
        Check check = swing(chest("10 3/4 in", true), "Lid");

        double up = 6.75;
        double edge = StrictMath.toDegrees(StrictMath.atan2(up, 4) - StrictMath.asin(0.75 / StrictMath.hypot(up, 4)));
        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result()).startsWith("Opened, it meets Shelf at %.2f°.".formatted(edge));
        assertThat(check.advice()).startsWith("It does not open to 90°:");
    }

    // ---- a door between its sides
    // ------------------------------------------------------------------------------------

    private static Plan inset(String doorWide, String doorThick) {
        return Bench.plan(b -> {
            var thick = b.keep(
                    sheet("door stuff", "48 in", "96 in").soldAs(doorThick).costs("60.00"));
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part side = b.keep(panel("Side", b.ply()).deep("10 in").high("20 in"));
            Part door = b.keep(panel("Door", thick).wide(doorWide).high("18 in"));
            Placing floorIn = b.keep(place(floor));
            b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            Placing doorIn = b.keep(place(door).above(floorIn, "1/8 in").flushAt(FRONT));
            b.keep(fit(hinge("butt")).times(2).at(doorIn, LEFT));
        });
    }

    /** A gap of 1/16 on either side: 1 1/2² / (2 · 19 7/8) = 0.0566 passes; 3/64 does not, and the corner meets the jamb. */
    @Test
    void inset_backEdge_isHeldAgainstItsRoom_andTheSweepAgrees() {
        Plan wideGap = inset("19 7/8 in", "1 1/2 in");
        assertThat(wideGap.problems()).isEmpty();
        assertThat(check(wideGap, "Back edge: Door").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(wideGap, "Door swing: Door").result()).isEqualTo("Opened to 180° it meets nothing.");

        Plan tight = inset("19 29/32 in", "1 1/2 in");
        assertThat(check(tight, "Back edge: Door").verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check(tight, "Door swing: Door").result()).startsWith("Opened, it meets Side at ");
    }
}
