package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.kerfleaf.words.Words;

/** What every cell sees without saying so, and which names that takes. */
final class Vocabulary {
    private static final List<String> IMPORTS = Words.imports();

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
