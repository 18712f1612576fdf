package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The word {@code allow}, with a real kernel: what reaches further runs only after it was said. */
class AllowWordTest {
    @TempDir
    Path folder;

    private Path mine;
    private StringWriter out;
    private StringWriter err;

    @BeforeEach
    void workbooks() throws IOException {
        mine = folder.resolve("own/kerfleaf");
        Files.writeString(folder.resolve("rack.md"), KernelPlannerTest.bootRack());
        Files.writeString(folder.resolve("marks.md"), marking());
    }

    /** The rack, with one more cell that writes a file. */
    private String marking() throws IOException {
        String mark = folder.resolve("mark").toString().replace("\\", "\\\\");
        return KernelPlannerTest.bootRack()
                + "\n```java\njava.nio.file.Files.writeString(java.nio.file.Path.of(\"%s\"), \"x\");\n```\n"
                        .formatted(mark);
    }

    private int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        Allowances allowances = new Allowances(mine);
        KernelPlanner planner = new KernelPlanner(allowances);
        Bench bench = new Bench(
                planner,
                planner,
                allowances,
                new Booklets(),
                new PrintWriter(out),
                new PrintWriter(err),
                folder,
                100,
                () -> LocalDate.of(2026, 4, 20));
        return Kerfleaf.run(bench, arguments);
    }

    private void change(String from, String to) throws IOException {
        String text = Files.readString(folder.resolve("marks.md"));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve("marks.md"), text.replace(from, to));
    }

    @Test
    void plan_notAllowed_endsWith2AndNothingRan() {
        assertThat(run("plan", "marks.md")).isEqualTo(2);

        assertThat(err.toString())
                .startsWith("marks.md reaches for more than the words: files." + System.lineSeparator())
                .contains(": files (java.nio.file.Path.of, ", "java.nio.file.Files.writeString")
                .endsWith("say: kerfleaf allow marks.md" + System.lineSeparator());
        assertThat(out.toString()).isEmpty();
        assertThat(folder.resolve("mark")).doesNotExist();
        assertThat(mine).doesNotExist();
    }

    @Test
    void allow_showsRemembersAndRunsNothing() {
        assertThat(run("allow", "marks.md")).isZero();

        assertThat(out.toString())
                .containsPattern("cell \\d, line \\d+: files \\(.*java.nio.file.Files.writeString\\)")
                .contains("java.nio.file.Files.writeString(java.nio.file.Path.of(")
                .contains("To take it back: kerfleaf allow marks.md --forget");
        assertThat(folder.resolve("mark")).doesNotExist();
        assertThat(run("check", "marks.md")).isNotEqualTo(2);
        assertThat(folder.resolve("mark")).hasContent("x");
    }

    @Test
    void allow_holdsForOtherProseAnotherSizeAndACopy_notForAnotherCell() throws IOException {
        run("allow", "marks.md");
        change("\"600 mm\", \"400 mm to 900 mm\"", "\"650 mm\", \"400 mm to 900 mm\"");
        change("# ", "# Another word in the title: ");
        assertThat(run("check", "marks.md")).isNotEqualTo(2);
        Files.copy(folder.resolve("marks.md"), folder.resolve("copy.md"));
        assertThat(run("check", "copy.md", "--size", "Width inside=700 mm")).isNotEqualTo(2);

        change("\"x\");", "\"y\");");

        assertThat(run("check", "marks.md")).isEqualTo(2);
        assertThat(folder.resolve("mark")).hasContent("x");
    }

    @Test
    void forget_takesItBack_alsoWhatTheFileSaidBefore() throws IOException {
        run("allow", "marks.md");
        change("\"x\");", "\"y\");");
        run("allow", "marks.md");

        assertThat(run("allow", "marks.md", "--forget")).isZero();

        assertThat(out).hasToString("Forgotten: marks.md is not allowed any more." + System.lineSeparator());
        assertThat(run("plan", "marks.md")).isEqualTo(2);
        change("\"y\");", "\"x\");");
        assertThat(run("plan", "marks.md")).isEqualTo(2);
        assertThat(run("allow", "marks.md", "--forget")).isZero();
        assertThat(out.toString()).startsWith("marks.md was not allowed");
    }

    @Test
    void allow_wordsOnly_saysThatNothingNeedsToBe() {
        assertThat(run("allow", "rack.md")).isZero();

        assertThat(out)
                .hasToString("rack.md reaches for nothing beyond the words. It runs without being allowed."
                        + System.lineSeparator());
        assertThat(mine).doesNotExist();
    }

    @Test
    void plan_brokenStore_isToldAndNothingRuns() throws IOException {
        run("allow", "marks.md");
        Files.writeString(mine.resolve("allowed"), "all of them, please\n");

        assertThat(run("plan", "marks.md")).isEqualTo(2);

        assertThat(err.toString())
                .startsWith("What was allowed cannot be read from “" + mine.resolve("allowed")
                        + "”: line 1, “all of them, please”, is not as it was written. Nothing that reaches");
        assertThat(folder.resolve("mark")).doesNotExist();
        assertThat(run("allow", "marks.md")).isEqualTo(2);
        assertThat(run("check", "rack.md")).isNotEqualTo(2);
    }

    @Test
    void plan_storeThatIsNoText_isToldAndNothingRuns() throws IOException {
        Files.createDirectories(mine);
        Files.write(mine.resolve("allowed"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});

        assertThat(run("plan", "marks.md")).isEqualTo(2);

        assertThat(err.toString()).contains("“: it is no text.".replace("“", "”"));
        assertThat(folder.resolve("mark")).doesNotExist();
    }

    @Test
    void allow_storeInTheWay_isToldAndNothingIsAllowed() throws IOException {
        Files.createDirectories(mine.getParent());
        Files.writeString(mine, "a file where the folder should be");

        assertThat(run("allow", "marks.md")).isEqualTo(2);

        assertThat(err.toString()).contains("“" + mine).doesNotContain("Exception");
        assertThat(run("plan", "marks.md")).isEqualTo(2);
        assertThat(folder.resolve("mark")).doesNotExist();
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "no such permissions there")
    void allow_noFileCanBeMadeThere_isToldAndNothingIsAllowed() {
        // A folder in which nobody can make a file, whoever runs this.
        mine = Path.of("/proc/self/kerfleaf");

        assertThat(run("allow", "marks.md")).isEqualTo(2);

        assertThat(err.toString())
                .startsWith("This cannot be kept in “/proc/self/kerfleaf”: ")
                .endsWith("What was allowed before is unchanged." + System.lineSeparator());
        assertThat(run("plan", "marks.md")).isEqualTo(2);
    }

    @Test
    void allow_noSuchFile_namesThoseThere() {
        assertThat(run("allow", "mark.md")).isEqualTo(2);
        assertThat(err.toString()).startsWith("There is no file “mark.md”. Workbooks there: marks.md, rack.md.");
    }

    @Test
    void allow_noFile_saysWhatWouldBeRight() {
        assertThat(run("allow")).isEqualTo(2);
        assertThat(err.toString()).startsWith("allow needs a workbook; for example: kerfleaf allow shelf.md");
    }
}
