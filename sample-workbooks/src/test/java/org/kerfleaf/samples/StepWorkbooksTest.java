package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.schedule.Sitting;
import org.kerfleaf.workbook.Workbook;

/** What comes first, waiting and sessions: for each check a workbook that trips it and one that holds, one size or word apart. */
class StepWorkbooksTest {
    private static final String SAID = """
            # A try

            ```java
            measureIn(INCHES);
            Sheet ply    = sheet("plywood", "48 in", "96 in").measured("3/4 in");
            Saw   saw    = circularSaw().kerf("1/8 in");
            Screw screw  = woodScrew(6, "1 5/8 in");
            Glue  glue   = woodGlue("exterior PVA").clampedFor("45 min").curesIn("24 h");
            Caulk latex  = caulk("acrylic latex").paintAfter("2 h").curesIn("24 h");
            Paint colour = paint("exterior paint").covers("350 sq ft", perGallon()).recoatAfter("4 h").curesIn("7 days");

            Part floor = panel("Floor", ply).wide("20 in").deep("10 in");
            Part side  = panel("Side", ply).deep("10 in").high("20 in").pair();
            Part back  = panel("Back", ply).wide("21 1/2 in").high("20 in");
            Part shelf = panel("Shelf", ply).wide("20 in").deep("8 in");
            Part front = panel("Front", ply).wide("21 1/2 in").high("20 in")
                             .opening("doorway", rectangle(length("14 in"), length("14 in")).up("3 in"));
            Part lid   = panel("Lid", ply).wide("21 1/2 in").deep("11 1/2 in");
            ```

            ## Build steps
            """;

    private static final String CUT = step("Cut", "cutAll();", "takes(\"1 h\");");
    private static final String BOX = step(
            "Box",
            "var floorIn = place(floor);",
            "var sidesIn = place(side).leftAndRightOf(floorIn).flushAt(BOTTOM);",
            "var backIn = place(back).behind(floorIn).flushAt(BOTTOM);",
            "var boxOn = fasten(sidesIn, backIn).to(floorIn).glued(glue).screwed(screw, every(\"6 in\"));",
            "takes(\"40 min\");");
    private static final String SHELF =
            step("Shelf", "var shelfIn = place(shelf).above(floorIn, \"8 in\").against(backIn);", "takes(\"20 min\");");
    private static final String CLOSE = step(
            "Close",
            "var frontIn = place(front).inFrontOf(floorIn).flushAt(BOTTOM);",
            "var lidIn = place(lid).onTopOf(sidesIn);",
            "takes(\"30 min\");");
    private static final String PAINT =
            step("Paint", "var outside = coat(outsideFaces()).with(colour, times(2));", "takes(\"50 min\");");
    private static final String STRIP = step(
            "Strip",
            "var strip = fit(weatherstrip(wide(\"3/8 in\"), thick(\"3/16 in\"))).around(frontIn, \"doorway\");",
            "takes(\"15 min\");");

    private static String step(String title, String... lines) {
        return "\n### %s\n\n```java\n%s\n```\n".formatted(title, String.join("\n", lines));
    }

    private static Plan plan(String... steps) {
        return Sample.plan(Workbook.parse(SAID + String.join("", steps)), Map.of());
    }

    private static Plan planWith(String text, String instead, String... steps) {
        String all = SAID + String.join("", steps);
        assertThat(all).contains(text);
        return Sample.plan(Workbook.parse(all.replace(text, instead)), Map.of());
    }

    private static Check check(Plan plan, String name) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no check “%s”".formatted(name)));
    }

    private static Schedule.Course course(Plan plan) {
        return plan.schedule().course().orElseThrow();
    }

    private static Duration minutes(long minutes) {
        return Duration.ofMinutes(minutes);
    }

    // ---- a step placed too early ---------------------------------------------------------------------------------

    @Test
    void cutFirst() {
        Check early = check(plan(BOX, CUT), "Cut first");

        assertThat(early.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(early.result()).contains("before it is cut in step 2").contains("Floor in step 1");
        assertThat(check(plan(CUT, BOX), "Cut first").verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** A shelf of 20 in does not go through a doorway of 14 in; before the front is on, or with one of 20 1/2 in, it does. */
    @Test
    void wayIn() {
        Check late = check(plan(CUT, BOX, CLOSE, SHELF), "Way in: Shelf");

        assertThat(late.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(late.result()).startsWith("Step 4 puts it in place").contains("past Front (step 3)");
        assertThat(late.advice()).startsWith("Put it in before step 3");
        assertThat(check(plan(CUT, BOX, SHELF, CLOSE), "Way in").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(
                                planWith(
                                        "length(\"14 in\"), length",
                                        "length(\"20 1/4 in\"), length",
                                        CUT,
                                        BOX,
                                        CLOSE,
                                        SHELF),
                                "Way in")
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(check(
                                planWith(
                                        "length(\"14 in\"), length",
                                        "length(\"19 3/4 in\"), length",
                                        CUT,
                                        BOX,
                                        CLOSE,
                                        SHELF),
                                "Way in")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    /** Check 37: a strip is not pressed on paint of the same step; a step of its own waits for it. */
    @Test
    void recoatAndCure() {
        String both = PAINT.replace(
                "takes",
                "var strip = fit(weatherstrip(wide(\"3/8 in\"), thick(\"3/16 in\"))).around(frontIn, \"doorway\");\ntakes");
        Check early = check(plan(CUT, BOX, CLOSE, both), "Recoat and cure: exterior paint");

        assertThat(early.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(early.result()).contains("in step 4, Paint").contains("cures 7 days");
        assertThat(check(plan(CUT, BOX, CLOSE, PAINT, STRIP), "Recoat and cure: exterior paint")
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check silent = check(
                planWith(".curesIn(\"7 days\")", "", CUT, BOX, CLOSE, PAINT, STRIP), "Recoat and cure: exterior paint");
        assertThat(silent.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(silent.result()).contains("exterior paint cures");
    }

    // ---- waiting is elapsed time ---------------------------------------------------------------------------------

    /** 60 + 40, clamped 45, 30, two coats of 25 with 240 between, seven days, 15. */
    @Test
    void course_waitsBetweenSteps() {
        Plan plan = plan(CUT, BOX, CLOSE, PAINT, STRIP);
        Schedule.Course course = course(plan);

        assertThat(plan.schedule().work().value()).isEqualTo(minutes(60 + 40 + 30 + 50 + 15));
        assertThat(course.finish().value()).isEqualTo(minutes(60 + 40 + 45 + 30 + 25 + 240 + 25 + 7 * 24 * 60 + 15));
        assertThat(course.alone().value()).isEqualTo(course.finish().value());
        assertThat(course.critical()).containsExactly(1, 2, 3, 4, 5);
        assertThat(course.notKnown()).isEmpty();
        assertThat(course.lines().get(2).first())
                .containsExactly(new Schedule.First(2, minutes(45), "exterior PVA stays clamped"));
        assertThat(course.lines().get(4).first())
                .containsExactly(new Schedule.First(4, minutes(7 * 24 * 60), "exterior paint cures"));
    }

    /** What a step that has other parts in hand can wait for, it need not wait for. */
    @Test
    void course_stepWithPartsOfItsOwn_hasSlack() {
        String own = step(
                "Stool",
                "Part seat = panel(\"Seat\", ply).wide(\"12 in\").deep(\"12 in\");",
                "var seatIn = place(seat);",
                "takes(\"10 min\");");
        Schedule.Course course = course(plan(CUT, BOX, CLOSE, own));

        assertThat(course.finish().value()).isEqualTo(minutes(60 + 40 + 45 + 30));
        assertThat(course.alone().value()).isEqualTo(minutes(60 + 40 + 45 + 30 + 10));
        assertThat(course.lines().get(3).slack()).isEqualTo(minutes(40 + 45 + 30 - 10));
        assertThat(course.critical()).containsExactly(1, 2, 3);
    }

    @Test
    void waits_isElapsedTimeAfterAStep() {
        String[] steps = {CUT, BOX.replace("takes", "waits(\"3 h\", \"the filler sets\");\ntakes"), CLOSE};
        Schedule.Course course = course(plan(steps));

        assertThat(course.finish().value()).isEqualTo(minutes(60 + 40 + 180 + 30));
        assertThat(course.lines().get(2).first())
                .containsExactly(new Schedule.First(2, minutes(180), "the filler sets"));
    }

    @Test
    void course_timesNotSaid_areNamed_andTheRestIsTheLeast() {
        Schedule.Course course =
                course(planWith(".clampedFor(\"45 min\")", "", CUT, BOX.replace("takes(\"40 min\");", ""), CLOSE));

        assertThat(course.notKnown())
                .containsExactlyInAnyOrder("how long exterior PVA stays clamped", "how long step 2 takes");
        assertThat(course.finish().value()).isEqualTo(minutes(60 + 30));
        assertThat(course.finish().reason().rule()).contains("at least");
    }

    /** The samples' day is a Sunday, 12 April 2026: the work begins on the Monday after. */
    @Test
    void days_followTheFreeHours() {
        Plan plan = planWith(
                "## Build steps",
                "```java\nevenings(\"19:00 to 21:00\");\n```\n\n## Build steps",
                CUT,
                BOX,
                CLOSE,
                PAINT);

        assertThat(course(plan).days())
                .containsExactly(
                        sitting(1, "13T19:00", "13T20:00", true),
                        sitting(2, "13T20:00", "13T20:40", true),
                        sitting(3, "14T19:00", "14T19:30", true),
                        sitting(4, "14T19:30", "14T19:55", false),
                        sitting(4, "15T19:00", "15T19:25", true));
        assertThat(course(plan(CUT, BOX)).days()).isEmpty();
    }

    private static Sitting sitting(int step, String from, String to, boolean ends) {
        return new Sitting(step, LocalDateTime.parse("2026-04-" + from), LocalDateTime.parse("2026-04-" + to), ends);
    }

    // ---- a session -----------------------------------------------------------------------------------------------

    /** Check 57: 480 minutes at 85 dB(A), half for every 3 dB more: 60 at 94, 30 at 97. */
    @Test
    void noise() {
        String loud = CUT.replace("cutAll();", "cutAll();\nloud(\"94 dB\");");

        assertThat(check(plan(loud), "Noise: Cut").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check(plan(loud.replace("94", "97")), "Noise: Cut").margin()).isEqualTo("over by 30 minutes");
        assertThat(check(plan(loud.replace("takes(\"1 h\");", "")), "Noise: Cut")
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Check 58: 60 + 40, clamped 45, 30 is 175 minutes; cut beforehand it is 115. */
    @Test
    void session() {
        String said = "\n```java\nsession(\"3 h\");\n```\n";

        assertThat(check(plan(said, CUT, BOX, CLOSE), "Session").margin()).isEqualTo("5 minutes to spare");
        Check late = check(plan(said.replace("3 h", "2 h"), CUT, BOX, CLOSE), "Session");
        assertThat(late.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(late.margin()).isEqualTo("over by 55 minutes");
        assertThat(check(plan(said.replace("\"3 h\")", "\"2 h\").cutBeforehand()"), CUT, BOX, CLOSE), "Session")
                        .margin())
                .isEqualTo("5 minutes to spare");
        assertThat(check(plan(said, CUT, BOX.replace("takes(\"40 min\");", ""), CLOSE), "Session")
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Check 59, job.md scenario C: 24 boxes of 14 pilot holes at 20 s are 112 drill-minutes in 90: 124 % of one drill, 41 % of three. */
    @Test
    void stationLoad_nestBoxesOfAClass() {
        Check three = check(Sample.NEST_BOX.plan(), "Station load: drills");
        Check one = check(Sample.NEST_BOX.planWith(".drills(3)", ".drills(1)"), "Station load: drills");
        Check none = check(Sample.NEST_BOX.planWith(".drills(3)", ""), "Station load: drills");

        assertThat(three.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(three.result()).contains("112 minutes of work for 3 tools").contains("busy for 41 %");
        assertThat(one.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(one.result()).contains("112 minutes of work for 1 tool").contains("busy for 124 %");
        assertThat(one.advice()).startsWith("2 tools would do");
        assertThat(none.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(none.advice()).contains(".drills(3)");
    }

    @Test
    void before_saysWhatMustBeThere() {
        Plan plan = plan(CUT, BOX.replace("takes", "needsPeople(2);\nneedsLadder();\ntakes"), CLOSE, PAINT);

        assertThat(plan.steps())
                .extracting(step -> step.before())
                .containsExactly(
                        List.of("no children near"),
                        List.of("2 people", "a ladder"),
                        List.of(),
                        List.of("dry weather, or a roof over it"));
    }

    /** A shelf too near over the floor is in the way of a drill that comes down on the floor's screws; put in later, it is not. */
    @Test
    void roomToDrive_pastWhatStandsThere() {
        String low = step(
                "Low",
                "var lowIn = place(shelf);",
                "var floorIn = place(floor).onTopOf(lowIn);",
                "var backIn = place(back).behind(floorIn).flushAt(BOTTOM);");
        String down = step("Down", "var lowOn = fasten(floorIn).to(lowIn).screwed(screw, every(\"4 in\"));");
        String near = step("Near", "var lidIn = place(lid).above(floorIn, \"6 in\").against(backIn);");
        Check before = check(plan(low + down + near), "Room to drive");
        Check after = check(plan(low + near + down), "Room to drive: Floor to Shelf");
        assertThat(before.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(after.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(after.result()).contains("Lid stands 6 in behind the head", "Wanted: 7");
        assertThat(check(plan(low + near.replace("6 in", "8 in") + down), "Room to drive")
                        .verdict())
                .as("8 in above the floor there is room")
                .isEqualTo(Verdict.HOLDS);
    }
}
