package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
 * Runs the example of every word under the cell that the examples speak of.
 *
 * <p>All examples are compiled together, each as a branch in a method of its group, and the size “Example” says what runs: a
 * batch of examples that make different things, or, where a batch has a problem, each of its examples alone.
 */
class WordExamplesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 12);
    private static final Pattern DECLARED =
            Pattern.compile("(?:^|;\\s*)(?:var|[A-Za-z]\\w*(?:<\\w+>)?)\\s+(\\w+)\\s*=(?!=)");
    private static final Pattern MADE = Pattern.compile(
            "(?:panel|board|pane|sheet|lumber|moulding|size|slope|held|count|pick)\\((?:\\w+, )?(\"[^\"]*\")"
                    + "|measureIn|pricesIn|site\\(|dig\\(|mount\\(|circularSaw\\(|boughtKit\\(");

    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)));
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    /** An example as a maker would write it into a cell, and the word it is of. */
    private record Example(String word, String group, String text) {
        /** What it makes that a workbook has but once. */
        List<String> makes() {
            return MADE.matcher(text)
                    .results()
                    .map(one -> one.group(1) == null ? one.group() : one.group(1))
                    .toList();
        }
    }

    private static List<Example> examples() {
        Map<String, Example> byText = new LinkedHashMap<>();
        for (Entry entry : WordIndex.get().all()) {
            entry.example()
                    .ifPresent(text -> byText.putIfAbsent(text, new Example(called(entry), entry.group(), text)));
        }
        return List.copyOf(byText.values());
    }

    private static String called(Entry entry) {
        return entry.saidOf() + "." + entry.member();
    }

    private static List<List<Example>> batches(List<Example> examples) {
        List<List<Example>> batches = new ArrayList<>();
        for (Example example : examples) {
            List<Example> fits = batches.stream()
                    .filter(batch -> batch.stream().allMatch(one -> Collections.disjoint(one.makes(), example.makes())))
                    .findFirst()
                    .orElseGet(ArrayList::new);
            fits.add(example);
            if (fits.size() == 1) {
                batches.add(fits);
            }
        }
        return batches;
    }

    private static String nameOf(int batch) {
        return "batch " + batch;
    }

    private static WorkbookSource book(List<List<Example>> batches) {
        List<String> choices = new ArrayList<>();
        Map<String, StringBuilder> methods = new LinkedHashMap<>();
        for (int batch = 0; batch < batches.size(); batch++) {
            choices.add("\"" + nameOf(batch) + "\"");
            for (Example example : batches.get(batch)) {
                choices.add("\"" + example.word() + "\"");
                methods.computeIfAbsent(example.group(), group -> new StringBuilder())
                        .append(branch(nameOf(batch), example));
            }
        }
        List<String> cells = new ArrayList<>(List.of(WordIndex.aroundTheExamples()));
        cells.add("String chosen = pick(\"Example\", \"none\", \"none\", " + String.join(", ", choices) + ");");
        List<String> shown = new ArrayList<>();
        methods.forEach((group, branches) -> {
            String method = "examples" + shown.size();
            shown.add(method + "(chosen)");
            cells.add("List<Object> " + method + "(String chosen) {\nList<Object> all = new ArrayList<>();\n" + branches
                    + "return all; }");
        });
        cells.add("var shown = List.of(" + String.join(", ", shown) + ");");
        return Book.of(cells.toArray(String[]::new)).source();
    }

    private static String branch(String batch, Example example) {
        List<String> names = DECLARED.matcher(example.text())
                .results()
                .map(one -> one.group(1))
                .toList();
        String body = names.isEmpty()
                ? "all.add(" + example.text() + ");"
                : example.text() + "; all.addAll(List.of(" + String.join(", ", names) + "));";
        return "if (chosen.equals(\"%s\") || chosen.equals(\"%s\")) { %s }\n".formatted(batch, example.word(), body);
    }

    private static List<String> problems(WorkbookSource book, String chosen) {
        KernelOutcome outcome = kernel.run(book, Map.of("Example", chosen));
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
        return problems.stream().map(words -> chosen + ": " + words).toList();
    }

    /** What is wrong with any of these examples, told of each alone. */
    private static List<String> problems(List<Example> examples) {
        List<List<Example>> batches = batches(examples);
        WorkbookSource book = book(batches);
        List<String> problems = new ArrayList<>(problems(book, "none"));
        for (int batch = 0; batch < batches.size() && problems.isEmpty(); batch++) {
            if (!problems(book, nameOf(batch)).isEmpty()) {
                batches.get(batch).forEach(one -> problems.addAll(problems(book, one.word())));
            }
        }
        return problems;
    }

    @Test
    void everyExample_runsAndPlansWithoutAProblem() {
        List<Example> examples = examples();
        assertThat(examples).hasSizeGreaterThan(150);
        assertThat(problems(examples)).isEmpty();
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
    void anExampleThatIsWrong_isToldAndNoOther() {
        Example wrong = new Example("wrong", "placing", "place(shelf).above(floorIn)");
        Example right = new Example("right", "placing", "place(slat).standing().onTopOf(floorIn)");
        assertThat(problems(List.of(wrong, right)))
                .singleElement()
                .asString()
                .startsWith("wrong: ")
                .contains("above what, how far?");
    }
}
