package org.kerfleaf.export.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where a program keeps what belongs to its user and to no workbook: where this system says. */
final class UserFolder {
    private static final String OURS = "kerfleaf";

    private UserFolder() {}

    /**
     * The folder; it need not be there yet.
     *
     * @param system the system's name, as Java tells it
     * @param home the user's home folder
     * @param environment where {@code XDG_CONFIG_HOME} or {@code APPDATA} may say otherwise, with an absolute path (XDG Base
     *     Directory Specification 0.8)
     */
    static Path of(String system, String home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return said(environment.get("APPDATA"))
                    .orElse(Path.of(home, "AppData", "Roaming"))
                    .resolve(OURS);
        }
        if (name.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", OURS);
        }
        return said(environment.get("XDG_CONFIG_HOME"))
                .orElse(Path.of(home, ".config"))
                .resolve(OURS);
    }

    private static Optional<Path> said(String folder) {
        try {
            return Optional.ofNullable(folder)
                    .filter(text -> !text.isBlank())
                    .map(Path::of)
                    .filter(Path::isAbsolute);
        } catch (InvalidPathException impossible) {
            return Optional.empty();
        }
    }
}
