package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Problem;

/** A thing counts when it is the value of a variable or of an expression at the top level of a cell, once for each. */
class WhatCountsTest {
    private static final String STOCK = """
            measureIn(INCHES);
            Sheet ply = sheet("exterior plywood", "48 in", "96 in").soldAs("3/4 in");
            Part made(String name) { return panel(name, ply).wide("22 in").deep("8 in"); }
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
        String[] all = new String[cells.length + 1];
        all[0] = STOCK;
        System.arraycopy(cells, 0, all, 1, cells.length);
        return kernel.run(Book.of(all).source(), Map.of());
    }

    private static <T extends Declaration> List<T> all(KernelOutcome outcome, Class<T> kind) {
        assertThat(outcome.cells()).allMatch(CellOutcome.Stands.class::isInstance);
        return outcome.sketch().orElseThrow().all(kind);
    }

    private static List<String> parts(String... cells) {
        KernelOutcome outcome = run(cells);
        assertThat(outcome.problems()).isEmpty();
        return all(outcome, Part.class).stream().map(Part::name).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "variable           | Part a = made(\"A\"); var b = made(\"B\");",
                "expression         | made(\"A\"); made(\"B\")",
                "repeat             | var all = repeat(2, i -> made(i == 0 ? \"A\" : \"B\"));",
                "bare repeat        | repeat(2, i -> made(i == 0 ? \"A\" : \"B\"));",
                "list filled later  | List<Part> all = new ArrayList<>(); for (var n : List.of(\"A\", \"B\")) { all.add(made(n)); }",
                "array              | Part[] all = {made(\"A\"), made(\"B\")};",
                "arrays in an array | Part[][] all = {{made(\"A\")}, {}, {null, made(\"B\")}};",
                "map                | Map<String, Part> all = new TreeMap<>(); all.put(\"x\", made(\"A\")); all.put(\"y\", made(\"B\"));",
                "map of lists       | var all = Map.of(\"x\", List.of(made(\"A\"), Optional.of(made(\"B\"))));",
                "optional           | var a = Optional.of(made(\"A\")); var none = Optional.empty(); var b = Optional.of(made(\"B\"));",
                "two at once        | Part a = made(\"A\"), b = made(\"B\");",
                "stream             | var all = java.util.stream.Stream.of(\"A\", \"B\").map(n -> made(n)).toList();",
            })
    void run_partsKeptInSomeWay_count(String way, String cell) {
        assertThat(parts(cell)).as(way).containsExactly("A", "B");
    }

    @Test
    void run_whatIsNotOurs_countsForNothing() {
        assertThat(parts("Object none = null; int five = 5; \"text\"; var list = Arrays.asList(1, null, \"x\"); 7"))
                .isEmpty();
    }

    @Test
    void run_sameThingReachedTwice_countsOnce() {
        assertThat(parts(
                        "Part a = made(\"A\");\nvar again = a;\nvar list = List.of(a, a);\na;",
                        "var more = Optional.of(a);"))
                .containsExactly("A");
    }

    @Test
    void run_twoEqualPlacings_areTwo() {
        KernelOutcome outcome = run("Part a = made(\"A\");\nplace(a);\nplace(a);", "place(a);");

        assertThat(all(outcome, Placing.class)).extracting(Placing::part).containsExactly("A", "A", "A");
        assertThat(all(outcome, Placing.class)).extracting(Placing::origin).doesNotHaveDuplicates();
    }

    @Test
    void run_valueThatMoreIsSaidOfLater_isToldWithBothKept() {
        KernelOutcome outcome = run("Part a = made(\"A\");\nPart b = a.high(\"1 in\");");

        assertThat(outcome.problems())
                .extracting(Problem::words)
                .containsExactly(
                        "“A” is kept twice, with more said of it the second time. Say it all at once, or keep it in one name.");
    }

    @Test
    void run_twoPartsOfOneName_isAProblemThatPointsAtBoth() {
        KernelOutcome outcome = run("Part a = made(\"A\");", "\nPart b = made(\"A\");");

        assertThat(outcome.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.origin().line()).isEqualTo(11);
            assertThat(problem.words()).isEqualTo("“A” is made twice: here and in line 7. One name, one thing.");
        });
    }

    @Test
    void run_placedButKeptNowhere_isPointedOut() {
        assertThat(run("place(made(\"A\"));").problems())
                .extracting(Problem::words)
                .containsExactly("“A” is placed but kept nowhere. Write: Part name = panel(...), then place(name).");
    }

    @Test
    void run_documentOrder_isTheOrderOfTheSketch() {
        assertThat(parts("Part c = made(\"C\");\nPart a = made(\"A\");", "Part b = made(\"B\");"))
                .containsExactly("C", "A", "B");
    }

    @Test
    void run_listsWithinListsWithoutEnd_areThatCellsProblem() {
        KernelOutcome outcome = run("List<Object> own = new ArrayList<>();\nown.add(own);", "Part a = made(\"A\");");

        assertThat(outcome.cells().get(1)).isInstanceOf(CellOutcome.Threw.class);
        assertThat(outcome.cells().get(1).problems().get(0).words())
                .isEqualTo("Lists within lists, more than 20 deep. A plain list would be right.");
        assertThat(outcome.cells().get(2)).isEqualTo(new CellOutcome.Stands(2));
    }

    @Test
    void run_morePiecesThanASketchHolds_givesAProblemAndNoSketch() {
        KernelOutcome outcome = run("Part a = made(\"A\");\nvar many = repeat(2001, i -> place(a));");

        assertThat(outcome.sketch()).isEmpty();
        assertThat(outcome.stands()).isFalse();
        assertThat(outcome.problems())
                .extracting(Problem::words)
                .containsExactly("2001 pieces are placed; a workbook holds 2000 at most.");
    }

    @Test
    void run_asManyPiecesAsASketchHolds_stands() {
        KernelOutcome outcome = run("Part a = made(\"A\");\nvar many = repeat(2000, i -> place(a));");

        assertThat(all(outcome, Placing.class)).hasSize(2000);
    }

    @Test
    void run_moreThingsThanAnyBuildNeeds_areThatCellsProblem() {
        KernelOutcome outcome = run("var many = repeat(20_001, i -> made(\"A\" + i));");

        assertThat(outcome.cells().get(1).problems().get(0).words())
                .isEqualTo("More than 20000 things are made here; a workbook holds fewer.");
    }

    @Test
    void run_textPastWhatAFrameHolds_givesAProblemAndNoSketch() {
        KernelOutcome outcome = run("Part a = made(\"x\".repeat(34_000_000));");

        assertThat(outcome.sketch()).isEmpty();
        assertThat(outcome.problems())
                .extracting(Problem::words)
                .containsExactly(
                        "The cells say more than a sketch can hold. A very long text in a name would do that.");
        assertThat(run("int next = 1;").stands()).isTrue();
    }
}
