package org.kerfleaf.kernel.wire;

import java.util.List;
import java.util.Optional;

/**
 * One top-level piece of Java as the child runs it.
 *
 * @param index its number in the run, in document order, live values last
 * @param className the class that was made of it
 * @param home the class in which that stands at a run: itself, or a {@linkplain SharedClass shared} one
 * @param invoked whether it does something when its turn comes; methods and types do not
 * @param value where its value is found
 * @param field the field that holds the value, if a field does
 * @param cell the cell's ordinal, -1 in prose
 * @param line the line of the file on which it begins
 * @param step the build step, or 0
 * @param needs the indexes of the units it touches, directly or through others
 */
public record Unit(
        int index,
        String className,
        String home,
        boolean invoked,
        Value value,
        Optional<String> field,
        int cell,
        int line,
        int step,
        List<Integer> needs) {
    /** Where a unit's value is found. */
    public enum Value {
        NONE,
        /** In a field, read when all cells have run. */
        FIELD,
        /** It is what the invocation returns. */
        RETURNED,
        /** It is what the invocation returns, and it belongs into prose. */
        PROSE
    }

    public Unit {
        needs = List.copyOf(needs);
    }

    /** The same in another class. */
    public Unit at(String otherHome) {
        return new Unit(index, className, otherHome, invoked, value, field, cell, line, step, needs);
    }

    /** What a method of its class is called in the class in which it stands. */
    public String method(String name) {
        return home.equals(className) ? name : SharedClass.method(className, name);
    }
}
