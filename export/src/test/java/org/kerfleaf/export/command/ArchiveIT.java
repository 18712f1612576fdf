package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The archive of classes: whatever happens while it is made, the launcher works and prints nothing but its answer. */
@DisabledOnOs(OS.WINDOWS)
@Timeout(1200)
class ArchiveIT {
    private static final Path DIST = Path.of(System.getProperty("kerfleaf.dist"));
    private static final int KILLS = 6;
    private static final long LONGEST_NANOS = 300_000_000_000L;

    @TempDir
    Path folder;

    private Path archives;

    private record Ran(int status, String text) {}

    @BeforeEach
    void aWorkbook() throws IOException {
        archives = folder.resolve("kerfleaf/archives");
        Files.writeString(folder.resolve("rack.md"), KernelPlannerTest.bootRack());
    }

    @AfterEach
    void nobodyIsAtWork() throws Exception {
        await(() -> atWork().isEmpty());
    }

    private Process start(Path dist, String turned, Path said) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                        dist.resolve("kerfleaf").toString(), "plan", "rack.md", "--day", "2026-04-20")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment().put("XDG_CACHE_HOME", folder.toString());
        builder.environment().put("HOME", folder.toString());
        builder.environment().put("KERFLEAF_ARCHIVE", turned);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        return builder.start();
    }

    /** What the launcher says on both streams, and how it ends. */
    private Ran plan(Path dist, String turned) throws IOException, InterruptedException {
        Path said = Files.createTempFile(folder, "said", ".txt");
        return new Ran(start(dist, turned, said).waitFor(), Files.readString(said, StandardCharsets.UTF_8));
    }

    private Ran plan() throws IOException, InterruptedException {
        return plan(DIST, "");
    }

    private Ran planWithout() throws IOException, InterruptedException {
        Ran ran = plan(DIST, "off");
        assertThat(ran.status()).isZero();
        assertThat(ran.text()).contains("A boot rack");
        return ran;
    }

    /** Makers and those whom they have do the work. */
    private List<ProcessHandle> atWork() {
        return ProcessHandle.allProcesses()
                .filter(one -> one.info()
                        .commandLine()
                        .filter(line -> line.contains(ArchiveMaker.class.getPackageName())
                                && line.contains(archives.toString())
                                && !line.contains("-jar"))
                        .isPresent())
                .toList();
    }

    private static void await(Callable<Boolean> event) throws Exception {
        long until = System.nanoTime() + LONGEST_NANOS;
        while (!event.call()) {
            assertThat(System.nanoTime()).as("this does not come about").isLessThan(until);
            Thread.sleep(5);
        }
    }

    private List<Path> all(String beginning, String ending) throws IOException {
        if (!Files.isDirectory(archives)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(archives)) {
            return files.filter(file -> file.getFileName().toString().startsWith(beginning)
                            && file.toString().endsWith(ending))
                    .toList();
        }
    }

    private Path named() throws IOException {
        return archives.resolve(Files.readString(archives.resolve("name")).strip());
    }

    /** The launcher names an archive from which the virtual machine takes classes. */
    private void assertThatOneFits(Path dist) throws Exception {
        await(() -> Files.exists(archives.resolve("name")) && atWork().isEmpty());
        assertThat(loaded(dist, named()))
                .contains("org.kerfleaf.export.command.Kerfleaf source: shared objects file (top)");
        assertThat(all("new", "")).isEmpty();
    }

    /** Which classes the program loads, and from where. */
    private String loaded(Path dist, Path archive) throws IOException, InterruptedException {
        Path loaded = folder.resolve("loaded.txt");
        Process process = new ProcessBuilder(
                        Archive.java(),
                        "-XX:+UseSerialGC",
                        "-XX:SharedArchiveFile=" + archive,
                        "-Xlog:class+load:file=" + loaded,
                        "-jar",
                        dist.resolve("kerfleaf.jar").toString(),
                        "--version")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(process.waitFor()).isZero();
        return Files.readString(loaded);
    }

    @Test
    void twoFirstStartsAtOnce_makeOneArchiveWithWhichThePlanIsTheSame() throws Exception {
        Ran without = planWithout();
        Process one = start(DIST, "", folder.resolve("one.txt"));
        Process other = start(DIST, "", folder.resolve("other.txt"));
        assertThat(one.waitFor()).isZero();
        assertThat(other.waitFor()).isZero();

        assertThatOneFits(DIST);
        assertThat(all("", ".jsa")).hasSize(1);
        assertThat(folder.resolve("one.txt")).hasContent(without.text());
        assertThat(folder.resolve("other.txt")).hasContent(without.text());
        assertThat(plan()).isEqualTo(without);
        assertThat(atWork()).isEmpty();
    }

    @Test
    void makersKilledAtAnyMoment_doNoHarm() throws Exception {
        Ran without = planWithout();
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20260412);
        for (int i = 0; i < KILLS; i++) {
            assertThat(plan()).as("start " + i).isEqualTo(without);
            if (i % 2 == 0) {
                // In the midst of writing: there is something of it.
                await(() -> all("new", "").stream().anyMatch(room -> Files.exists(room.resolve("archive")))
                        || Files.exists(archives.resolve("name")));
            } else {
                long until = System.nanoTime() + random.nextLong(4_000_000_000L);
                await(() -> System.nanoTime() > until || atWork().isEmpty());
            }
            // Also only the first of them, whose child then goes on by itself.
            atWork().stream().limit(i == 1 ? 1 : Long.MAX_VALUE).forEach(ProcessHandle::destroyForcibly);
        }
        assertThat(plan()).isEqualTo(without);
        assertThatOneFits(DIST);
        assertThat(plan()).isEqualTo(without);
    }

    @Test
    void jarChanged_anotherArchiveIsMadeAndTheOldOnePassedOver() throws Exception {
        Ran without = planWithout();
        Path dist = copy();
        assertThat(plan(dist, "")).isEqualTo(without);
        assertThatOneFits(dist);
        Path old = named();
        Path jar = dist.resolve("kerfleaf.jar");
        Files.setLastModifiedTime(jar, FileTime.from(Instant.parse("2026-04-12T10:00:00Z")));

        assertThat(loaded(dist, old)).contains("command.Kerfleaf source: ").doesNotContain("(top)");
        assertThat(plan(dist, "")).isEqualTo(without);
        await(() -> !named().equals(old));
        assertThatOneFits(dist);
    }

    private Path copy() throws IOException {
        Path copy = Files.createDirectories(folder.resolve("copy/lib")).getParent();
        for (Path from : List.of(DIST, DIST.resolve("lib"))) {
            try (Stream<Path> files = Files.list(from)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.copy(file, copy.resolve(DIST.relativize(file)));
                }
            }
        }
        return copy;
    }

    @Test
    void noFolderForIt_noArchive() throws Exception {
        Ran without = planWithout();
        assertThat(archives).doesNotExist();
        Files.writeString(archives, "in the way");

        assertThat(plan()).isEqualTo(without);
        assertThat(archives).hasContent("in the way");
        assertThat(atWork()).isEmpty();
    }
}
