package org.kerfleaf.export.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Finds the workbook somebody named. */
final class WorkbookFile {
    private static final String ENDING = ".md";
    private static final int MOST_NAMED = 5;

    private WorkbookFile() {}

    static Path find(Path folder, String typed) {
        Path file = path(folder, typed);
        if (Files.isDirectory(file)) {
            throw new Refused("“%s” is a folder. %s".formatted(typed, workbooksIn(file)));
        }
        if (!Files.exists(file)) {
            Path parent = file.getParent();
            String rest = Files.isDirectory(parent) ? workbooksIn(parent) : "There is no such folder either.";
            throw new Refused("There is no file “%s”. %s".formatted(typed, rest));
        }
        if (!Files.isReadable(file)) {
            throw new Refused("“%s” is there, but you may not read it.".formatted(typed));
        }
        return file;
    }

    static Path path(Path folder, String typed) {
        try {
            return folder.resolve(typed).normalize();
        } catch (InvalidPathException impossible) {
            throw new Refused("“%s” cannot be the name of a file.".formatted(typed));
        }
    }

    /** The file's name without {@code .md}. */
    static String name(Path file) {
        String name = file.getFileName().toString();
        boolean ends = name.toLowerCase(Locale.ROOT).endsWith(ENDING) && name.length() > ENDING.length();
        return ends ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    private static String workbooksIn(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ENDING))
                    .sorted()
                    .limit(MOST_NAMED)
                    .toList();
            return names.isEmpty()
                    ? "A workbook is a file that ends in .md."
                    : "Workbooks there: %s.".formatted(String.join(", ", names));
        } catch (IOException unreadable) {
            return "A workbook is a file that ends in .md.";
        }
    }
}
