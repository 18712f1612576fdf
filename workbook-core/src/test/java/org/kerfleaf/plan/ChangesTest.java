package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.Change.Topic;
import org.kerfleaf.sketch.Part;

/** What a change touched, old and new, and nothing that stayed the same. */
class ChangesTest {
    private static List<String> told(Plan before, Plan after) {
        return Changes.between(before, after).stream()
                .map(c -> "%s: %s: %s → %s"
                        .formatted(c.topic().title(), c.what(), c.beforeIn(after.style()), c.afterIn(after.style())))
                .toList();
    }

    private static List<String> told(Topic topic, Plan before, Plan after) {
        return told(before, after).stream()
                .filter(words -> words.startsWith(topic.title() + ": "))
                .map(words -> words.substring(topic.title().length() + 2))
                .toList();
    }

    private static Plan cabinet(Consumer<Cabinet> other) {
        Cabinet cabinet = new Cabinet();
        other.accept(cabinet);
        return Planner.plan(cabinet.sketch(), Bench.DAY);
    }

    private static final Plan CABINET = cabinet(c -> {});

    @Test
    void between_aPlanAndItself_isNothing() {
        assertThat(Changes.between(CABINET, cabinet(c -> {}))).isEmpty();
    }

    @Test
    void between_theSamePlanInTwoUnits_isNoOtherSize() {
        Plan millimetres = Planner.plan(new Cabinet().sketch(), Bench.DAY, LengthUnit.MILLIMETRES);
        assertThat(Changes.between(CABINET, millimetres))
                .extracting(Change::topic)
                // A pane is rounded down to a tape's step, and what is said in words is said in the unit.
                .doesNotContain(Topic.OUTSIDE, Topic.SITE, Topic.STOCK, Topic.SIZES);
    }

    @Test
    void between_twoOverhangs_isTheRoofAndWhatHangsOnIt() {
        Plan wider = cabinet(c -> c.overhang = Length.ofInches(3L));
        // Along the slope + 1 in at the eave; front to back + 1 in at both ends.
        assertThat(told(Topic.PARTS, CABINET, wider))
                .containsExactly(
                        "Roof, along the grain: 16 7/16 in → 18 7/16 in",
                        "Roof, across the grain: 15 15/16 in heavy → 16 15/16 in heavy",
                        "Rake trim, along the grain: 15 15/16 in heavy → 16 15/16 in heavy",
                        "Eave trim, along the grain: 17 15/16 in → 19 15/16 in",
                        "Ridge cap, along the grain: 17 15/16 in → 19 15/16 in");
    }

    @Test
    void between_twoSlopes_areBevelsMitresAndSettings() {
        Plan steeper = cabinet(c -> c.slope = Angle.ofDegrees(35));
        assertThat(told(Topic.PARTS, CABINET, steeper))
                .contains(
                        "Side, top, long point inside: bevel: 30° → 35°",
                        "Rake trim, upper end: mitre: 30° → 35°",
                        "Front, then: gable from 24 in at the eaves, 30° slope → gable from 24 in at the eaves, 35° slope");
        assertThat(told(Topic.SAWS, CABINET, steeper))
                .anyMatch(words -> words.endsWith(", tilt: 30° → 35°"))
                .anyMatch(words -> words.endsWith(", scale: 30° → 35°"));
    }

    @Test
    void between_checks_areThoseWithAnotherVerdict() {
        Plan thicker = cabinet(c -> c.gauge = 8);
        assertThat(told(Topic.CHECKS, CABINET, thicker))
                .isNotEmpty()
                .allMatch(words -> words.endsWith("holds → short"))
                .anyMatch(words -> words.startsWith("Screw reach: "));
        // The same places with another screw: one line, and not one that went and one that came.
        assertThat(told(Topic.HARDWARE, CABINET, thicker))
                .containsExactly("wood screw No. 6 x 1 5/8 in, stainless, which:"
                        + " wood screw No. 6 x 1 5/8 in, stainless → wood screw No. 8 x 1 5/8 in, stainless");
    }

    private static Plan shelves(Consumer<Bench> more) {
        return Bench.plan(b -> {
            b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            more.accept(b);
        });
    }

    @Test
    void between_aPartMore_tellsThePartAndNotItsEveryFigure() {
        Plan one = shelves(b -> {});
        Plan two = shelves(
                b -> b.keep(panel("Shelf", b.ply()).wide("12 in").deep("8 in").times(3)));
        assertThat(told(Topic.PARTS, one, two)).containsExactly("Shelf:  → 3");
        assertThat(told(Topic.PARTS, two, one)).containsExactly("Shelf: 3 → ");
        assertThat(Changes.between(one, two))
                .filteredOn(change -> change.topic() == Topic.PARTS)
                .singleElement()
                .satisfies(change -> assertThat(change.before()).isEmpty());
    }

    @Test
    void between_onePieceMore_tellsHowMany() {
        Plan three = shelves(
                b -> b.keep(panel("Shelf", b.ply()).wide("12 in").deep("8 in").times(3)));
        Plan four = shelves(
                b -> b.keep(panel("Shelf", b.ply()).wide("12 in").deep("8 in").times(4)));
        assertThat(told(Topic.PARTS, three, four)).containsExactly("Shelf, how many: 3 → 4");
    }

    @Test
    void between_aSheetMore_isBoughtAndPaid() {
        Plan one = shelves(b -> b.keep(panel("Wall", b.ply()).wide("40 in").high("60 in")));
        Plan two = shelves(
                b -> b.keep(panel("Wall", b.ply()).wide("40 in").high("60 in").times(2)));
        assertThat(told(Topic.STOCK, one, two)).containsExactly("plywood, bought: 1 → 2");
        assertThat(told(Topic.COST, one, two)).contains("plywood: 60.00 → 120.00", "as bought: 60.00 → 120.00");
    }

    @Test
    void between_whatMakesNoSenseAnyMore_standsFirst() {
        Plan fits = shelves(b -> b.keep(panel("Wall", b.ply()).wide("40 in").high("60 in")));
        Plan not = shelves(b -> b.keep(panel("Wall", b.ply()).wide("50 in").high("97 in")));
        assertThat(Changes.between(fits, not).get(0).topic()).isEqualTo(Topic.PROBLEMS);
        assertThat(told(Topic.PROBLEMS, fits, not)).singleElement().asString().contains("Wall is ");
    }

    @Test
    void between_lengthsThatATapeReadsAlike_areToldInDecimals() {
        Plan one = shelves(b -> {});
        Plan other =
                Bench.plan(b -> b.keep(panel("Floor", b.ply()).wide("20.002 in").deep("10 in")));
        assertThat(told(Topic.PARTS, one, other)).containsExactly("Floor, along the grain: 20.0000 in → 20.0020 in");
    }

    @Test
    void between_lengthsWithinWhatCountsAsTouching_isNothing() {
        Plan one = shelves(b -> {});
        Plan other = Bench.plan(b -> {
            Part floor = panel("Floor", b.ply()).wide(new Length(508_000_001L)).deep("10 in");
            b.keep(floor);
        });
        assertThat(told(Topic.PARTS, one, other)).isEmpty();
    }
}
