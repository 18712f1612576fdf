package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.SketchException;

/** Collects what does not make sense, and lets planning go on with the rest. */
final class Problems {
    private final List<Problem> found = new ArrayList<>();

    void add(Origin origin, String words) {
        Problem problem = new Problem(origin, words);
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    /** The value, or nothing and a problem kept. */
    <T> Optional<T> trying(Origin origin, Supplier<T> work) {
        try {
            return Optional.of(work.get());
        } catch (Unplannable stuck) {
            add(stuck.problem().origin(), stuck.problem().words());
        } catch (SketchException | IllegalArgumentException | ArithmeticException unfit) {
            // The trade's own words for a value that makes no sense: a spacing of nothing, a can that holds nothing.
            add(origin, unfit.getMessage());
        }
        return Optional.empty();
    }

    /** What was found, in document order. */
    List<Problem> all() {
        return found.stream().sorted((a, b) -> a.origin().compareTo(b.origin())).toList();
    }
}
