package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What every cell sees without saying so, and which names that takes. */
final class Vocabulary {
    /** The imports of every cell. */
    static final List<String> IMPORTS = List.of(
            "import static org.kerfleaf.words.Words.*;",
            "import org.kerfleaf.words.*;",
            "import org.kerfleaf.sketch.*;",
            "import org.kerfleaf.measure.*;",
            "import static org.kerfleaf.measure.LengthUnit.*;",
            "import static org.kerfleaf.sketch.Side.*;",
            "import static org.kerfleaf.sketch.Way.*;",
            "import static org.kerfleaf.sketch.Soil.*;",
            "import java.util.*;");

    private Vocabulary() {}

    /** Whether a method of that name would hide a word. */
    static boolean hasMethod(String name) {
        return staticMethods().contains(name);
    }

    private static TreeSet<String> staticMethods() {
        TreeSet<String> names = new TreeSet<>();
        for (String line : IMPORTS) {
            if (line.startsWith("import static ")) {
                load(line.substring("import static ".length(), line.lastIndexOf('.')))
                        .ifPresent(type -> Arrays.stream(type.getMethods())
                                .filter(method -> method.getDeclaringClass() == type)
                                .forEach(method -> names.add(method.getName())));
            }
        }
        return names;
    }

    /** Whether a type of that name would hide one that cells know. */
    static boolean hasType(String name) {
        return load("java.lang." + name).isPresent()
                || IMPORTS.stream()
                        .filter(line -> !line.startsWith("import static "))
                        .map(line -> line.substring("import ".length(), line.lastIndexOf('.') + 1))
                        .anyMatch(prefix -> load(prefix + name).isPresent());
    }

    private static Optional<Class<?>> load(String name) {
        try {
            return Optional.of(Class.forName(name, false, Vocabulary.class.getClassLoader()));
        } catch (ClassNotFoundException | LinkageError none) {
            return Optional.empty();
        }
    }
}
