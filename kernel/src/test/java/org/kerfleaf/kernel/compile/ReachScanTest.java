package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.reach.Reach;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.reach.Reaching;

/** What is read from the bytecode; nothing here runs. */
class ReachScanTest {
    private static CellCompiler compiler;

    @BeforeAll
    static void open() {
        compiler = new CellCompiler();
    }

    @AfterAll
    static void close() {
        compiler.close();
    }

    private static Reached reached(String prose, String... cells) {
        List<CellSource> all = new ArrayList<>();
        for (String cell : cells) {
            all.add(new CellSource(all.size(), cell, 10 * all.size() + 1, 0));
        }
        CompiledWorkbook compiled =
                compiler.compile(new WorkbookSource("A box", List.of(), all, List.of(new ProseSource(0, prose, 99))));
        assertThat(compiled.refusals()).isEmpty();
        return ReachScan.of(compiled);
    }

    private static String content(String... cells) {
        return reached("1", cells).content();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "measureIn(INCHES); Sheet ply = sheet(\"plywood\", \"48 in\", \"96 in\").soldAs(\"3/4 in\"); var t = ply.thickness();",
                "Length w = size(\"Width\", \"22 in\", \"16 in to 30 in\"); var all = repeat(3, i -> w.times(i + 1));",
                "record Leg(String name, int n) { public Leg { if (n < 0) throw new IllegalArgumentException(name); } }\nvar leg = new Leg(\"a\" + 1, 2); boolean same = leg.equals(leg); String told = leg.toString();",
                "enum Wood { OAK, ASH; Wood next() { return values()[(ordinal() + 1) % 2]; } }\nvar ash = Wood.valueOf(\"ASH\");\nString told = switch (ash) { case OAK -> \"o\"; case ASH -> \"a\"; };",
                "sealed interface Fit permits Tight, Loose {} record Tight() implements Fit {} record Loose(int by) implements Fit {}",
                "System.out.println(\"here\"); System.err.printf(\"%d%n\", 3); System.out.append(\"x\");",
                "List<Integer> some = new ArrayList<>(List.of(3, 1, 2)); some.sort(Comparator.comparing(i -> -i)); var max = some.stream().mapToInt(Integer::intValue).max().getAsInt();",
                "Map<Side, Integer> by = new EnumMap<>(Side.class); by.merge(LEFT, 1, Integer::sum);",
                "int sum(int... all) { int s = 0; for (int one : all) { assert one >= 0; s += one; } return s; }\nint six = sum(1, 2, 3);",
                "class Odd extends AbstractList<String> { public String get(int i) { return \"\" + i; } public int size() { return 2; } }\nvar odd = new Odd(); var copy = odd.toArray(new String[0]).clone();",
                "java.util.function.Supplier<String> made = String::new; Runnable r = () -> { throw new RuntimeException(\"no\"); };",
                "Object any = 3; String told = any instanceof Integer n && n > 2 ? String.format(\"%s\", n) : \"\"; double root = Math.sqrt(2);",
                "try { Integer.parseInt(\"x\"); } catch (NumberFormatException wrong) { wrong.printStackTrace(); }",
                "var day = java.time.LocalDate.of(2026, 4, 12); var price = new java.math.BigDecimal(\"61.50\"); var text = new java.text.DecimalFormat(\"0.0\").format(1.5);",
                "try (java.io.StringReader in = new java.io.StringReader(\"a\")) { in.read(); }",
            })
    void of_whatOnlyCalculates_reachesForNothing(String cell) {
        assertThat(reached("1", cell).all()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "java.nio.file.Files.readString(java.nio.file.Path.of(\"a\"))  | FILES       | java.nio.file.Files.readString",
                "new java.io.File(\"a\").length()                              | FILES       | java.io.File.length",
                "java.util.stream.Stream.of(\"a\").map(java.io.File::new).toList() | FILES   | java.io.File",
                "new java.io.PrintStream(\"a\")                                | FILES       | java.io.PrintStream",
                "new Scanner(\"a\").next()                                     | FILES       | java.util.Scanner",
                "new Formatter(\"a\").toString()                               | FILES       | java.util.Formatter",
                "new java.net.URL(\"http://a\").openStream()                   | NETWORK     | java.net.URL.openStream",
                "new ProcessBuilder(\"a\").start()                             | PROCESSES   | java.lang.ProcessBuilder.start",
                "Runtime.getRuntime().exec(\"a\")                              | PROCESSES   | java.lang.Runtime.exec",
                "ProcessHandle.current().pid()                                 | PROCESSES   | java.lang.ProcessHandle.pid",
                "Class.forName(\"a\")                                          | REFLECTION  | java.lang.Class.forName",
                "\"a\".getClass().getName()                                    | REFLECTION  | java.lang.Object.getClass",
                "String.class.getMethods()                                     | REFLECTION  | java.lang.Class.getMethods",
                "java.lang.invoke.MethodHandles.lookup()                       | REFLECTION  | java.lang.invoke.MethodHandles.lookup",
                "ServiceLoader.load(Runnable.class)                            | REFLECTION  | java.util.ServiceLoader.load",
                "ClassLoader.getSystemClassLoader()                            | REFLECTION  | java.lang.ClassLoader.getSystemClassLoader",
                "Object.class.getModule()                                      | REFLECTION  | java.lang.Class.getModule",
                "Runtime.getRuntime().availableProcessors()                    | ENVIRONMENT | java.lang.Runtime.availableProcessors",
                "System.getenv()                                               | ENVIRONMENT | java.lang.System.getenv",
                "System.getProperty(\"a\")                                     | ENVIRONMENT | java.lang.System.getProperty",
                "Integer.getInteger(\"a\")                                     | ENVIRONMENT | java.lang.Integer.getInteger",
                "TimeZone.getDefault()                                         | ENVIRONMENT | java.util.TimeZone.getDefault",
                "Thread.currentThread()                                        | THREADS     | java.lang.Thread.currentThread",
                "List.of(1).parallelStream().count()                           | THREADS     | java.util.List.parallelStream",
                "List.of(1).stream().parallel().count()                        | THREADS     | java.util.stream.Stream.parallel",
                "java.util.concurrent.Executors.newCachedThreadPool()          | THREADS     | java.util.concurrent.Executors.newCachedThreadPool",
                "new java.util.concurrent.CompletableFuture<String>()          | THREADS     | java.util.concurrent.CompletableFuture",
                "new Object() { int end() { System.exit(3); return 1; } }.end() | EXIT       | java.lang.System.exit",
                "java.lang.ref.Cleaner.create()                                | OTHER       | java.lang.ref.Cleaner.create",
            })
    void of_whatReachesFurther_isNamed(String expression, Reach reach, String thing) {
        assertThat(reached("1", "var a = " + expression + ";").all())
                .filteredOn(one -> one.reach() == reach)
                .flatExtracting(Reaching::things)
                .contains(thing);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "System.load(\"a\");                                                       | NATIVE",
                "Runtime.getRuntime().halt(9);                                             | EXIT",
                "System.setOut(null);                                                      | ENVIRONMENT",
                "Locale.setDefault(Locale.GERMANY);                                        | ENVIRONMENT",
                "class Mine extends Thread { }                                             | THREADS",
                "class Mine extends ClassLoader { }                                        | REFLECTION",
                "class Mine implements java.lang.reflect.InvocationHandler { public Object invoke(Object p, java.lang.reflect.Method m, Object[] a) { return null; } } | REFLECTION",
                "class Mine { void no() { new Thread(() -> {}).start(); } }                | THREADS",
                "java.io.File[] many = new java.io.File[3];                                | FILES",
                "java.util.function.Function<String, java.io.File> f = java.io.File::new;  | FILES",
            })
    void of_whereverItStands_isFound(String cell, Reach reach) {
        assertThat(reached("1", cell).all()).extracting(Reaching::reach).containsOnly(reach);
    }

    @Test
    void of_twoCells_saysCellLineAndWords() {
        Reached reached = reached(
                "1",
                "int a = 1;",
                "int b = 2;\n\nString text = java.nio.file.Files.readString(\n    java.nio.file.Path.of(\"a\"));");

        assertThat(reached.all()).extracting(one -> one.place().cell()).containsOnly(1);
        assertThat(reached.all().get(0).place().line()).isEqualTo(13);
        assertThat(reached.all().stream().map(one -> one.place().words()).collect(Collectors.joining("\n")))
                .contains("This reaches for files (java.nio.file.Path.of")
                .contains("java.nio.file.Files.readString");
        assertThat(reached.inWords()).isEqualTo("files");
    }

    @Test
    void of_oneLineThatReachesTwice_isOnePlace() {
        assertThat(reached("1", "new ProcessBuilder(\"true\").start();").all())
                .singleElement()
                .satisfies(one -> assertThat(one.things())
                        .containsExactly("java.lang.ProcessBuilder", "java.lang.ProcessBuilder.start"));
    }

    @Test
    void of_liveValue_isFoundInProse() {
        assertThat(reached("System.getenv()", "int a = 1;").all())
                .singleElement()
                .satisfies(one -> assertThat(one.place().line()).isEqualTo(99));
    }

    @Test
    void content_sizesValue_isTheSame() {
        String first = content(
                "Length width = size(\"Width\", \"22 in\", \"16 in to 30 in\");\nint n = count(\"Shelves\", 2, \"1 to 4\");\nAngle a = slope(\"Lean\", \"30 deg\");",
                "System.exit(1);");

        assertThat(content(
                        "Length width = size(\"Width\", \"1 m\", \"16 in to 30 in\");\nint n = count(\"Shelves\", 3, \"1 to 4\");\nAngle a = slope(\"Lean\", \"6 in 12\");",
                        "System.exit(1);"))
                .isEqualTo(first)
                .matches("[0-9a-f]{64}");
    }

    @Test
    void content_blanksBetweenPiecesAndOtherProse_isTheSame() {
        String first = reached("1", "int a = 1;\nSystem.exit(a);").content();

        assertThat(reached("2", "\nint a = 1;\n\n  System.exit(a);").content()).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "String f = \"b\"; System.load(f);",
                "String f = \"a\"; System.loadLibrary(f);",
                "String f = \"a\"; System.load(f); int more = 1;",
                "String f = pick(\"File\", \"b\", \"a\", \"b\"); System.load(f);",
                "System.load(\"a\");",
            })
    void content_cellChanged_isAnother(String cell) {
        assertThat(content(cell))
                .isNotEqualTo(content("String f = \"a\"; System.load(f);"))
                .isNotEqualTo(content("String f = pick(\"File\", \"a\", \"a\", \"b\"); System.load(f);"));
    }

    @Test
    void content_methodNamedLikeASizeInAClass_keepsItsValues() {
        String mine = "class Mine { static int size(String a, String b) { System.load(b); return 1; }\n"
                + "    static int go() {\nint n = size(\"x\", \"%s\"); return n; } }";

        assertThat(content(mine.formatted("a"))).isNotEqualTo(content(mine.formatted("b")));
    }

    @Test
    void content_proseThatReaches_isPartOfIt() {
        String cell = "String told(String name) { return System.getenv(name); }";

        assertThat(reached("told(\"a\")", cell).content())
                .isNotEqualTo(reached("told(\"b\")", cell).content());
    }

    @Test
    void content_importThatChangesWhatANameMeans_isAnother() {
        assertThat(content("import java.util.Timer;\nvar one = new Timer();"))
                .isEqualTo(content("import java.lang.ref.Cleaner;\nvar one = new Timer();"))
                .isNotEqualTo(content("import javax.management.timer.Timer;\nvar one = new Timer();"));
    }
}
