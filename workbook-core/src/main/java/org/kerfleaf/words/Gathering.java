package org.kerfleaf.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.SketchRun;

/**
 * Makes a sketch of the values a run of the cells left behind.
 *
 * <p>What counts is what is the value of a variable or of an expression at the top level of a cell, collections
 * included. A thing reached twice counts once, by its origin; two different values with one origin or under one name are
 * a problem that points at both.
 */
public final class Gathering {
    private final Map<Origin, Declaration> byOrigin = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private Gathering() {}

    /** A sketch, and what does not make sense in it. */
    public record Gathered(Sketch sketch, List<Problem> problems) {}

    /**
     * Gathers the values of a finished run; the run must be bound to this thread.
     *
     * @param title the workbook's title
     * @param steps its build steps
     * @param values the values at the top level of its cells, in document order
     */
    public static Gathered gather(String title, List<Sketch.Step> steps, List<?> values) {
        Gathering gathering = new Gathering();
        SketchRun.current().sizes().forEach(gathering::count);
        SketchRun.current().insteads().forEach(gathering::count);
        values.forEach(gathering::visit);
        gathering.oneNameOneThing();
        List<Declaration> declared = gathering.byOrigin.values().stream()
                .sorted((a, b) -> a.origin().compareTo(b.origin()))
                .toList();
        Sketch sketch = new Sketch(title, steps, declared);
        gathering.placedIsKept(sketch);
        gathering.bounded(sketch);
        return new Gathered(sketch, List.copyOf(gathering.problems));
    }

    private void visit(Object value) {
        if (value instanceof Declaration declaration) {
            count(declaration);
        } else if (value instanceof Collection<?> many) {
            many.forEach(this::visit);
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(this::visit);
        } else if (value instanceof Object[] many) {
            List.of(many).forEach(this::visit);
        } else if (value instanceof Optional<?> one) {
            one.ifPresent(this::visit);
        }
    }

    private void count(Declaration declaration) {
        Declaration earlier = byOrigin.putIfAbsent(declaration.origin(), declaration);
        if (earlier != null && !earlier.equals(declaration)) {
            problems.add(new Problem(
                    declaration.origin(),
                    "%s is kept twice, with more said of it the second time. Say it all at once, or keep it in one name."
                            .formatted(nameOf(declaration))));
        }
    }

    private void oneNameOneThing() {
        Map<String, Declaration> named = new LinkedHashMap<>();
        for (Declaration declaration : byOrigin.values()) {
            if (declaration instanceof Part || declaration instanceof Sheet || declaration instanceof Lumber) {
                Declaration earlier = named.putIfAbsent(nameOf(declaration), declaration);
                if (earlier != null) {
                    problems.add(new Problem(
                            declaration.origin(),
                            "%s is made twice: here and in line %d. One name, one thing."
                                    .formatted(
                                            nameOf(declaration),
                                            earlier.origin().line())));
                }
            }
        }
    }

    private void placedIsKept(Sketch sketch) {
        for (Placing placing : sketch.all(Placing.class)) {
            if (sketch.part(placing.part()).isEmpty()) {
                problems.add(new Problem(
                        placing.origin(),
                        "“%s” is placed but kept nowhere. Write: Part name = panel(...), then place(name)."
                                .formatted(placing.part())));
            }
        }
    }

    private void bounded(Sketch sketch) {
        long pieces =
                sketch.all(Placing.class).stream().mapToLong(Placing::count).sum();
        if (pieces > Sketch.MOST_PIECES) {
            problems.add(new Problem(
                    Origin.NOWHERE,
                    "%d pieces are placed; a workbook holds %d at most.".formatted(pieces, Sketch.MOST_PIECES)));
        }
    }

    private static String nameOf(Declaration declaration) {
        if (declaration instanceof Part part) {
            return "“" + part.name() + "”";
        }
        if (declaration instanceof Sheet sheet) {
            return "“" + sheet.name() + "”";
        }
        if (declaration instanceof Lumber lumber) {
            return "“" + lumber.name() + "”";
        }
        return declaration instanceof Placing placing ? "The place of “" + placing.part() + "”" : "This";
    }
}
