package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The command as it is handed out, started in a folder of its own. */
class LauncherIT {
    private static final Path DIST = Path.of(System.getProperty("kerfleaf.dist"));

    @TempDir
    Path folder;

    private record Ran(int status, String out, String err) {}

    private Ran run(List<String> program, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(program);
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        List.of("XDG_CACHE_HOME", "LOCALAPPDATA", "HOME")
                .forEach(name -> builder.environment().put(name, folder.toString()));
        int status = builder.start().waitFor();
        return new Ran(
                status, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    private static List<String> jar(String... options) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(options));
        command.addAll(List.of("-jar", DIST.resolve("kerfleaf.jar").toString()));
        return command;
    }

    @Test
    void jar_version_isTheOneBuilt() throws IOException, InterruptedException {
        Ran ran = run(jar(), "--version");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).matches("kerfleaf \\d+\\.\\d+\\.\\d+.*\\R");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void jar_missingFile_endsWith2AndOneLine() throws IOException, InterruptedException {
        Ran ran = run(jar(), "check", "nowhere.md");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().lines())
                .containsExactly("There is no file “nowhere.md”. A workbook is a file that ends in .md.");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void jar_aWorkbook_isPlannedCheckedAndKept() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("rack.md"), KernelPlannerTest.bootRack());
        Ran plan = run(jar(), "plan", "rack.md", "--day", "2026-04-20", "--size", "Width inside=750 mm");
        assertThat(plan.err()).isEmpty();
        assertThat(plan.status()).isZero();
        assertThat(plan.out()).contains("A boot rack", "750");
        assertThat(run(jar(), "check", "rack.md", "--day", "2026-04-20").status())
                .isZero();
        Ran sheet = run(jar(), "spreadsheet", "rack.md");
        assertThat(sheet).isEqualTo(new Ran(0, "Kept rack.xlsx." + System.lineSeparator(), ""));
        Ran booklet = run(jar(), "booklet", "rack.md", "--paper", "a4");
        assertThat(booklet).isEqualTo(new Ran(0, "Kept rack-booklet.pdf." + System.lineSeparator(), ""));
        assertThat(folder.resolve("rack.xlsx")).isNotEmptyFile();
        assertThat(folder.resolve("rack-booklet.pdf")).isNotEmptyFile();
    }

    @Test
    void jar_drawings_areKeptInAFolder() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("rack.md"), KernelPlannerTest.bootRack());
        Ran nothing = run(jar(), "drawings", "rack.md");
        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.err()).startsWith("There is nothing to draw yet: no part has a place.");
        String placed =
                "var shelfIn = place(shelf);\nvar sidesIn = place(side).leftAndRightOf(shelfIn);\ntakes(\"1 h\");";
        Files.writeString(
                folder.resolve("rack.md"), KernelPlannerTest.bootRack().replace("takes(\"1 h\");", placed));
        Ran drawings = run(jar(), "drawings", "rack.md", "--paper", "a4");
        assertThat(drawings.err()).isEmpty();
        assertThat(drawings.status()).isZero();
        assertThat(drawings.out())
                .isEqualTo("Kept 7 drawings in rack-drawings: front.svg, side.svg, top.svg, views.svg, slice.svg, "
                        + "taken-apart.svg, step-1.svg." + System.lineSeparator());
        for (String name : List.of("front", "slice", "taken-apart", "step-1")) {
            assertThat(folder.resolve("rack-drawings/" + name + ".svg")).isNotEmptyFile();
        }
    }

    @Test
    void jar_sameWorkbookAgain_plansTheSameWithoutACompiler() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("rack.md"), KernelPlannerTest.bootRack());
        Ran first = run(jar("-Xlog:class+load:file=first.txt"), "plan", "rack.md", "--day", "2026-04-20");
        Ran again = run(jar("-Xlog:class+load:file=again.txt"), "plan", "rack.md", "--day", "2026-04-20");

        assertThat(again).isEqualTo(first);
        assertThat(folder.resolve("first.txt")).content().contains("jdk.jshell.", "com.sun.tools.javac.");
        assertThat(folder.resolve("again.txt")).content().doesNotContain("jdk.jshell.", "com.sun.tools.javac.");
    }

    @Test
    void jar_workbookThatDoesNotRun_endsWith2AndShowsThePlace() throws IOException, InterruptedException {
        Files.writeString(
                folder.resolve("rack.md"), KernelPlannerTest.bootRack().replace("pair()", "pear()"));
        Ran ran = run(jar(), "plan", "rack.md");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith("rack.md, line 27, column ")
                .contains("pear")
                .doesNotContain("\tat ");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void script_throughALink_findsItsJar() throws IOException, InterruptedException {
        Path link = Files.createSymbolicLink(folder.resolve("kl"), DIST.resolve("kerfleaf"));
        Ran ran = run(List.of(link.toString()), "--help");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("kerfleaf WORD FILE");
    }
}
