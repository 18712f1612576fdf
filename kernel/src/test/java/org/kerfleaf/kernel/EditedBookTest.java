package org.kerfleaf.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.workbook.Cell;
import org.kerfleaf.workbook.Workbook;

/** What is seen is what a fresh run from the top would give, whatever was done to the cells before. */
class EditedBookTest {
    private static final KernelLimits LIMITS = KernelLimits.DEFAULT.withTime(Duration.ofSeconds(60));
    private static final long SEED = 20261125;

    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);

    /** What can be done to a workbook's cells. */
    private enum Edit {
        CHANGE {
            @Override
            void on(List<String> cells, int at) {
                cells.set(
                        at, cells.get(at).replaceFirst("\"(\\d+) in\"", "\"1$1 mm\"") + "\nint changed" + at + " = 1;");
            }
        },
        ADD {
            @Override
            void on(List<String> cells, int at) {
                cells.add(at, "Length added%d = length(\"1 in\");".formatted(cells.size()));
            }
        },
        DELETE {
            @Override
            void on(List<String> cells, int at) {
                cells.remove(at);
            }
        },
        MOVE {
            @Override
            void on(List<String> cells, int at) {
                cells.add(cells.size() - 1 - at, cells.remove(at));
            }
        },
        BREAK {
            @Override
            void on(List<String> cells, int at) {
                cells.set(at, cells.get(at).replaceFirst("\\(", "(("));
            }
        },
        MEND {
            @Override
            void on(List<String> cells, int at) {
                cells.replaceAll(text -> text.replace("((", "("));
            }
        };

        abstract void on(List<String> cells, int at);
    }

    private static WorkbookSource book(Workbook sample, List<String> cells) {
        List<CellSource> placed = new ArrayList<>();
        int line = 2;
        for (String text : cells) {
            placed.add(new CellSource(placed.size(), text, line, 0));
            line += text.split("\n", -1).length + 2;
        }
        List<ProseSource> live = new ArrayList<>();
        for (int i = 0; i < sample.liveValues().size(); i++) {
            live.add(new ProseSource(i, sample.liveValues().get(i).expression(), line + i));
        }
        return new WorkbookSource(sample.title(), List.of(), placed, live);
    }

    @Test
    void run_afterEveryEdit_givesWhatAFreshKernelGives() {
        Workbook sample = Samples.COLD_FRAME.workbook();
        List<String> cells =
                new ArrayList<>(sample.cells().stream().map(Cell::text).toList());
        List<String> done = new ArrayList<>();
        try (Kernel kernel = Kernel.start(LIMITS)) {
            kernel.run(book(sample, cells), Map.of());
            for (Edit edit : Edit.values()) {
                int at = random.nextInt(cells.size());
                edit.on(cells, at);
                done.add(edit + " " + at);
                WorkbookSource source = book(sample, cells);
                try (Kernel fresh = Kernel.start(LIMITS)) {
                    assertThat(kernel.run(source, Map.of()))
                            .as("seed %d, after %s", SEED, done)
                            .isEqualTo(fresh.run(source, Map.of()));
                }
            }
        }
    }

    @Test
    void run_brokenAndMended_standsAsBefore() {
        Workbook sample = Samples.COLD_FRAME.workbook();
        List<String> cells =
                new ArrayList<>(sample.cells().stream().map(Cell::text).toList());
        try (Kernel kernel = Kernel.start(LIMITS)) {
            KernelOutcome before = kernel.run(book(sample, cells), Map.of());
            Edit.BREAK.on(cells, 0);
            KernelOutcome broken = kernel.run(book(sample, cells), Map.of());
            Edit.MEND.on(cells, 0);

            assertThat(before.stands()).isTrue();
            assertThat(broken.cells().get(0)).isInstanceOf(CellOutcome.Rejected.class);
            assertThat(kernel.run(book(sample, cells), Map.of())).isEqualTo(before);
        }
    }
}
