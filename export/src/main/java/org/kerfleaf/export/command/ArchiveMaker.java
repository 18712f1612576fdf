package org.kerfleaf.export.command;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Makes the {@link Archive} that fits, in a process of its own.
 *
 * <p>The virtual machine writes an archive when it ends; one that is ended while it writes leaves a torn file, which crashes
 * whoever maps it. So a third process writes it under another name; only after that has ended well, and a fourth has worked
 * with what it wrote, does the archive get its name, in one step. One maker works at a time, others leave it to that one.
 */
final class ArchiveMaker {
    /** Far longer than it takes on a busy machine. */
    private static final int MOST_MINUTES = 5;

    /** For as many Javas or versions of the program side by side. */
    private static final int MOST_KEPT = 3;

    /** How unfinished ones are called. */
    private static final String UNFINISHED = "new";

    private static final String LOADED = "loaded";

    /** How the virtual machine tells that a class came out of such an archive; {@code -Xshare:on} does not insist on it. */
    private static final String FROM_IT = "shared objects file (top)";

    private ArchiveMaker() {}

    /** Makes the archive in the folder named, unless somebody does or has. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Archive wanted = Archive.in(Path.of(arguments[0]));
        try (FileChannel door = FileChannel.open(
                        wanted.folder().resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                // The system takes it back however this process ends.
                var lock = door.tryLock()) {
            if (lock != null) {
                clear(wanted.folder());
                if (!Files.exists(wanted.file())) {
                    make(wanted);
                }
                if (Files.exists(wanted.file())) {
                    name(wanted);
                    prune(wanted);
                }
            }
        }
    }

    /** A process of this program's jar with the launcher's options and others. */
    static List<String> command(List<String> options, Class<?> does, Path folder) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Archive.java(), "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        command.addAll(options);
        command.addAll(List.of("-cp", Archive.jar().toString(), does.getName(), folder.toString()));
        return command;
    }

    private static void make(Archive wanted) throws IOException, InterruptedException {
        Path room = Files.createTempDirectory(wanted.folder(), UNFINISHED);
        Path written = room.resolve("archive");
        try {
            if (ends(room, List.of("-XX:ArchiveClassesAtExit=" + written))
                    && Files.exists(written)
                    && ends(room, List.of("-XX:SharedArchiveFile=" + written, "-Xlog:class+load:file=" + LOADED))
                    && Files.readString(room.resolve(LOADED)).contains(FROM_IT)) {
                try (FileChannel file = FileChannel.open(written, StandardOpenOption.READ)) {
                    // Not the name before what it names, should the power fail.
                    file.force(true);
                }
                Files.move(written, wanted.file(), StandardCopyOption.ATOMIC_MOVE);
            } else {
                Files.write(wanted.refused(), new byte[0]);
            }
        } finally {
            delete(room);
        }
    }

    /** Whether a process of the usual work ends well. */
    private static boolean ends(Path room, List<String> options) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command(options, Rehearsal.class, room))
                .directory(room.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES)) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly().waitFor();
        }
        return process.exitValue() == 0;
    }

    private static void name(Archive wanted) throws IOException {
        Path written = Files.createTempFile(wanted.folder(), UNFINISHED, "");
        Files.writeString(written, wanted.file().getFileName() + System.lineSeparator());
        Files.move(written, wanted.name(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What others left unfinished; none of them works now. */
    private static void clear(Path folder) throws IOException {
        for (Path left : all(folder)) {
            if (left.getFileName().toString().startsWith(UNFINISHED)) {
                delete(left);
            }
        }
    }

    private static void prune(Archive wanted) throws IOException {
        List<Path> oldest = all(wanted.folder()).stream()
                .filter(file -> file.toString().endsWith(".jsa") && !file.equals(wanted.file()))
                .sorted(Comparator.comparing(file -> file.toFile().lastModified()))
                .toList();
        for (Path old : oldest.subList(0, Math.max(0, oldest.size() + 1 - MOST_KEPT))) {
            Files.deleteIfExists(old);
        }
    }

    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    private static void delete(Path left) throws IOException {
        try (Stream<Path> files = Files.walk(left)) {
            for (Path one : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(one);
            }
        }
    }
}
