package org.kerfleaf.kernel.compile;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Where classes were loaded from, be it a jar or a folder. */
public final class Jars {
    private Jars() {}

    /** A class path on which all these classes are found. */
    public static String holding(Class<?>... types) {
        return of(types).stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    /** The jars or folders that hold all these classes. */
    static List<Path> of(Class<?>... types) {
        return Arrays.stream(types).map(Jars::source).distinct().toList();
    }

    private static Path source(Class<?> type) {
        try {
            return Path.of(
                    type.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException notAFile) {
            throw new IllegalStateException("No file holds " + type.getName() + ".", notAFile);
        }
    }
}
