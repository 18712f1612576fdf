package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.command.Planned.Withheld;
import org.kerfleaf.export.command.Planned.Wrong;
import org.kerfleaf.export.spreadsheet.PlanFixture;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.reach.Reach;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.reach.Reaching;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.WayOut;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.words.WordIndex;
import org.kerfleaf.workbook.Prose;

/** The words, without a kernel and without a planner. */
class KerfleafTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 20);
    private static final Prose NO_PROSE = new Prose("A potting tray", List.of(), List.of(), List.of());

    private static final Reached REACHED = new Reached(
            List.of(new Reaching(
                    Reach.FILES,
                    List.of("java.nio.file.Files.delete"),
                    new CellProblem(2, 41, 1, "  Files.delete(path);", "This reaches for files."))),
            "0123456789abcdef".repeat(4));

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final List<Wishes> asked = new ArrayList<>();
    private Planned answer = made(PlanFixture.inches());

    private static Planned made(Plan plan) {
        return new Made(plan, NO_PROSE, Optional.empty(), List.of());
    }

    @BeforeEach
    void aWorkbook() throws IOException {
        Files.writeString(folder.resolve("tray.md"), "# A potting tray\n");
    }

    private int run(String... arguments) {
        return run(
                (file, wishes) -> {
                    asked.add(wishes);
                    return answer;
                },
                arguments);
    }

    private int run(WorkbookPlanner planner, String... arguments) {
        BookletWriter booklets = (plan, prose, format, to) -> {
            PrintWriter pdf = new PrintWriter(to, false, StandardCharsets.UTF_8);
            pdf.print(plan.title() + " on " + format);
            pdf.flush();
        };
        Bench bench = new Bench(
                planner,
                file -> REACHED,
                new Allowances(folder.resolve("mine")),
                booklets,
                new PrintWriter(out),
                new PrintWriter(err),
                folder,
                100,
                () -> TODAY);
        return Kerfleaf.run(bench, arguments);
    }

    private void saysOnly(String message) {
        assertThat(err.toString()).isEqualTo(message + System.lineSeparator());
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void plan_aWorkbook_showsItAsText() {
        assertThat(run("plan", "tray.md")).isZero();
        assertThat(out.toString()).contains("A potting tray & its shelf", "18 7/8");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void plan_json_showsTheForm() {
        assertThat(run("plan", "tray.md", "--json")).isZero();
        assertThat(out.toString())
                .startsWith("{")
                .contains("\"workbook\" : \"A potting tray & its shelf\"")
                .doesNotContain("\"reasons\"");
    }

    @Test
    void plan_reasons_areInBothForms() {
        run("plan", "tray.md", "--reasons");
        run("plan", "tray.md", "--json", "--reasons");
        assertThat(out.toString()).contains("  why  A along grain: ").contains("\"reasons\" : {");
    }

    @Test
    void plan_wishes_reachThePlanner() {
        run(
                "plan",
                "tray.md",
                "--size",
                "Width inside=20 in",
                "--size",
                "Back slope = 20 deg",
                "--units",
                "mm",
                "--day",
                "2026-04-12");
        assertThat(asked)
                .containsExactly(new Wishes(
                        Map.of("Width inside", "20 in", "Back slope", "20 deg"),
                        Optional.of(LengthUnit.MILLIMETRES),
                        LocalDate.of(2026, 4, 12)));
    }

    @Test
    void plan_sizeTried_showsWhatChangedInBothForms() {
        answer = new Made(PlanFixture.inches(), NO_PROSE, Optional.of(PlanFixture.changes()), List.of());
        run("plan", "tray.md", "--size", "Width inside=20 in");
        run("plan", "tray.md", "--size", "Width inside=20 in", "--json");
        assertThat(out.toString()).contains("What changed").contains("\"changes\" : [");
    }

    @Test
    void plan_noWishes_areTodayAndTheWorkbooksOwn() {
        run("plan", "tray.md");
        assertThat(asked).containsExactly(new Wishes(Map.of(), Optional.empty(), TODAY));
    }

    @Test
    void plan_workbookThatDoesNotRun_showsThePlaceAndEndsWith2() {
        answer = new Wrong(List.of(new Fault(
                41, 12, "Part shelf = pannel(\"Shelf\", ply);", "“pannel” is no word here. “panel” would be.")));
        assertThat(run("plan", "tray.md")).isEqualTo(2);
        assertThat(err.toString().lines())
                .containsExactly(
                        "tray.md, line 41, column 12: “pannel” is no word here. “panel” would be.",
                        "    Part shelf = pannel(\"Shelf\", ply);",
                        "               ^");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void plan_notes_areToldAndThePlanStands() {
        answer = new Made(
                PlanFixture.inches(),
                NO_PROSE,
                Optional.empty(),
                List.of(new Fault(7, 3, "", "A live value is never closed.")));
        assertThat(run("plan", "tray.md")).isZero();
        assertThat(err.toString())
                .isEqualTo("tray.md, line 7, column 3: A live value is never closed." + System.lineSeparator());
        assertThat(out.toString()).contains("Cut list");
    }

    @Test
    void plan_missingFile_namesItAndTheWorkbooksThere() {
        assertThat(run("plan", "try.md")).isEqualTo(2);
        saysOnly("There is no file “try.md”. Workbooks there: tray.md.");
    }

    @Test
    void plan_folder_namesItAndTheWorkbooksThere() {
        assertThat(run("plan", ".")).isEqualTo(2);
        saysOnly("“.” is a folder. Workbooks there: tray.md.");
    }

    @Test
    void plan_missingFolder_saysSo() {
        assertThat(run("plan", "sheds/tray.md")).isEqualTo(2);
        saysOnly("There is no file “sheds/tray.md”. There is no such folder either.");
    }

    @Test
    void plan_noFile_saysWhatWouldBeRight() {
        assertThat(run("plan")).isEqualTo(2);
        saysOnly("plan needs a workbook; for example: kerfleaf plan shelf.md");
    }

    @Test
    void plan_twoFiles_saysWhatIsTooMany() {
        assertThat(run("plan", "potting", "tray.md")).isEqualTo(2);
        saysOnly(
                "“tray.md” is one thing too many: plan takes one workbook. A name with blanks in it belongs in quotes.");
    }

    @Test
    void plan_wrongUnit_saysWhatWouldBeRight() {
        assertThat(run("plan", "tray.md", "--units", "cm")).isEqualTo(2);
        saysOnly("--units “cm”: in or mm would be right.");
    }

    @Test
    void plan_wrongDay_saysWhatWouldBeRight() {
        assertThat(run("plan", "tray.md", "--day", "12.4.2026")).isEqualTo(2);
        saysOnly("--day “12.4.2026” is no day. A day like 2026-04-12 would be right.");
    }

    @Test
    void plan_sizeWithoutValue_saysWhatWouldBeRight() {
        assertThat(run("plan", "tray.md", "--size", "Width inside")).isEqualTo(2);
        saysOnly("--size “Width inside”: a label, = and a value belong here, as in --size \"Width inside=20 in\".");
    }

    @Test
    void plan_sizeTwice_saysSo() {
        assertThat(run("plan", "tray.md", "--size", "Width=20 in", "--size", "Width=21 in"))
                .isEqualTo(2);
        saysOnly("--size gives “Width” twice. Once is right.");
    }

    @Test
    void plan_optionWithoutValue_saysSo() {
        assertThat(run("plan", "tray.md", "--units")).isEqualTo(2);
        saysOnly("--units needs a value: in|mm");
    }

    @Test
    void plan_optionTwice_saysSo() {
        assertThat(run("plan", "tray.md", "--day", "2026-04-12", "--day", "2026-04-13"))
                .isEqualTo(2);
        saysOnly("--day is given twice. Once is right.");
    }

    @Test
    void plan_unknownOption_saysWhatCanBeAsked() {
        assertThat(run("plan", "tray.md", "--jsn")).isEqualTo(2);
        saysOnly(
                "“--jsn” cannot be asked of plan. It can be asked --day, --help, --json, --memory-limit, --output-limit, --piece-limit, --reasons, --size, --time-limit, --units.");
    }

    @Test
    void kerfleaf_unknownWord_saysWhichThereAre() {
        assertThat(run("plann", "tray.md")).isEqualTo(2);
        saysOnly(
                "“plann” is not a word kerfleaf knows. It knows plan, booklet, drawings, spreadsheet, check, allow, words; for example: kerfleaf plan shelf.md");
    }

    @Test
    void kerfleaf_nothing_saysWhatBelongsThere() {
        assertThat(run()).isEqualTo(2);
        saysOnly(
                "A word and a workbook belong behind kerfleaf. It knows plan, booklet, drawings, spreadsheet, check, allow, words; for example: kerfleaf plan shelf.md");
    }

    @Test
    void kerfleaf_help_showsWordsAndExitStatuses() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains(
                        "plan ", "booklet ", "drawings ", "spreadsheet ", "check ", "words ", "if a check falls short");
    }

    @Test
    void anyWord_help_showsItsOptionsAndExitStatuses() {
        for (String word : List.of("plan", "booklet", "drawings", "spreadsheet", "check", "allow", "words")) {
            assertThat(run(word, "--help")).as(word).isZero();
        }
        assertThat(out.toString()).contains("--paper=a4|letter", "--units=in|mm", "--reasons", "It ends with");
    }

    @Test
    void words_nothingAsked_showsEveryGroupAndWhatTheExamplesSpeakOf() {
        assertThat(run("words")).isZero();
        assertThat(out.toString()).startsWith("━━━━  ━").contains("Around the examples\n\nmeasureIn(INCHES);\n");
        for (String group : WordIndex.GROUPS) {
            assertThat(out.toString().lines())
                    .anyMatch(line -> line.toLowerCase(Locale.ROOT).matches(group + " +\\d+ words"));
        }
        assertThat(out.toString()).contains("""
                        .dado(called, face, near, wide, deep)
                            A groove across the grain, its near side so far from the edge it runs along.
                            panel("End", ply).deep("8 in").high("20 in")
                                .dado("shelf", INSIDE, from(BOTTOM, "9 in"), wide(t), deep("1/4 in")).times(1)
                        """);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void words_aGroup_showsItAlone() {
        assertThat(run("words", "what", "we", "buy")).isZero();
        assertThat(out.toString())
                .contains("What we buy", "woodScrew(gauge, length)", "Said of a screw", ".hotDipGalvanised()")
                .doesNotContain("fasten(these)", ".length()");
    }

    @Test
    void words_aWord_showsEveryWayToSayItInFull() {
        assertThat(run("words", ".Rabbet")).isZero();
        assertThat(out.toString())
                .contains(
                        ".rabbet, said of a part",
                        ".rabbet(face, opening, wide, deep) gives a part",
                        ".rabbet(face, edge, wide, deep) gives a part\n    A step cut along a whole edge, on one face.\n",
                        "    wide: a width, like wide(\"1/2 in\")\n",
                        "For example\n");
    }

    @Test
    void words_aWordThatMakesSomething_showsWhatCanBeSaidOfIt() {
        run("words", "place");
        assertThat(out.toString())
                .contains("place(part) gives a part in its place", "Of that can be said .leftOf, .rightOf,");
    }

    @Test
    void words_twoThingsOfOneName_areBothShown() {
        run("words", "round");
        assertThat(out.toString())
                .contains("\nround ", "\n.round, said of a part ", ".round, said of a part in its place ");
    }

    @Test
    void words_unknown_namesTheNearestAndTheGroups() {
        assertThat(run("words", "rabet")).isEqualTo(2);
        saysOnly("“rabet” is neither a word of a cell nor a group of words. Did you mean “rabbet”? The groups are "
                + String.join(", ", WordIndex.GROUPS) + ".");
    }

    @Test
    void planner_fails_isToldWithoutAStackTrace() {
        int status = run(
                (file, wishes) -> {
                    throw new IllegalStateException("No kerf left.");
                },
                "plan",
                "tray.md");
        assertThat(status).isEqualTo(2);
        assertThat(err.toString().lines())
                .hasSize(1)
                .first()
                .asString()
                .startsWith(
                        "Kerfleaf itself went wrong here, not the workbook: No kerf left. (KerfleafTest.java, line ");
    }

    @Test
    void planner_refuses_isToldAsItIs() {
        int status = run(
                (file, wishes) -> {
                    throw new Refused("There is no size “Wdth”. There is Width.");
                },
                "plan",
                "tray.md");
        assertThat(status).isEqualTo(2);
        saysOnly("There is no size “Wdth”. There is Width.");
    }

    @Test
    void planner_runsOutOfMemory_isTold() {
        int status = run(
                (file, wishes) -> {
                    throw new OutOfMemoryError();
                },
                "plan",
                "tray.md");
        assertThat(status).isEqualTo(2);
        saysOnly("The plan is too large for the memory there is. Fewer pieces would be right.");
    }

    @Test
    void spreadsheet_noPlaceSaid_isKeptInThisFolder() {
        assertThat(run("spreadsheet", "tray.md")).isZero();
        assertThat(out.toString()).isEqualTo("Kept tray.xlsx." + System.lineSeparator());
        assertThat(folder.resolve("tray.xlsx")).isNotEmptyFile();
    }

    @Test
    void spreadsheet_again_saysThatOneWasThere() {
        run("spreadsheet", "tray.md");
        run("spreadsheet", "tray.md");
        assertThat(out.toString()).endsWith("Kept tray.xlsx in place of the one before." + System.lineSeparator());
    }

    @Test
    void spreadsheet_outIsAFolder_isKeptThere() throws IOException {
        Files.createDirectory(folder.resolve("prints"));
        assertThat(run("spreadsheet", "tray.md", "--out", "prints")).isZero();
        assertThat(folder.resolve("prints/tray.xlsx")).isNotEmptyFile();
    }

    @Test
    void spreadsheet_outIsInNoFolder_isRefused() {
        assertThat(run("spreadsheet", "tray.md", "--out", "nowhere/tray.xlsx")).isEqualTo(2);
        saysOnly(
                "“nowhere/tray.xlsx” cannot be kept: there is no folder “nowhere”. A folder that is there would be right.");
    }

    @Test
    void spreadsheet_outIsTheWorkbook_isRefusedAndTheWorkbookStays() {
        assertThat(run("spreadsheet", "tray.md", "--out", "tray.md")).isEqualTo(2);
        saysOnly("--out “tray.md” is the workbook itself. Another name would be right.");
        assertThat(folder.resolve("tray.md")).hasContent("# A potting tray");
    }

    @Test
    void booklet_inches_isPrintedOnLetter() {
        assertThat(run("booklet", "tray.md")).isZero();
        assertThat(folder.resolve("tray-booklet.pdf")).hasContent("A potting tray & its shelf on LETTER");
    }

    @Test
    void booklet_millimetres_isPrintedOnA4() {
        answer = made(PlanFixture.millimetres());
        run("booklet", "tray.md");
        assertThat(folder.resolve("tray-booklet.pdf")).hasContent("A potting tray & its shelf on A4");
    }

    @Test
    void booklet_paperSaid_isUsed() {
        assertThat(run("booklet", "tray.md", "--paper", "a4", "--out", "b.pdf")).isZero();
        assertThat(folder.resolve("b.pdf")).hasContent("A potting tray & its shelf on A4");
    }

    @Test
    void booklet_wrongPaper_isRefusedBeforeTheWorkbookRuns() {
        assertThat(run("booklet", "tray.md", "--paper", "a5")).isEqualTo(2);
        saysOnly("--paper “a5”: a4 or letter would be right.");
        assertThat(asked).isEmpty();
    }

    @Test
    void anyWord_limitsSaid_reachThePlanner() {
        run(
                "check",
                "tray.md",
                "--time-limit",
                "1.5 min",
                "--memory-limit",
                "1GB",
                "--output-limit",
                "100 kB",
                "--piece-limit",
                "50");
        assertThat(asked)
                .extracting(Wishes::limits)
                .containsExactly(new KernelLimits(Duration.ofSeconds(90), 1024, 100_000, 50));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--time-limit   | 20      | a time like 20 s, from 1 ms to 60 min, would be right.",
                "--time-limit   | 0 s     | a time like 20 s, from 1 ms to 60 min, would be right.",
                "--time-limit   | 2 h     | a time like 20 s, from 1 ms to 60 min, would be right.",
                "--memory-limit | 15 MB   | an amount of memory like 512 MB, from 16 MB to 64 GB, would be right.",
                "--memory-limit | 65 GB   | an amount of memory like 512 MB, from 16 MB to 64 GB, would be right.",
                "--memory-limit | much    | an amount of memory like 512 MB, from 16 MB to 64 GB, would be right.",
                "--output-limit | 20      | an amount like 100 kB, from 0 B to 10 MB, would be right.",
                "--piece-limit  | 0       | a number from 1 to 2000 would be right.",
                "--piece-limit  | 2001    | a number from 1 to 2000 would be right.",
            })
    void anyWord_limitThatCannotBe_saysWhatWouldBeRight(String option, String typed, String right) {
        assertThat(run("plan", "tray.md", option, typed)).isEqualTo(2);
        saysOnly("%s “%s”: %s".formatted(option, typed, right));
        assertThat(asked).isEmpty();
    }

    @Test
    void anyWord_workbookNotAllowed_saysWhatWhereAndWhatToSay() {
        answer = new Withheld(REACHED);
        for (String word : List.of("plan", "booklet", "drawings", "spreadsheet", "check")) {
            assertThat(run(word, "tray.md")).as(word).isEqualTo(2);
        }
        assertThat(err.toString().lines().limit(4))
                .containsExactly(
                        "tray.md reaches for more than the words: files.",
                        "    cell 3, line 41: files (java.nio.file.Files.delete)",
                        "        Files.delete(path);",
                        "Nothing of it has run. If you know what these lines do, say: kerfleaf allow tray.md");
        assertThat(out.toString()).isEmpty();
    }

    private static Plan placed() {
        Plan bare = PlanFixture.bare();
        List<PlacedPart> pieces = CabinetSolids.all().stream()
                .map(solid -> new PlacedPart("A", 1, 0, 0, false, WayOut.STAYS, solid))
                .toList();
        return PlanFixture.withPlaced(bare, pieces);
    }

    @Test
    void drawings_noPlaceSaid_areKeptInAFolderOfTheirOwn() throws IOException {
        answer = made(placed());
        assertThat(run("drawings", "tray.md")).isZero();
        assertThat(out.toString())
                .isEqualTo("Kept 5 drawings in tray-drawings: front.svg, side.svg, top.svg, views.svg, slice.svg."
                        + System.lineSeparator());
        assertThat(err.toString()).isEmpty();
        for (String name : List.of("front", "side", "top", "views", "slice")) {
            String svg = Files.readString(folder.resolve("tray-drawings").resolve(name + ".svg"));
            assertThat(svg)
                    .startsWith("<svg ")
                    .contains("<title", "<desc", "An empty bench")
                    .doesNotContain("<text");
        }
    }

    @Test
    void drawings_again_areWrittenOverAndStrayOnesNamed() throws IOException {
        answer = made(placed());
        run("drawings", "tray.md", "--out", "d");
        Path stray = folder.resolve("d/step-9.svg");
        Files.copy(folder.resolve("d/front.svg"), stray);
        Files.writeString(folder.resolve("d/my own.svg"), "<svg/>");
        assertThat(run("drawings", "tray.md", "--out", "d")).isZero();
        assertThat(out.toString()).endsWith("Left there from before: step-9.svg." + System.lineSeparator());
        assertThat(stray).exists();
    }

    @Test
    void drawings_whatSomebodyElseMade_staysAndNothingIsKept() throws IOException {
        answer = made(placed());
        Files.createDirectory(folder.resolve("d"));
        Files.writeString(folder.resolve("d/slice.svg"), "<svg/>");
        assertThat(run("drawings", "tray.md", "--out", "d")).isEqualTo(2);
        saysOnly(
                "“slice.svg” in “d” was not made here, so it stays as it is, and nothing is kept. Another folder can be said with --out.");
        assertThat(folder.resolve("d/slice.svg")).hasContent("<svg/>");
        assertThat(folder.resolve("d/front.svg")).doesNotExist();
    }

    @Test
    void drawings_png_areAsLargeAsOnPaperAndKnownAgain() throws IOException {
        answer = made(placed());
        assertThat(run("drawings", "tray.md", "--png", "--paper", "letter", "--out", "d"))
                .isZero();
        BufferedImage front = ImageIO.read(folder.resolve("d/front.png").toFile());
        assertThat(front.getWidth()).isBetween(400, (int) Math.ceil(185.9 / 25.4 * 200) + 1);
        assertThat(front.getHeight()).isBetween(400, (int) Math.ceil(257.4 / 25.4 * 200) + 1);
        assertThat(run("drawings", "tray.md", "--png", "--paper", "letter", "--out", "d"))
                .isZero();
    }

    @Test
    void drawings_outIsAFile_isRefused() {
        answer = made(placed());
        assertThat(run("drawings", "tray.md", "--out", "tray.md")).isEqualTo(2);
        saysOnly("--out “tray.md” is a file. A folder would be right.");
    }

    @Test
    void drawings_outIsInNoFolder_isRefused() {
        answer = made(placed());
        assertThat(run("drawings", "tray.md", "--out", "nowhere/d")).isEqualTo(2);
        saysOnly("“nowhere/d” cannot be made: there is no folder “nowhere”. A folder that is there would be right.");
    }

    @Test
    void drawings_nothingPlaced_isRefused() {
        assertThat(run("drawings", "tray.md")).isEqualTo(2);
        saysOnly("There is nothing to draw yet: no part has a place. Say where with place(…).");
    }

    @Test
    void drawings_wrongPaper_isRefusedBeforeTheWorkbookRuns() {
        assertThat(run("drawings", "tray.md", "--paper", "a5")).isEqualTo(2);
        saysOnly("--paper “a5”: a4 or letter would be right.");
        assertThat(asked).isEmpty();
    }

    @Test
    void check_oneShort_endsWith1AndShowsItFirst() {
        assertThat(run("check", "tray.md")).isEqualTo(1);
        assertThat(out.toString())
                .containsSubsequence("short", "Screw reach: Back to Floor", "holds")
                .doesNotContain("Cut list");
    }

    @Test
    void check_noneShort_endsWith0() {
        answer = made(PlanFixture.bare());
        assertThat(run("check", "tray.md")).isZero();
    }

    @Test
    void check_planThatMakesNoSense_endsWith1() {
        answer = made(PlanFixture.withProblem());
        assertThat(run("check", "tray.md")).isEqualTo(1);
        assertThat(out.toString()).contains("line 41  Shelf and Back are in one place");
    }
}
