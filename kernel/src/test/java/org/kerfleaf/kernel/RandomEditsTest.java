package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CellCompiler;
import org.kerfleaf.kernel.compile.CompiledWorkbook;
import org.kerfleaf.kernel.compile.Refusal;
import org.kerfleaf.workbook.Workbook;

/**
 * Whatever was done to a workbook before, it comes out as in a new kernel that is given the same text. The samples and a
 * workbook full of methods and types are edited at random; after every 25th edit what was compiled is held against a new
 * compiler's, bytecode and places included, and after every 250th the outcome of a run against a new kernel's.
 */
class RandomEditsTest {
    private static final int EDITS = Integer.getInteger("kerfleaf.edits", 1000);
    private static final long SEED = Long.getLong("kerfleaf.seed", 20261127L);
    private static final int COMPARED = Integer.getInteger("kerfleaf.compared", 25);
    private static final int RUN = 250;
    private static final int EDITS_OF_ONE_BOOK = 60;
    private static final KernelLimits LIMITS = KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60));

    private static final List<String> METHODS_AND_TYPES = List.of(
            "import java.util.stream.*;\nimport static java.lang.Math.max;",
            "measureIn(INCHES);\nLength width = size(\"Width\", \"22 in\", \"16 in to 30 in\");\nint n = max(2, 3);",
            "Sheet ply = sheet(\"ply\", \"48 in\", \"96 in\").soldAs(\"3/4 in\");\nvar wood = lumber(\"2x4\").lengths(\"8 ft\");",
            "Length half(Length a) { return a.half(); }\nint twice(int n) { return 2 * n; }\ndouble twice(double n) { return 2 * n; }",
            "record Leg(String name, Length high) {\n    Part part() { return board(name, wood).cutTo(high); }\n}\nenum Wood { OAK, PINE }",
            "boolean even(int n) { return n == 0 || odd(n - 1); }\nboolean odd(int n) { return n != 0 && even(n - 1); }",
            "Leg left = new Leg(\"Left\", width);\nvar right = new Leg(\"Right\", half(width));\nList<Leg> legs = List.of(left, right);",
            "var parts = legs.stream().map(Leg::part).toList();\nvar high = legs.get(0).high();\nvar longer = high.plus(high);",
            "String said = switch (Wood.OAK) { case OAK -> \"oak\"; case PINE -> \"pine\"; };\nint four = twice(2);",
            "Object own = new Object() { int q = four; public String toString() { return said + q; } };\nplace(parts.get(0));",
            "Runnable r = () -> twice(four);\nif (four > 3) {\n    System.out.println(said);\n}\nparts.size()",
            "interface Shape { Length area(); }\nclass Square implements Shape {\n    public Length area() { return half(width); }\n}\nShape square = new Square();",
            "<T> List<T> many(T one) { return List.of(one, one); }\nvar two = many(square);\nvar areas = two.get(1).area();");
    private static final List<String> SAID =
            List.of("width", "half(width)", "legs.size()", "even(4)", "Wood.OAK", "twice(3)", "twice(1.5)", "areas");

    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
    private final List<EditedText> books = new ArrayList<>();

    RandomEditsTest() throws IOException {
        books.add(new EditedText(random, METHODS_AND_TYPES, SAID));
        try (Stream<Path> samples = Files.list(Path.of("..", "sample-workbooks"))) {
            for (Path sample : samples.filter(path -> path.toString().endsWith(".md"))
                    .sorted()
                    .toList()) {
                books.add(EditedText.of(random, Workbook.read(Files.readAllBytes(sample))));
            }
        }
    }

    @Test
    void compile_afterAnyEdits_givesWhatANewKernelGives() {
        int brokenOrMended = 0;
        try (Kernel kernel = Kernel.start(LIMITS)) {
            List<String> refused = List.of();
            for (int edit = 1; edit <= EDITS; edit++) {
                // Every second stretch is the workbook with the methods and types, where more can go wrong.
                int stretch = edit / EDITS_OF_ONE_BOOK;
                EditedText book = books.get(stretch % 2 == 0 ? 0 : 1 + stretch / 2 % (books.size() - 1));
                book.edit();
                WorkbookSource source = book.source();
                CompiledWorkbook compiled = kernel.compiler().compile(source);
                List<String> now = compiled.refusals().stream()
                        .map(Refusal::problem)
                        .map(problem -> problem.text() + problem.words())
                        .toList();
                brokenOrMended += now.equals(refused) ? 0 : 1;
                refused = now;
                if (edit % COMPARED == 0) {
                    compare(edit, book, compiled);
                }
                if (edit % RUN == 0) {
                    run(edit, book, kernel);
                }
            }
        }
        assertThat(brokenOrMended).isGreaterThanOrEqualTo(EDITS / 2);
    }

    private static void compare(int edit, EditedText book, CompiledWorkbook compiled) {
        try (CellCompiler fresh = new CellCompiler()) {
            List<String> lines = Normal.of(compiled);
            List<String> wanted = Normal.of(fresh.compile(book.source()));
            List<String> differing = new ArrayList<>();
            lines.stream()
                    .filter(line -> !wanted.contains(line))
                    .map("is: "::concat)
                    .forEach(differing::add);
            wanted.stream()
                    .filter(line -> !lines.contains(line))
                    .map("new: "::concat)
                    .forEach(differing::add);
            assertThat(differing).as("seed %d, edit %d:\n%s", SEED, edit, book).isEmpty();
            assertThat(lines).isEqualTo(wanted);
        }
    }

    private static void run(int edit, EditedText book, Kernel kernel) {
        try (Kernel fresh = Kernel.start(LIMITS)) {
            assertThat(kernel.run(book.source(), Map.of()))
                    .as("seed %d, edit %d:\n%s", SEED, edit, book)
                    .isEqualTo(fresh.run(book.source(), Map.of()));
        }
    }
}
