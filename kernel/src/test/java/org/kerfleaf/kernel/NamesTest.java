package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Problem;

/** One name, one value: what a workbook may say twice, above, or over again, and what waits for what. */
class NamesTest {
    private static final String STOCK = """
            measureIn(INCHES);
            Length width = size("Width", "22 in");
            Sheet ply = sheet("ply", "48 in", "96 in").soldAs("3/4 in");
            """;

    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)));
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    private static KernelOutcome run(String... cells) {
        return kernel.run(Book.of(cells).source(), Map.of());
    }

    /** Every problem as {@code line:column words}. */
    private static List<String> problems(KernelOutcome outcome) {
        return outcome.cells().stream()
                .flatMap(cell -> cell.problems().stream())
                .map(NamesTest::placed)
                .toList();
    }

    private static String placed(CellProblem problem) {
        return problem.line() + ":" + problem.column() + " " + problem.words();
    }

    @Test
    void run_nameDeclaredTwice_keepsTheFirstAndPointsAtIt() {
        KernelOutcome outcome =
                run(STOCK, "Length width = length(\"3 in\");", "Part p = panel(\"P\", ply).wide(width);");

        assertThat(problems(outcome))
                .containsExactly("7:8 “width” has its value already, in line 3. One name, one value.");
        assertThat(outcome.cells().get(1)).isInstanceOf(CellOutcome.Rejected.class);
        assertThat(outcome.cells().get(2)).isInstanceOf(CellOutcome.Stands.class);
        assertThat(outcome.stands()).isFalse();
    }

    @Test
    void run_nameDeclaredTwiceInOneCell_isRefused() {
        assertThat(problems(run("int a = 1, b = 2;\nint b = 3;")))
                .containsExactly("3:5 “b” has its value already, in line 2. One name, one value.");
    }

    @Test
    void run_methodsOfOneNameForDifferentValues_stand() {
        assertThat(run("int half(int n) { return n / 2; }\ndouble half(double n) { return n / 2; }\nvar h = half(3.0);")
                        .stands())
                .isTrue();
    }

    @Test
    void run_valueGivenAgain_isRefusedWhereverItIsDone() {
        String words = "“n” has its value already, in line 2. One name, one value.";

        assertThat(problems(run("int n = 0;", "n = 5;"))).containsExactly("5:1 " + words);
        assertThat(problems(run("int n = 0;", "n++;"))).containsExactly("5:1 " + words);
        assertThat(problems(run("int n = 0;", "for (int i = 0; i < 3; i++)\n    n += i;")))
                .containsExactly("6:5 " + words);
        assertThat(problems(run("int n = 0;", "Runnable r = () -> n++;"))).containsExactly("5:20 " + words);
    }

    @Test
    void run_methodThatGivesAValueAgain_isRefusedAndWhatCallsItWaits() {
        KernelOutcome outcome = run("int n = 0;", "void up() { n = n + 1; }", "up();");

        assertThat(problems(outcome))
                .containsExactly(
                        "5:13 “n” has its value already, in line 2. One name, one value.",
                        "8:1 Waits for “up”, line 5.");
    }

    @Test
    void run_nameUsedAboveItsDeclaration_saysWhereThatIs() {
        assertThat(problems(run(STOCK, "Part a = panel(\"A\", ply).wide(later);", "Length later = length(\"3 in\");")))
                .containsExactly("7:31 “later” is said further down, in line 10. Move that above this.");
    }

    @Test
    void run_methodThatReadsANameFurtherDown_isRefused() {
        assertThat(problems(run(
                        "Length twice() { return later.times(2); }\nLength b = twice();",
                        "Length later = length(\"3 in\");")))
                .containsExactly(
                        "2:25 “later” is said further down, in line 6. Move that above this.",
                        "3:12 Waits for “twice”, line 2.");
    }

    @Test
    void run_methodThatNeedsAnotherFurtherDown_stands() {
        assertThat(run("int n() { return m() + 1; }\nint a = n();", "int m() { return 2; }\nint b = n();")
                        .stands())
                .isTrue();
    }

    @Test
    void run_methodThatReadsThroughAnotherWhatIsFurtherDown_isNotUsedBeforeThat() {
        assertThat(problems(run(
                        "int n() { return m() + 1; }\nint a = n();\nint c = a;",
                        "int v = 3;",
                        "int m() { return v; }\nint b = n();")))
                .containsExactly(
                        "3:9 “n” needs “v”, which is said further down, in line 7. Move that above this.",
                        "4:9 Waits for “a”, line 3.");
    }

    @Test
    void run_methodOrTypeDeclaredTwice_keepsTheFirstAndPointsAtIt() {
        assertThat(problems(run(
                        "int half(int n) { return n / 2; }\nrecord Leg(int n) {}",
                        "int half(final int other) { return 0; }\nclass Leg {}")))
                .containsExactly(
                        "6:5 “half” is said already, in line 2. One name, one thing.",
                        "7:7 “Leg” is said already, in line 3. One name, one thing.");
    }

    @Test
    void run_importSaidTwice_stands() {
        assertThat(run("import java.time.*;", "import java.time.*;\nvar none = Duration.ZERO;")
                        .stands())
                .isTrue();
    }

    @Test
    void run_nameInAnyLanguage_isAName() {
        assertThat(problems(run(
                        "Length größe = length(\"3 in\");\nLength größe = größe;",
                        "Length b = grösse;\nLength c = größe.half();\nLength d = später;",
                        "Length später = größe;")))
                .containsExactly(
                        "3:8 “größe” has its value already, in line 2. One name, one value.",
                        "6:12 Nothing is called “grösse”. Did you mean “größe”?",
                        "8:12 “später” is said further down, in line 11. Move that above this.");
    }

    @Test
    void run_methodsAndTypesThatSpeakOfEachOther_standInAnyOrder() {
        assertThat(run("boolean even(int n) { return n == 0 || odd(n - 1); }\n"
                                + "boolean odd(int n) { return n != 0 && even(n - 1); }\n"
                                + "record A(B b) {}\nrecord B(int n) {}\n"
                                + "boolean four = even(4);\nA a = new A(new B(1));")
                        .stands())
                .isTrue();
    }

    @Test
    void run_methodOrTypeNamedLikeAWord_isRefused() {
        assertThat(problems(run("Part panel(String s) { return null; }\nrecord Part(int n) {}\nrecord List(int n) {}")))
                .containsExactly(
                        "2:6 “panel” is a word of the workbook's own. Another name would be right, like “myPanel”.",
                        "3:8 “Part” is a word of the workbook's own. Another name would be right, like “MyPart”.",
                        "4:8 “List” is a word of the workbook's own. Another name would be right, like “MyList”.");
    }

    @Test
    void run_variableNamedLikeAWord_stands() {
        assertThat(run(STOCK, "Sheet sheet = ply;\nPart panel = panel(\"P\", sheet).wide(width);")
                        .stands())
                .isTrue();
    }

    @Test
    void run_numberedName_isNoName() {
        assertThat(problems(run("1 + 2;", "int x = $1;")))
                .containsExactly("5:9 “$1” is no name. Give the value a name.");
    }

    @Test
    void run_cellThatThrows_isWaitedForByItsRootName() {
        KernelOutcome outcome =
                run("Length a = length(\"1 zz\");", "Length b = a.plus(a);", "Length c = b.half();", "int fine = 1;");

        assertThat(outcome.cells())
                .extracting(cell -> cell.getClass().getSimpleName())
                .containsExactly("Threw", "Waits", "Waits", "Stands");
        assertThat(problems(outcome).subList(1, 3))
                .containsExactly("5:12 Waits for “a”, line 2.", "8:12 Waits for “a”, line 2.");
    }

    @Test
    void run_cellThatDoesNotCompile_isWaitedForByItsRootName() {
        KernelOutcome outcome = run(
                "Length a = lenght(\"1 in\");",
                "Length b = a.plus(a);",
                "int n() { return b == null ? 1 : 2; }",
                "int z = n();");

        assertThat(problems(outcome))
                .containsExactly(
                        "2:12 Nothing is called “lenght”. Did you mean “length”?",
                        "5:12 Waits for “a”, line 2.",
                        "8:18 Waits for “a”, line 2.",
                        "11:9 Waits for “a”, line 2.");
    }

    @Test
    void run_onePieceOfACellFails_theOthersCount() {
        KernelOutcome outcome =
                run(STOCK, "int a = ;", "Part p = panel(\"P\", ply).wide(width);\nPart q = panel(\"Q\", plyy);");

        assertThat(outcome.sketch().orElseThrow().all(Part.class))
                .extracting(Part::name)
                .containsExactly("P");
        assertThat(outcome.cells())
                .extracting(cell -> cell.getClass().getSimpleName())
                .containsExactly("Stands", "Rejected", "Rejected");
    }

    @Test
    void run_partMadeAndKeptNowhere_isPointedOut() {
        KernelOutcome outcome = run(STOCK, "for (int i = 0; i < 3; i++) {\n    panel(\"P\" + i, ply).wide(width);\n}");

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.origin().line()).isEqualTo(8);
            assertThat(problem.words()).startsWith("A part is made here and kept nowhere, so it does not count.");
        });
    }

    @Test
    void run_sizeThatNobodyHas_isPointedOut() {
        KernelOutcome outcome = kernel.run(Book.of(STOCK).source(), Map.of("Widht", "3 in"));

        assertThat(outcome.problems())
                .extracting(Problem::words)
                .containsExactly("No size is called “Widht”. The sizes are: Width.");
    }
}
