package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.cutting.Lengths.units;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

/** What holds for every cut list, on random ones. */
class SheetCuttingPropertyTest {
    private record Case(List<SheetPiece> pieces, SheetSize sheet) {}

    @Test
    void cut_anyList_canBeSawnAndLosesNothing() {
        for (long seed = 0; seed < 60; seed++) {
            Case list = list(seed, 40, 6);
            SheetChecks.check(
                    SheetCutting.cut(list.pieces(), list.sheet()), list.pieces(), "seed %d, %s".formatted(seed, list));
        }
    }

    @Test
    void cut_sameListTwice_givesTheSame() {
        for (long seed = 100; seed < 110; seed++) {
            Case list = list(seed, 40, 6);
            assertThat(SheetCutting.cut(list.pieces(), list.sheet()))
                    .as("seed %d", seed)
                    .isEqualTo(SheetCutting.cut(list.pieces(), list.sheet()));
        }
    }

    @Test
    void cut_fewPieces_boundHoldsAndProvenMeansFewest() {
        int fewest = 0;
        int proven = 0;
        int cases = 250;
        for (long seed = 1000; seed < 1000 + cases; seed++) {
            Case list = list(seed, 5, 2);
            StockBound bound = SheetCutting.cut(list.pieces(), list.sheet()).bound();
            int best = new EveryGuillotine(list.pieces(), list.sheet()).fewestSheets();
            String shown = "seed %d, %s".formatted(seed, list);
            assertThat(bound.fewest()).as(shown).isLessThanOrEqualTo(best);
            assertThat(bound.bought()).as(shown).isGreaterThanOrEqualTo(best);
            if (bound.proven()) {
                assertThat(bound.bought()).as(shown).isEqualTo(best);
                proven++;
            }
            fewest += bound.bought() == best ? 1 : 0;
        }
        assertThat(fewest).as("layouts as good as can be").isEqualTo(cases);
        assertThat(proven).as("proven").isGreaterThan(cases * 8 / 10);
    }

    /** Small whole numbers, so that parts often end on one line, use a sheet up, or miss it by less than the kerf. */
    private static Case list(long seed, int most, int smallest) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        int trim = random.nextInt(3);
        int length = random.nextInt(20, 50);
        int width = random.nextInt(12, 40);
        SheetSize sheet = new SheetSize(
                "sheet",
                units(length + 2 * trim),
                units(width + 2 * trim),
                units(trim),
                units(random.nextInt(3)),
                Integer.MAX_VALUE);
        List<SheetPiece> pieces = new ArrayList<>();
        int left = random.nextInt(1, most + 1);
        while (left > 0) {
            int count = random.nextInt(1, Math.min(left, 4) + 1);
            pieces.add(new SheetPiece(
                    "Part " + pieces.size(),
                    units(random.nextInt(smallest, length + 1)),
                    units(random.nextInt(smallest, width + 1)),
                    count,
                    random.nextBoolean()));
            left -= count;
        }
        return new Case(pieces, sheet);
    }
}
