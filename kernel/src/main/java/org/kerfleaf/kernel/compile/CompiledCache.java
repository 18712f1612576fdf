package org.kerfleaf.kernel.compile;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.wire.Packing;

/**
 * Keeps what was compiled in a folder, so that a workbook that was opened before need not be compiled again. Only workbooks
 * with which nothing is wrong are kept. An entry belongs to the text of the cells, and to what compiled it: see
 * {@link CacheKey}. An entry that is broken, or that somebody else made, is as good as none; so is a folder that cannot be
 * read or written. Several processes may use one folder.
 */
public final class CompiledCache {
    /** All entries together; past it those that were not used for longest go. A large workbook takes 0.5 MB. */
    static final long MOST_BYTES = 32L * 1024 * 1024;

    private static final String ENDING = ".compiled";
    private static final int DIGEST = 32;

    private final Path folder;

    private CompiledCache(Path folder) {
        this.folder = folder;
    }

    /** Entries in a folder, which is made when the first is kept. */
    public static CompiledCache in(Path folder) {
        return new CompiledCache(folder);
    }

    /** What was kept for a workbook of this text; places are those of this source. */
    Optional<CompiledWorkbook> find(WorkbookSource source) {
        Path file = file(source);
        try {
            byte[] all = Files.readAllBytes(file);
            byte[] entry = Arrays.copyOfRange(all, Math.min(DIGEST, all.length), all.length);
            if (!Arrays.equals(
                    all, 0, Math.min(DIGEST, all.length), CacheKey.digest().digest(entry), 0, DIGEST)) {
                return Optional.empty();
            }
            CompiledWorkbook found = Packing.unpack(CacheEntry.class, entry).at(source);
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            return Optional.of(found);
        } catch (IOException | IndexOutOfBoundsException none) {
            return Optional.empty();
        }
    }

    /** Keeps what was compiled of a workbook, if nothing is wrong with it. */
    void keep(WorkbookSource source, CompiledWorkbook compiled) {
        if (!compiled.isClean()) {
            return;
        }
        try {
            makeFolder();
            byte[] entry = Packing.pack(CacheEntry.class, CacheEntry.of(compiled));
            Path written = Files.createTempFile(folder, "new", ENDING);
            try {
                Files.write(written, concat(CacheKey.digest().digest(entry), entry));
                // Whoever reads finds the whole of the old one, or the whole of the new one.
                Files.move(written, file(source), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(written);
            }
            prune();
        } catch (IOException notKept) {
            // Then it is compiled again.
        }
    }

    private void makeFolder() throws IOException {
        if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            // Bytecode that runs is nobody else's to write.
            Files.createDirectories(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectories(folder);
        }
    }

    private Path file(WorkbookSource source) {
        return folder.resolve(CacheKey.of(source) + ENDING);
    }

    private static byte[] concat(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    private void prune() throws IOException {
        record Entry(Path file, long bytes, FileTime used) {}
        List<Entry> newestFirst;
        try (Stream<Path> files = Files.list(folder)) {
            newestFirst = files.filter(file -> file.toString().endsWith(ENDING))
                    .flatMap(file -> {
                        try {
                            return Stream.of(new Entry(file, Files.size(file), Files.getLastModifiedTime(file)));
                        } catch (IOException goneMeanwhile) {
                            return Stream.empty();
                        }
                    })
                    .sorted(Comparator.comparing(Entry::used).reversed())
                    .toList();
        }
        long bytes = 0;
        for (Entry one : newestFirst) {
            bytes += one.bytes();
            if (bytes > MOST_BYTES) {
                Files.deleteIfExists(one.file());
            }
        }
    }

    /**
     * Where this user's platform keeps what can be made again: the folder that the system property
     * {@code kerfleaf.cache} names, else {@code %LOCALAPPDATA%\Kerfleaf\Cache} on Windows,
     * {@code ~/Library/Caches/kerfleaf} on macOS, and {@code $XDG_CACHE_HOME/kerfleaf} or {@code ~/.cache/kerfleaf}
     * elsewhere (XDG Base Directory Specification 0.8).
     */
    public static CompiledCache ofUser() {
        String asked = System.getProperty("kerfleaf.cache", "");
        if (!asked.isEmpty()) {
            return in(Path.of(asked));
        }
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home"));
        if (system.startsWith("windows")) {
            return in(set("LOCALAPPDATA")
                    .orElse(home.resolve("AppData").resolve("Local"))
                    .resolve("Kerfleaf")
                    .resolve("Cache"));
        }
        if (system.startsWith("mac")) {
            return in(home.resolve("Library").resolve("Caches").resolve("kerfleaf"));
        }
        return in(set("XDG_CACHE_HOME").orElse(home.resolve(".cache")).resolve("kerfleaf"));
    }

    // A relative path is to be taken for none, the specification says.
    private static Optional<Path> set(String variable) {
        return Optional.ofNullable(System.getenv(variable)).map(Path::of).filter(Path::isAbsolute);
    }
}
