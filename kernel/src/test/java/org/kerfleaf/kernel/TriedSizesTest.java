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
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.Size;

/** Values tried for sizes go by label, before the cells calculate. */
class TriedSizesTest {
    private static final WorkbookSource BOOK = Book.of("""
                    measureIn(INCHES);
                    Length width = size("Width", "22 in", "16 in to 30 in");
                    Angle lean = slope("Roof slope", "30 deg", "20 deg to 45 deg");
                    int shelves = count("Shelves", 2, "1 to 4");
                    String colour = pick("Colour", "red", "red", "green");
                    """, "Length twice = width.times(2);", "int alone = 1;")
            .saying("twice + \" \" + lean + \" \" + shelves + \" \" + colour")
            .source();

    private static Kernel kernel;

    @BeforeAll
    static void start() {
        kernel = Kernel.start(KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60)));
    }

    @AfterAll
    static void close() {
        kernel.close();
    }

    private static String said(KernelOutcome outcome) {
        return outcome.liveValues().get(0).toString();
    }

    @Test
    void run_nothingTried_givesTheWorkbooksValues() {
        assertThat(said(kernel.run(BOOK, Map.of()))).contains("text=44 in 30 deg 2 red]");
    }

    @Test
    void run_sizesTried_areCalculatedWith() {
        KernelOutcome outcome =
                kernel.run(BOOK, Map.of("Width", "16 in", "Roof slope", "6 in 12", "Shelves", "4", "Colour", "green"));

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.problems()).isEmpty();
        assertThat(said(outcome)).contains("text=32 in 26.56").contains(" 4 green]");
        assertThat(outcome.sketch().orElseThrow().all(Size.class))
                .extracting(Size::label)
                .containsExactly("Width", "Roof slope", "Shelves", "Colour");
    }

    @Test
    void run_sizeTriedInAnotherUnit_isTheSameLength() {
        assertThat(said(kernel.run(BOOK, Map.of("Width", "508 mm")))).contains("text=40 in ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Width      | 31 in       | 3 | Width can be 16 in to 30 in; 31 in is past the rule.",
                "Width      | 15 63/64 in | 3 | Width can be 16 in to 30 in; 15 63/64 in is past the rule.",
                "Width      | wide        | 3 | “wide”, column 1: ",
                "Roof slope | 50 deg      | 4 | Roof slope can be 20 deg to 45 deg; 50 deg is past the rule.",
                "Shelves    | 5           | 5 | Shelves can be 1 to 4; 5 is past the rule.",
                "Shelves    | many        | 5 | Shelves is a count; “many” is no whole number. 3 would be.",
                "Colour     | blue        | 6 | Colour can be red, green; “blue” is none of them.",
            })
    void run_valueThatCannotBe_isTheProblemOfThatSizesCell(String label, String value, int line, String words) {
        KernelOutcome outcome = kernel.run(BOOK, Map.of(label, value));

        assertThat(outcome.cells().get(0)).isInstanceOf(CellOutcome.Threw.class);
        CellProblem problem = outcome.cells().get(0).problems().get(0);
        assertThat(problem.line()).isEqualTo(line);
        assertThat(problem.words()).startsWith(words);
        assertThat(outcome.cells().get(2)).isEqualTo(new CellOutcome.Stands(2));
        assertThat(kernel.run(BOOK, Map.of()).stands()).isTrue();
    }

    @Test
    void run_widthThatCannotBe_isWaitedFor() {
        KernelOutcome outcome = kernel.run(BOOK, Map.of("Width", "31 in"));

        assertThat(outcome.cells().get(1))
                .isInstanceOfSatisfying(
                        CellOutcome.Waits.class,
                        waits -> assertThat(waits.name()).isEqualTo("width"));
    }

    @Test
    void run_labelThatNoSizeHas_isAProblemThatNamesTheSizes() {
        KernelOutcome outcome = kernel.run(BOOK, Map.of("width", "16 in"));

        assertThat(outcome.stands()).isTrue();
        assertThat(outcome.problems())
                .extracting(Problem::words)
                .isEqualTo(List.of("No size is called “width”. The sizes are: Width, Roof slope, Shelves, Colour."));
    }
}
