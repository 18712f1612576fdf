package org.kerfleaf.kernel.compile;

import java.util.Optional;
import org.kerfleaf.sketch.Declaration;

/** Which types of the vocabulary count when they are a value. */
final class Declarations {
    private Declarations() {}

    /** The type of that name, if it is one that counts. */
    static Optional<Class<?>> find(String className) {
        try {
            Class<?> type = Class.forName(className, false, Declaration.class.getClassLoader());
            return Declaration.class.isAssignableFrom(type) ? Optional.of(type) : Optional.empty();
        } catch (ClassNotFoundException none) {
            return Optional.empty();
        }
    }
}
