package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Sketch;

/** A workbook that runs as it should, in a real child process. */
class KernelTest {
    private static final String SIZES = """
            measureIn(INCHES);
            Length width = size("Width inside", "22 in", "16 in to 30 in");
            Sheet ply = sheet("exterior plywood", "48 in", "96 in").soldAs("3/4 in").measured("23/32 in");
            Length t = ply.thickness();
            """;
    private static final String PARTS = """
            Part floor = panel("Floor", ply).wide(width).deep("11 in");
            var shelves = repeat(2, i -> panel("Shelf " + (i + 1), ply).wide(width.minus(t)).deep("8 in"));
            place(floor);
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

    private static KernelOutcome run(Book book) {
        return kernel.run(book.source(), Map.of());
    }

    @Test
    void run_plainWorkbook_givesWhatItsCellsDeclare() {
        KernelOutcome outcome = run(Book.of(SIZES, PARTS));

        assertThat(outcome.cells()).containsExactly(new CellOutcome.Stands(0), new CellOutcome.Stands(1));
        assertThat(outcome.problems()).isEmpty();
        Sketch sketch = outcome.sketch().orElseThrow();
        assertThat(sketch.all(Part.class)).extracting(Part::name).containsExactly("Floor", "Shelf 1", "Shelf 2");
        assertThat(sketch.part("Floor").orElseThrow().origin().line()).isEqualTo(8);
    }

    @Test
    void run_liveValues_areGiven() {
        KernelOutcome outcome = run(Book.of(SIZES, PARTS).saying("width").saying("shelves.size()"));

        assertThat(outcome.liveValues())
                .containsEntry(0, new LiveOutcome.Value(new Live.OfLength(Length.parse("22 in"))))
                .containsEntry(1, new LiveOutcome.Value(new Live.OfText("2")));
    }
}
