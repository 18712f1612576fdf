package org.kerfleaf.export.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Keeps several files in one folder. All are made before any is touched, and none that somebody else made is written over. */
final class KeptFolder {
    /** Where a file of ours says so at the latest. */
    private static final int HEAD = 4096;

    private KeptFolder() {}

    /**
     * Writes the files and says so.
     *
     * @param typed the folder; null for one of the usual name in the bench's folder
     * @param ending of all files, for naming those left from before
     * @param isOurs whether a file that begins with these bytes was made here
     */
    static void keep(
            Bench bench,
            String typed,
            String usualName,
            String ending,
            Map<String, Consumer<OutputStream>> files,
            Predicate<byte[]> isOurs) {
        String shown = typed == null ? usualName : typed;
        Path folder = WorkbookFile.path(bench.folder(), shown);
        refuseUnlessFolder(folder, shown);
        for (String name : files.keySet()) {
            Path file = folder.resolve(name);
            if (Files.exists(file) && !isOurs(file, isOurs)) {
                throw new Refused(
                        "“%s” in “%s” was not made here, so it stays as it is, and nothing is kept. Another folder can be said with --out."
                                .formatted(name, shown));
            }
        }
        Map<String, byte[]> made = new LinkedHashMap<>();
        files.forEach((name, maker) -> {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            maker.accept(bytes);
            made.put(name, bytes.toByteArray());
        });
        write(folder, shown, made);
        bench.out()
                .println("Kept %d drawings in %s: %s.".formatted(made.size(), shown, String.join(", ", made.keySet())));
        List<String> left = left(folder, ending, files, isOurs);
        if (!left.isEmpty()) {
            bench.out().println("Left there from before: %s.".formatted(String.join(", ", left)));
        }
    }

    private static void refuseUnlessFolder(Path folder, String shown) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new Refused("--out “%s” is a file. A folder would be right.".formatted(shown));
        }
        Path parent = folder.toAbsolutePath().getParent();
        if (!Files.exists(folder) && !Files.isDirectory(parent)) {
            throw new Refused("“%s” cannot be made: there is no folder “%s”. A folder that is there would be right."
                    .formatted(shown, parent.getFileName()));
        }
    }

    private static boolean isOurs(Path file, Predicate<byte[]> isOurs) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return isOurs.test(in.readNBytes(HEAD));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static void write(Path folder, String shown, Map<String, byte[]> made) {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> file : made.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException failed) {
            throw Kept.refused(shown, failed);
        }
    }

    private static List<String> left(Path folder, String ending, Map<String, ?> files, Predicate<byte[]> isOurs) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> isOurs(file, isOurs))
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ending) && !files.containsKey(name))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }
}
