package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.kernel.cell.CellProblem;

/**
 * What a maker reads when a cell does not run, and where it points. Each row is a cell that begins in line 9; the mark
 * ‸ stands where the problem is.
 */
class MessagesTest {
    private static final String GIVEN = """
            measureIn(INCHES);
            pricesIn("USD", "2026-04-12");
            Length width = size("Width inside", "22 in", "16 in to 30 in");
            Sheet ply = sheet("exterior plywood", "48 in", "96 in").soldAs("3/4 in").measured("23/32 in");
            Length t = ply.thickness();
            """;
    private static final int FIRST_LINE = 9;

    /** What no maker should have to read: names of Java's own, how cells are made, and scolding. */
    private static final String NOT_FOR_MAKERS =
            "java\\.|Exception|\\$|REPL|JShell|location:|symbol|identifier|!|[Ii]nvalid|[Ee]rror";

    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)));
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    private static Arguments row(String cell, String words) {
        return Arguments.of(cell, words);
    }

    static List<Arguments> names() {
        return List.of(
                row(
                        "Part floor = panel(\"Floor\", ply).wide(‸widht);",
                        "Nothing is called “widht”. Did you mean “width”?"),
                row("Part floor = ‸panle(\"Floor\", ply);", "Nothing is called “panle”. Did you mean “panel”?"),
                row("Length l = ‸lenght(\"1 in\");", "Nothing is called “lenght”. Did you mean “length”?"),
                row("‸Pert floor = panel(\"Floor\", ply);", "Nothing is called “Pert”. Did you mean “Part”?"),
                row("measureIn(‸INCHS);", "Nothing is called “INCHS”. Did you mean “INCHES”?"),
                row("Part floor = panel(\"Floor\", ‸sheeting);", "Nothing is called “sheeting”."),
                row("int x = ‸q;", "Nothing is called “q”."),
                row(
                        "var all = repeat(2, i -> panel(\"A\" + i, ‸plyy));",
                        "Nothing is called “plyy”. Did you mean “ply”?"),
                row("Part floor = panel(\"Floor\", ply).‸wid(width);", "A part has no “wid”. Did you mean “wide”?"),
                row(
                        "var in = place(panel(\"P\", ply)).‸infrontOf(1);",
                        "A part in its place has no “infrontOf”. Did you mean “inFrontOf”?"),
                row(
                        "‸floor = panel(\"A\", ply);",
                        "Nothing is called “floor” yet. To name it so, write: var floor = ..."),
                row(
                        "‸Part = panel(\"A\", ply);",
                        "A name is missing: “Part” only says what kind of thing it is. Write: Part name = ..."));
    }

    static List<Arguments> wholeChains() {
        return List.of(
                row(
                        "Part floor = panel(\"Floor\", ply)\n    .wide(width)\n    .‸depp(\"11 in\");",
                        "A part has no “depp”. Did you mean “deep”?"),
                row(
                        "// first a comment\n\nPart floor = ‸panle(\"Floor\", ply)\n    .wide(width)\n    .deep(\"11 in\");",
                        "Nothing is called “panle”. Did you mean “panel”?"),
                row(
                        "int good = 1;\nint alsoGood = 2;\nint bad = ‸goood;",
                        "Nothing is called “goood”. Did you mean “good”?"),
                row(
                        "Part a = panel(\"A\", ply)\n    .wide(\"11 in\")\n    .deep(\"7 ‸on\");",
                        "“7 on”, column 3: after 7 a unit is wanted, not “on”."),
                row(
                        "Length w =\n    length(\n        \"12 ‸3/1x in\");",
                        "“12 3/1x in”, column 4: 3/1 after a whole number is not less than one."),
                row(
                        "Sheet s = sheet(\"x\", \"48 in\", \"96 in\")\n    .soldAs(\"3/4 in\")\n    .costs(\"‸abc\");",
                        "“abc” is not a price. A number like 61.50, in USD, would be."),
                row(
                        "Part a = panel(\"A\", ply)\n    .wide(width)\n    ‸.wide(width);",
                        "“A” has “wide” twice. Once is right."));
    }

    static List<Arguments> kinds() {
        return List.of(
                row(
                        "Part a = panel(\"A\", ply).‸wide(22);",
                        "“wide” takes a length, or a text in quotes; here it has a whole number."),
                row(
                        "Part a = panel(\"A\", ply)\n    .wide(width)\n    .‸deep();",
                        "“deep” takes a length, or a text in quotes; here it has nothing."),
                row(
                        "Part a = ‸panel(\"A\").wide(width);",
                        "“panel” takes a text in quotes, then a sheet; here it has a text in quotes."),
                row("Part a = panel(‸ply, \"A\");", "A text in quotes is wanted here, not a sheet."),
                row("Length a = ‸\"22 in\";", "A length is wanted here, not a text in quotes."),
                row("int n = ‸2.5;", "A whole number is wanted here, not one with a point."),
                row("Part p = place(‸ply);", "A part is wanted here, not a sheet."),
                row(
                        "Part p = board(\"P\", ‸ply);",
                        "A board to cut from, like lumber(\"2x4\") is wanted here, not a sheet."),
                row(
                        "var all = ‸repeat(2, panel(\"A\", ply));",
                        "“repeat” takes a whole number, then what to make each time, like i -> panel(...);"
                                + " here it has a whole number, then a part."),
                row("Length a = ‸width + t;", "“+” does not go between a length and a length. Say width.plus(t)."),
                row(
                        "Length a = ‸2 * width;",
                        "“*” does not go between a whole number and a length. Say width.times(2)."),
                row(
                        "Part p = new ‸Part(\"P\");",
                        "This does not make one. Begin with its word, like panel(\"Floor\", ply)."));
    }

    static List<Arguments> signs() {
        return List.of(
                row("Part a = panel(\"A\", ply).wide(width)‸\nPart b = panel(\"B\", ply);", "“;” is missing here."),
                row("var a = width‸\nvar b = t;", "“;” is missing here."),
                row("Part a = panel(\"A\", ply).wide(width.deep(\"11 in\")‸;", "“)” is missing here."),
                row("for (int i = 0; i < 3; i++‸ { }", "“)” is missing here."),
                row("Part a = panel(\"A\", ply).wide(width).deep(\"3 in\")‸);", "One “)” too many."),
                row(
                        "Part a = panel(\"A\", ply).wide(‸\"11 in);",
                        "A \" is missing: the text in quotes does not end in this line."),
                row(
                        "Part a = panel(\"A, ply).wide(width).deep(\"‸11 in\");",
                        "A \" is missing in this line: it has 3."),
                row("Part a = panel(‸“A”, ply);", "“ is no quote that cells know. Write \" instead."),
                row("Part a = panel(‸'Floor', ply);", "Text stands between double quotes, \"like this\"."),
                row("Part a‸ panel(\"A\", ply);", "“=” is missing here, between the name and its value."),
                row("Part a = panel(\"A\", ply).wide(width)‸ deep(\"11 in\");", "“.” is missing here."),
                row("Part a = panel(\"A\", ply).‸.wide(width);", "One “.” too many."),
                row("int x = ‸;", "A value is missing after “=”."),
                row("int x = 10‸ 000;", "A number has no blanks in it."),
                row("int x = 5; ‸}", "One “}” too many."),
                row(
                        "var a = panel(\"A\", ply).wide(width‸",
                        "The cell ends in the middle: a ) or } is missing, or the rest of the line."),
                row("int good = 3;\n‸/* never ends\nint gone = 4;", "The comment does not end: */ is missing."));
    }

    static List<Arguments> thrown() {
        return List.of(
                row(
                        "Length w = size(\"Width\", \"‸13 in\", \"7 in to 12 in\");",
                        "Width can be 7 in to 12 in; 13 in is past the rule."),
                row(
                        "String c = pick(\"Colour\", \"‸red\", \"green\", \"blue\");",
                        "Colour can be green, blue; “red” is none of them."),
                row("int n = count(\"‸Shelves\", 9, \"1 to 4\");", "Shelves can be 1 to 4; 9 is past the rule."),
                row(
                        "Length w = size(\"‸Width inside\", \"22 in\");",
                        "“Width inside” is a size already, in line 4. One label, one size."),
                row(
                        "Angle s = slope(\"Roof\", \"30 ‸degg\");",
                        "“30 degg”, column 4: after 30 degrees, per cent or a run is wanted, not “degg”."),
                row("takes(\"‸25 mni\");", "“25 mni” is no time. 3 h, 25 min or 1 h 30 min would be."),
                row("Length none = null;\nLength m = ‸none.plus(t);", "“none” has no value here."),
                row("Sheet none = null;\nPart a = ‸panel(\"A\", none);", "Something has no value here."),
                row("int z = 0;\n‸int q = 1 / z;", "This divides by zero."),
                row("int[] two = {1, 2};\n‸int b = two[2];", "There is no number 2 here: there are 2, counted from 0."),
                row("Object o = 3;\n‸Part p = (Part) o;", "The value here is of another kind than the one asked for."),
                row(
                        "List<Part> none = List.of();\n‸none.add(panel(\"P\", ply));",
                        "This list cannot be changed. A new ArrayList<>(list) can."),
                row(
                        "Length more(Length x) {\n    return x.plus(\"1 ‸zz\");\n}\nLength m = more(width);",
                        "“1 zz”, column 3: after 1 a unit is wanted, not “zz”."));
    }

    @ParameterizedTest
    @MethodSource({"names", "wholeChains", "kinds", "signs", "thrown"})
    void run_cellThatDoesNotRun_saysWhatAndWhere(String marked, String words) {
        CellProblem problem = onlyProblem(marked.replace("‸", ""));

        int mark = marked.indexOf('‸');
        int line =
                (int) marked.substring(0, mark).chars().filter(c -> c == '\n').count();
        assertThat(problem.words()).startsWith(words).doesNotContainPattern(NOT_FOR_MAKERS);
        assertThat(problem.line()).isEqualTo(FIRST_LINE + line);
        assertThat(problem.column()).isEqualTo(mark - marked.lastIndexOf('\n', mark));
        assertThat(problem.text()).isEqualTo(marked.replace("‸", "").split("\n")[line]);
    }

    private static CellProblem onlyProblem(String cell) {
        List<CellOutcome> cells = outcomes(GIVEN, cell);
        assertThat(cells.get(0).problems()).isEmpty();
        assertThat(cells.get(1).problems()).hasSize(1);
        return cells.get(1).problems().get(0);
    }

    private static List<CellOutcome> outcomes(String... cells) {
        return kernel.run(Book.of(cells).source(), Map.of()).cells();
    }

    @Test
    void run_severalProblemsInSeveralCells_areAllTold() {
        List<CellOutcome> cells = outcomes(
                GIVEN,
                "Part a = panel(\"A\", ply).wide(widht);\nPart b = panel(\"B\", ply).wide(width);\nint n = bb;",
                "Length l = length(\"1 on\");",
                "int x = ;",
                "Part c = panel(\"C\", ply).wide(width);");

        assertThat(cells).extracting(cell -> cell.problems().size()).containsExactly(0, 2, 1, 1, 0);
        assertThat(cells.get(1)).isInstanceOf(CellOutcome.Rejected.class);
        assertThat(cells.get(2)).isInstanceOf(CellOutcome.Threw.class);
        assertThat(cells.get(1).problems()).extracting(CellProblem::line).containsExactly(9, 11);
        assertThat(cells.get(4)).isEqualTo(new CellOutcome.Stands(4));
    }

    /** Some of a cell may stand, some be rejected, some throw: it is called by the worst, and lists all, from the top. */
    @Test
    void run_severalKindsOfProblemsInOneCell_areListedFromTheTop() {
        CellOutcome cell = outcomes(GIVEN, "Length a = length(\"1 on\");\nLength b = a.plus(t);\nint c = widht;")
                .get(1);

        assertThat(cell).isInstanceOf(CellOutcome.Rejected.class);
        assertThat(cell.problems()).extracting(CellProblem::line).containsExactly(9, 10, 11);
        assertThat(cell.problems().get(1).words()).isEqualTo("Waits for “a”, line 9.");
    }

    @Test
    void run_waitsAlongAChain_pointsAtTheNameInItsOwnLine() {
        for (String bad : List.of("Length wide = lenght(\"1 in\");", "Length wide = length(\"1 on\");")) {
            List<CellOutcome> cells = outcomes(
                    GIVEN,
                    bad,
                    "Length more = wide.plus(t);",
                    "Part p = panel(\"P\", ply)\n    .wide(more);",
                    "int ok = 1;");

            CellProblem first = new CellProblem(2, 12, 15, "Length more = wide.plus(t);", "Waits for “wide”, line 9.");
            CellProblem second = new CellProblem(3, 16, 11, "    .wide(more);", "Waits for “wide”, line 9.");
            assertThat(cells.get(2)).isEqualTo(new CellOutcome.Waits(2, "wide", List.of(first)));
            assertThat(cells.get(3)).isEqualTo(new CellOutcome.Waits(3, "wide", List.of(second)));
            assertThat(cells.get(4)).isEqualTo(new CellOutcome.Stands(4));
        }
    }

    @Test
    void run_methodOfAnotherCellThrows_pointsAtBoth() {
        List<CellOutcome> cells =
                outcomes(GIVEN, "Length more(Length x) { return x.plus(\"1 zz\"); }", "Length m = more(width);");

        assertThat(cells.get(1)).isEqualTo(new CellOutcome.Stands(1));
        CellProblem problem = cells.get(2).problems().get(0);
        assertThat(problem.line()).isEqualTo(12);
        assertThat(problem.words()).startsWith("“1 zz”, column 3").endsWith("It happened in line 9.");
    }

    @Test
    void run_liveValueOfAFailedName_waits() {
        KernelOutcome outcome = kernel.run(
                Book.of(GIVEN, "Length wide = length(\"1 on\");")
                        .saying("wide.plus(t)")
                        .saying("widht")
                        .source(),
                Map.of());

        assertThat(outcome.liveValues().get(0)).isEqualTo(prose(11, "wide.plus(t)", "Waits for “wide”, line 9."));
        assertThat(outcome.liveValues().get(1))
                .isEqualTo(prose(12, "widht", "Nothing is called “widht”. Did you mean “width”?"));
    }

    private static LiveOutcome prose(int line, String text, String words) {
        return new LiveOutcome.Failed(new CellProblem(CellProblem.PROSE, line, 1, text, words));
    }

    @Test
    void run_windowsLineEnds_countTheSameLines() {
        CellProblem problem = onlyProblem("int a = 1;\r\nint b = 2;\r\nint c = bb;");

        assertThat(problem.line()).isEqualTo(11);
        assertThat(problem.column()).isEqualTo(9);
    }
}
