package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.words.WordIndex;
import org.kerfleaf.words.WordIndex.Entry;

/**
 * Runs the example of every word, each in a run of its own and under the cell that the examples speak of.
 *
 * <p>All examples are compiled together: each is a case of one method per group, and the size “Example” says which is run.
 */
class WordExamplesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 12);
    private static final String NONE = "none";
    private static final Pattern DECLARED =
            Pattern.compile("(?:^|;\\s*)(?:var|[A-Za-z]\\w*(?:<\\w+>)?)\\s+(\\w+)\\s*=(?!=)");

    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)));
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    /** An example as a maker would write it into a cell, and where it stands. */
    private record Example(String word, String group, String text) {}

    private static List<Example> examples() {
        return WordIndex.get().all().stream()
                .filter(entry -> entry.example().isPresent())
                .map(entry -> new Example(
                        called(entry), entry.group(), entry.example().orElseThrow()))
                .toList();
    }

    private static String called(Entry entry) {
        return entry.saidOf() + "." + entry.member();
    }

    private static WorkbookSource book(List<Example> examples) {
        List<String> cells = new ArrayList<>();
        cells.add(WordIndex.aroundTheExamples());
        cells.add("String example = pick(\"Example\", \"" + NONE + "\", "
                + examples.stream().map(one -> "\"" + one.word() + "\"").collect(Collectors.joining(", ", "\"none\", ", ");")));
        List<String> methods = new ArrayList<>();
        for (String group : WordIndex.GROUPS) {
            String method = "examplesOf" + (methods.size() + 1);
            methods.add(method + "(example)");
            cells.add("Object " + method + "(String which) { switch (which) {\n"
                    + examples.stream()
                            .filter(one -> one.group().equals(group))
                            .map(WordExamplesTest::asCase)
                            .collect(Collectors.joining())
                    + "default: return List.of(); } }");
        }
        cells.add("var shown = List.of(" + String.join(", ", methods) + ");");
        return Book.of(cells.toArray(String[]::new)).source();
    }

    private static String asCase(Example example) {
        Matcher declared = DECLARED.matcher(example.text());
        List<String> names = declared.results().map(one -> one.group(1)).toList();
        String body = names.isEmpty()
                ? "return " + example.text() + ";"
                : example.text() + "; return List.of(" + String.join(", ", names) + ");";
        return "case \"" + example.word() + "\": { " + body + " }\n";
    }

    private static List<String> problems(WorkbookSource book, String example) {
        KernelOutcome outcome = kernel.run(book, Map.of("Example", example));
        List<String> problems = outcome.cells().stream()
                .flatMap(cell -> cell.problems().stream())
                .map(problem -> problem.words() + " In: " + problem.text())
                .collect(Collectors.toCollection(ArrayList::new));
        outcome.problems().stream().map(Problem::words).forEach(problems::add);
        if (outcome.stands()) {
            Planner.plan(outcome.sketch().orElseThrow(), DAY).problems().stream()
                    .map(Problem::words)
                    .forEach(problems::add);
        }
        return problems.stream().map(words -> example + ": " + words).toList();
    }

    @Test
    void everyExample_runsAndPlansWithoutAProblem() {
        List<Example> examples = examples();
        WorkbookSource book = book(examples);
        assertThat(problems(book, NONE)).isEmpty();
        assertThat(examples.stream().flatMap(one -> problems(book, one.word()).stream()))
                .isEmpty();
        assertThat(examples).hasSizeGreaterThan(150);
    }

    @Test
    void everyExample_saysItsWord() {
        assertThat(WordIndex.get().all().stream()
                        .filter(entry -> entry.example().isPresent())
                        .filter(entry -> !Pattern.compile("\\b" + entry.name() + (entry.isMethod() ? "\\(" : "\\b"))
                                .matcher(entry.example().orElseThrow())
                                .find())
                        .map(WordExamplesTest::called))
                .isEmpty();
    }

    @Test
    void anExampleThatIsWrong_isSeen() {
        Example wrong = new Example("wrong", "parts", "place(shelf).above(floorIn)");
        assertThat(problems(book(List.of(wrong)), "wrong")).singleElement().asString().contains("above what, how far?");
    }
}
