package org.kerfleaf.sketch;

import java.util.List;
import java.util.Optional;

/**
 * Everything a workbook's cells declared, in document order.
 *
 * @param title the workbook's title
 * @param steps the build steps, in document order
 * @param declared what the cells said
 */
public record Sketch(String title, List<Step> steps, List<Declaration> declared) {
    /** How many placed pieces a sketch may have before it is refused. */
    public static final int MOST_PIECES = 2_000;

    public Sketch {
        steps = List.copyOf(steps);
        declared = List.copyOf(declared);
    }

    /** A build step: its number from 1 and its heading. */
    public record Step(int number, String title) {}

    /** Everything said of one kind, in document order. */
    public <T extends Declaration> List<T> all(Class<T> kind) {
        return declared.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The part of that name. */
    public Optional<Part> part(String name) {
        return all(Part.class).stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** The placing said at that place. */
    public Optional<Placing> placing(Origin key) {
        return all(Placing.class).stream().filter(p -> p.origin().equals(key)).findFirst();
    }

    /** The sheet stock of that name. */
    public Optional<Sheet> sheet(String name) {
        return all(Sheet.class).stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** The board or moulding stock of that name. */
    public Optional<Lumber> lumber(String name) {
        return all(Lumber.class).stream().filter(s -> s.name().equals(name)).findFirst();
    }
}
