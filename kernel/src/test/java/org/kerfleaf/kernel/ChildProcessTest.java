package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.kerfleaf.kernel.reach.Trust;

/** What the process that runs cells has of the program that started it: nothing. */
class ChildProcessTest {
    private static Kernel kernel;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)), Trust.EVERYTHING);
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    private static String printedBy(String cell) {
        KernelOutcome outcome = kernel.run(Book.of(cell).source(), Map.of());
        assertThat(outcome.stands()).as(outcome.cells().toString()).isTrue();
        return outcome.printed();
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void environment_isEmpty() {
        // Some systems put this one into every process by themselves.
        assertThat(
                        printedBy(
                                "var all = new TreeMap<>(System.getenv()); all.remove(\"__CF_USER_TEXT_ENCODING\"); System.out.print(all);"))
                .isEqualTo("{}");
    }

    @Test
    void folder_isItsOwnAndEmpty() throws IOException {
        String there = printedBy("System.out.print(new java.io.File(\"\").getAbsolutePath());");

        assertThat(Path.of(there)).isEmptyDirectory().isNotEqualTo(Path.of("").toAbsolutePath());
        assertThat(Path.of(there).toRealPath())
                .isEqualTo(kernel.child().folder().toRealPath());
    }

    @Test
    void folder_whatARunLeft_isGoneInTheNext() {
        printedBy(
                "new java.io.File(\"deep/er\").mkdirs(); java.nio.file.Files.writeString(java.nio.file.Path.of(\"deep/er/a\"), \"x\");");

        assertThat(printedBy("System.out.print(new java.io.File(\"\").getAbsoluteFile().list().length);"))
                .isEqualTo("0");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void folder_linkOutOfIt_isDeletedAndNotFollowed() throws IOException {
        Files.writeString(folder.resolve("kept"), "x");

        printedBy(
                "java.nio.file.Files.createSymbolicLink(java.nio.file.Path.of(\"link\"), java.nio.file.Path.of(\"%s\"));"
                        .formatted(folder));

        assertThat(printedBy("System.out.print(new java.io.File(\"link\").exists());"))
                .isEqualTo("false");
        assertThat(folder.resolve("kept")).exists();
    }

    @Test
    void folder_fileBesideTheWorkbook_isNotFoundAndSaidHow() {
        KernelOutcome outcome = kernel.run(
                Book.of("var all = java.nio.file.Files.readAllLines(java.nio.file.Path.of(\"prices.txt\"));")
                        .source(),
                Map.of());

        assertThat(outcome.cells().get(0).problems().get(0).words())
                .isEqualTo(
                        "There is no “prices.txt” here. Cells run in an empty folder of their own; a path from the root on would be right.");
    }

    @Test
    void folder_isDeletedWithTheProcess() {
        Path there;
        try (Kernel short1 = Kernel.start(KernelLimits.DEFAULT)) {
            there = short1.child().folder();
            assertThat(there).isDirectory();
        }
        assertThat(there).doesNotExist();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void descriptors_areItsOwn() throws IOException {
        Path open = Files.writeString(folder.resolve("secret"), "x");
        try (InputStream held = Files.newInputStream(open);
                Kernel other = Kernel.start(KernelLimits.DEFAULT)) {
            assertThat(held.read()).isEqualTo('x');
            List<String> all = descriptors(other.child().process().pid());

            assertThat(descriptors(ProcessHandle.current().pid())).contains(open.toString());
            assertThat(all).doesNotContain(open.toString());
            // Three ends of pipes, one connection, and what its Java and its class path are read from.
            assertThat(all).filteredOn(one -> one.startsWith("pipe:")).hasSizeLessThanOrEqualTo(3);
            assertThat(all).filteredOn(one -> one.startsWith("socket:")).hasSizeLessThanOrEqualTo(2);
            assertThat(all)
                    .filteredOn(one -> one.startsWith("/") && !one.startsWith("/dev/"))
                    .allMatch(one -> one.endsWith(".jar") || one.endsWith("/lib/modules"));
        }
    }

    private static List<String> descriptors(long pid) throws IOException {
        try (Stream<Path> all = Files.list(Path.of("/proc/" + pid + "/fd"))) {
            return all.map(ChildProcessTest::target).toList();
        }
    }

    private static String target(Path descriptor) {
        try {
            return Files.readSymbolicLink(descriptor).toString();
        } catch (IOException closedSince) {
            return "";
        }
    }
}
