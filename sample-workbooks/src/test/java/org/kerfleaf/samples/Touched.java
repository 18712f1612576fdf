package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Changes;
import org.kerfleaf.plan.Plan;

/** The figures of parts that another sheet thickness touches, worked by hand: all of them, and no other. */
final class Touched {
    private static final double A_MICRON = 1e-3 / 25.4;

    private final Map<String, Double> inches = new LinkedHashMap<>();

    Touched with(String what, double length) {
        inches.put(what, length);
        return this;
    }

    /** A figure that is told in words, which are looked at elsewhere. */
    Touched withWords(String what) {
        return with(what, Double.NaN);
    }

    /** Holds what the sample's plan tells against what was worked by hand, at 19/32 in, both ends of the range and between. */
    static void atSomeThicknesses(Sample sample, Plan written, DoubleFunction<Touched> byHand) {
        Random random = new Random(53);
        List<Length> thicknesses = random.ints(4, 500, 876)
                .mapToObj(thousandths -> Length.ofInches(thousandths / 1000.0))
                .toList();
        for (Length t : List.of(Length.ofSixtyFourths(38), Length.ofInches(0.5), Length.ofInches(0.875))) {
            holds(sample, written, t, byHand);
        }
        thicknesses.forEach(t -> holds(sample, written, t, byHand));
    }

    private static void holds(Sample sample, Plan written, Length t, DoubleFunction<Touched> byHand) {
        Plan now = sample.plan(Map.of("Sheet by caliper", t.toString()));
        assertThat(now.problems()).as("at %s", t).isEmpty();
        Map<String, Double> before = byHand.apply(23 / 32.0).inches;
        Map<String, Double> after = byHand.apply(t.inInches()).inches;
        List<Change> parts = Changes.between(written, now).stream()
                .filter(change -> change.topic() == Change.Topic.PARTS)
                .toList();
        assertThat(parts).extracting(Change::what).as("at %s", t).containsExactlyInAnyOrderElementsOf(after.keySet());
        for (Change change : parts) {
            if (!after.get(change.what()).isNaN()) {
                assertThat(inches(change.before().orElseThrow()))
                        .as("%s as written", change.what())
                        .isCloseTo(before.get(change.what()), within(A_MICRON));
                assertThat(inches(change.after().orElseThrow()))
                        .as("%s at %s", change.what(), t)
                        .isCloseTo(after.get(change.what()), within(A_MICRON));
            }
        }
    }

    private static double inches(Object quantity) {
        return ((Length) quantity).inInches();
    }

    /** Every change in words, old and new. */
    static List<String> words(Plan before, Plan after) {
        return Changes.between(before, after).stream()
                .map(c -> "%s: %s → %s".formatted(c.what(), c.beforeIn(after.style()), c.afterIn(after.style())))
                .toList();
    }
}
