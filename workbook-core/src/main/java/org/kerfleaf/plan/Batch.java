package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.function.BiFunction;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Kits;
import org.kerfleaf.sketch.Sketch;

/**
 * How many kits are made in one go: parts, steps and joints are those of one kit, what is cut out and bought is for all.
 *
 * @param spare how many fasteners more than needed are bought, as a share
 */
record Batch(int kits, Ratio spare) {
    static Batch of(Sketch sketch, Problems problems) {
        List<Kits> said = sketch.all(Kits.class);
        if (said.size() > 1) {
            Kits again = said.get(said.size() - 1);
            problems.add(
                    again.origin(),
                    "Kits are said twice, %d and %d; the first counts. Say kits(...) once."
                            .formatted(said.get(0).many(), again.many()));
        }
        return said.stream()
                .findFirst()
                .map(kits -> new Batch(kits.many(), kits.spare()))
                .orElse(new Batch(1, Ratio.of(0)));
    }

    boolean isMore() {
        return kits > 1;
    }

    /** What all kits need of something, where one kit needs so much. */
    <T extends Quantity> Figure<T> all(Figure<T> one, BiFunction<T, Double, T> times) {
        return isMore()
                ? Figure.of(
                        times.apply(one.value(), (double) kits),
                        one.reason().rule() + "; times the kits",
                        one.reason().source(),
                        given("in one kit", one.value()),
                        given("kits", kits))
                : one;
    }

    /** How many all kits need, where one kit needs so many. */
    Figure<Integer> count(Figure<Integer> one) {
        return isMore()
                ? Figure.of(
                        one.value() * kits,
                        one.reason().rule() + "; times the kits",
                        one.reason().source(),
                        given("in one kit", one.value()),
                        given("kits", kits))
                : one;
    }
}
