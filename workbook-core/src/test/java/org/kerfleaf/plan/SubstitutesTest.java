package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.measure.LengthUnit.INCHES;
import static org.kerfleaf.words.Words.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Buying.Choice;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.SketchException;
import org.kerfleaf.sketch.SketchRun;
import org.kerfleaf.words.Gathering;

/** A shelf between two sides, of a sheet that could be another: half as thick again, or too short. */
class SubstitutesTest {
    private final List<Map<String, String>> runs = new ArrayList<>();

    private static Sketch sketch(Map<String, String> sizes, boolean others) {
        return new SketchRun(sizes).doing(() -> {
            List<Object> kept = new ArrayList<>();
            kept.add(measureIn(INCHES));
            kept.add(pricesIn("USD", "2026-04-12"));
            Sheet half = sheet("half-inch ply", "48 in", "96 in")
                    .measured("1/2 in")
                    .stiffness("1 million psi")
                    .costs("40.00");
            Sheet ply = others
                    ? half.orInstead(
                            sheet("thick ply", "48 in", "96 in")
                                    .measured("3/4 in")
                                    .stiffness("1 million psi")
                                    .costs("60.00"),
                            sheet("short ply", "24 in", "24 in").measured("1/2 in"))
                    : half;
            kept.add(ply);
            kept.add(circularSaw().kerf("1/8 in"));
            Length outside = length("40 in");
            Part shelf = panel("Shelf", ply)
                    .wide(outside.minus(ply.thickness(), ply.thickness()))
                    .deep("12 in");
            kept.add(shelf);
            Placing shelfIn = place(shelf);
            kept.add(shelfIn);
            kept.add(carries(shelfIn, "30 lb").spans("36 in"));
            return Gathering.gather("A try", List.of(new Sketch.Step(1, "Build")), kept)
                    .sketch();
        });
    }

    private Plan compared(Map<String, String> sizes, boolean others) {
        Sketch sketch = sketch(sizes, others);
        return Substitutes.compared(Planner.plan(sketch, Bench.DAY), sketch, other -> {
            runs.add(other);
            return Optional.of(Planner.plan(sketch(other, others), Bench.DAY));
        });
    }

    @Test
    void compared_tellsFitPriceAndSagOfEach() {
        List<Choice> choices =
                compared(Map.of(), true).buying().instead().get(0).choices();

        assertThat(choices).extracting(Choice::stock).containsExactly("half-inch ply", "thick ply", "short ply");
        assertThat(choices).extracting(Choice::planned).containsExactly(true, false, false);
        assertThat(choices).extracting(Choice::fits).containsExactly(true, true, false);
        assertThat(choices).extracting(Choice::bought).containsExactly(1, 1, 0);
        assertThat(choices)
                .extracting(choice -> choice.price().map(Object::toString).orElse("not known"))
                .containsExactly("USD 40.00", "USD 60.00", "not known");
        double thin = choices.get(0).sag().orElseThrow().value().inInches();
        double thick = choices.get(1).sag().orElseThrow().value().inInches();
        // The shelf itself is 39 in long of one, 38 1/2 in of the other: its load on the span differs by as much.
        assertThat(thick / thin).isCloseTo(39 / 38.5 / (1.5 * 1.5 * 1.5), within(1e-3));
        assertThat(choices.get(2).fit()).contains("Shelf");
    }

    @Test
    void chosen_byTheReader_isTheOneThatIsPlanned() {
        Plan plan = compared(Map.of("half-inch ply, or instead", "thick ply"), true);

        assertThat(plan.part("Shelf").orElseThrow().length().value()).isEqualTo(Length.ofInches(38.5));
        assertThat(plan.buying().instead().get(0).choices())
                .extracting(Choice::planned)
                .containsExactly(false, true, false);
    }

    @Test
    void compared_withoutOthers_runsNothing() {
        assertThat(compared(Map.of(), false).buying().instead()).isEmpty();
        assertThat(runs).isEmpty();
    }

    @Test
    void others_withoutANameOfTheirOwn_areRefused() {
        assertThatThrownBy(() -> Bench.plan(bench -> bench.ply().orInstead()))
                .isInstanceOf(SketchException.class)
                .hasMessageContaining("At least one other");
        assertThatThrownBy(() -> Bench.plan(bench -> lumber("1x4").orInstead(lumber("1x4"))))
                .hasMessageContaining("a species of its own");
    }
}
