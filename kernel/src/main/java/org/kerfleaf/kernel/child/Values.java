package org.kerfleaf.kernel.child;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.SketchException;

/** Finds what counts in the value of a variable or expression: itself, or what a collection of any depth holds. */
final class Values {
    /** Collections within collections, so deep at most. */
    static final int DEEPEST = 20;

    private final int most;
    private final List<Declaration> found = new ArrayList<>();

    /** @param most how many things may be found before it is too many */
    Values(int most) {
        this.most = most;
    }

    List<Declaration> found() {
        return found;
    }

    /** Whether looking into a value runs code that a maker may have written. */
    static boolean isPlain(Object value) {
        return !(value instanceof Collection || value instanceof Map);
    }

    /** Adds what counts. @throws SketchException if it is too deep or too much */
    void add(Object value) {
        add(value, 0);
    }

    private void add(Object value, int depth) {
        if (depth > DEEPEST) {
            throw new SketchException(
                    "Lists within lists, more than %d deep. A plain list would be right.".formatted(DEEPEST));
        }
        if (value instanceof Declaration declaration) {
            if (found.size() >= most) {
                throw new SketchException("More than %d things are made here; a workbook holds fewer.".formatted(most));
            }
            found.add(declaration);
        } else if (value instanceof Collection<?> many) {
            many.forEach(one -> add(one, depth + 1));
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(one -> add(one, depth + 1));
        } else if (value instanceof Object[] many) {
            Arrays.asList(many).forEach(one -> add(one, depth + 1));
        } else if (value instanceof Optional<?> one) {
            one.ifPresent(inside -> add(inside, depth + 1));
        }
    }
}
