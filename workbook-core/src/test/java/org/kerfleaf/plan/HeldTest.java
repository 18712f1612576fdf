package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.kerfleaf.measure.LengthUnit.INCHES;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.INSIDE;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.testing.Property.forAll;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Plan.PlannedSize;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.SketchException;
import org.kerfleaf.sketch.SketchRun;
import org.kerfleaf.testing.Draw;
import org.kerfleaf.words.Gathering;

/** A size that is held inside or outside, and what takes up a change of the walls. */
class HeldTest {
    private static final Length INSIDE_WIDE = Length.ofInches(22L);

    /** A floor between two sides. */
    private static Plan plan(Map<String, String> tried) {
        Sketch sketch = new SketchRun(tried).doing(() -> {
            var unit = measureIn(INCHES);
            Sheet ply = sheet("plywood", "48 in", "96 in").measured(size("Sheet by caliper", "3/4 in"));
            Length wide = held(INSIDE, "Width", "22 in", "16 in to 30 in").between(ply, ply);
            Part floor = panel("Floor", ply).wide(wide).deep("11 in");
            Part side = panel("Side", ply).deep("11 in").high("24 in").pair();
            var floorIn = place(floor);
            var sidesIn = place(side).leftAndRightOf(floorIn).flushAt(BOTTOM);
            return Gathering.gather("A box", List.of(), List.of(unit, ply, floor, side, floorIn, sidesIn))
                    .sketch();
        });
        return Planner.plan(sketch, Bench.DAY);
    }

    private static Length inside(Plan plan) {
        return plan.part("Floor").orElseThrow().length().value();
    }

    private static Chain across(Plan plan) {
        return plan.chains().stream()
                .filter(c -> c.axis() == Axis.X)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void heldInside_thickerWalls_growOutward() {
        forAll(41, 40, random -> Draw.length(random, Length.ofInches(0.5), Length.ofInches(1L)), t -> {
            Plan plan = plan(Map.of("Sheet by caliper", t.toString()));
            assertThat(inside(plan)).isEqualTo(INSIDE_WIDE);
            assertThat(across(plan).overall()).isEqualTo(INSIDE_WIDE.plus(t, t));
        });
    }

    /** The same sketch, the other held: t up by dt takes 2 dt off the inside, and the outside stays. */
    @Test
    void heldOutside_thickerWalls_growInward() {
        Length outside = Length.parse("23 1/2 in");
        forAll(42, 40, random -> Draw.length(random, Length.ofInches(0.5), Length.ofInches(1L)), t -> {
            Plan plan =
                    plan(Map.of("Width", "23 1/2 in", "Width is held", "outside", "Sheet by caliper", t.toString()));
            Length thicker = t.minus(Length.parse("3/4 in"));
            assertThat(inside(plan)).isEqualTo(INSIDE_WIDE.minus(thicker, thicker));
            assertThat(across(plan).overall()).isEqualTo(outside);
        });
    }

    @Test
    void held_isNamedByTheChain_whereItIsHeld() {
        assertThat(across(plan(Map.of())).held())
                .containsExactly(new Chain.Held("Width", INSIDE_WIDE, "between Side and Side"));
        assertThat(across(plan(Map.of("Width is held", "outside"))).held())
                .containsExactly(new Chain.Held("Width", INSIDE_WIDE, "outside"));
    }

    @Test
    void held_isTwoSizesTheReaderMayChange() {
        assertThat(plan(Map.of()).sizes())
                .extracting(PlannedSize::label)
                .containsExactly("Sheet by caliper", "Width", "Width is held");
    }

    @Test
    void changes_ofFlippingWhatIsHeld_areTheInsideAndTheOutside() {
        assertThat(told(Map.of("Width is held", "outside")))
                .containsExactly(
                        "Width is held: inside → outside",
                        "the whole, wide: 23 1/2 in → 22 in",
                        "the whole, weight: 12.0 lb → 11.8 lb",
                        "Floor, along the grain: 22 in → 20 1/2 in");
    }

    private static Stream<String> told(Map<String, String> tried) {
        Plan now = plan(tried);
        return Changes.between(plan(Map.of()), now).stream()
                .filter(change -> change.topic().compareTo(Change.Topic.SAWS) < 0)
                .map(c -> "%s: %s → %s".formatted(c.what(), c.beforeIn(now.style()), c.afterIn(now.style())));
    }

    @Test
    void held_outsideOfThickWalls_saysWhatIsLeft() {
        assertThatThrownBy(() -> plan(Map.of("Width is held", "outside", "Sheet by caliper", "11 in")))
                .isInstanceOf(SketchException.class)
                .hasMessage(
                        "Width, 22 in outside, leaves nothing between walls of 11 in and 11 in. More than that would be right.");
    }

    @Test
    void held_atAnotherSide_saysWhichTwoThereAre() {
        assertThatThrownBy(() -> new SketchRun(Map.of()).doing(() -> held(LEFT, "Width", "22 in")))
                .isInstanceOf(SketchException.class)
                .hasMessage(
                        "Width is held inside or outside, not at the left. Say held(INSIDE, ...) or held(OUTSIDE, ...).");
    }

    @Test
    void held_elsewhere_isRefusedWithBothWords() {
        assertThatThrownBy(() -> plan(Map.of("Width is held", "above")))
                .isInstanceOf(SketchException.class)
                .hasMessage("Width is held can be inside, outside; “above” is none of them.");
    }
}
