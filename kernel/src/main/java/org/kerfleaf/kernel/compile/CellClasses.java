package org.kerfleaf.kernel.compile;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * All classes that a session's compiler made, by name as in {@code REPL.$JShell$1}. Bytes are never deleted while the
 * session lives: JShell does not send the same bytes twice.
 */
final class CellClasses {
    private final Map<String, CellClass> all = new LinkedHashMap<>();

    void put(String name, byte[] bytes) {
        all.put(name, new CellClass(bytes));
    }

    /** The class of that name, null if there is none. */
    CellClass get(String name) {
        return all.get(name);
    }

    /** The class of a piece and what is nested in it, by name; what an earlier text had nested there is not among them. */
    Map<String, CellClass> of(String className) {
        Map<String, CellClass> own = new TreeMap<>();
        CellClass outer = all.get(className);
        if (outer != null) {
            own.put(className, outer);
            outer.shape().nested().stream().filter(all::containsKey).forEach(name -> own.put(name, all.get(name)));
        }
        return own;
    }

    /**
     * Everything of a class that can matter to who uses it, in one text: its name and shape, and those of all classes of
     * pieces that its shape speaks of.
     */
    String version(String className) {
        Set<String> reached = new TreeSet<>(Set.of(className));
        Deque<String> open = new ArrayDeque<>(reached);
        StringBuilder text = new StringBuilder();
        while (!open.isEmpty()) {
            for (Map.Entry<String, CellClass> one : of(open.remove()).entrySet()) {
                ClassShape shape = one.getValue().shape();
                text.append(one.getKey()).append(shape.members());
                shape.speaksOf().stream().filter(reached::add).forEach(open::add);
            }
        }
        return text.toString();
    }
}
