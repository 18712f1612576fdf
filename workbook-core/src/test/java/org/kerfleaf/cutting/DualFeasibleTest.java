package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of the rows: Fekete and Schepers, Math. Program. 91 (2001) 11-31; Lueker (1983); facts 11.5. */
class DualFeasibleTest {
    private static final long CAPACITY = 60;

    @ParameterizedTest
    @CsvSource({
        "1, 1/4, 0",
        "1, 3/10, 0",
        "1, 1/3, 0",
        "1, 2/5, 0",
        "1, 1/2, 1/2",
        "1, 3/5, 1",
        "1, 2/3, 1",
        "1, 7/10, 1",
        "2, 1/4, 0",
        "2, 3/10, 0",
        "2, 1/3, 1/3",
        "2, 2/5, 1/2",
        "2, 1/2, 1/2",
        "2, 3/5, 1/2",
        "2, 2/3, 2/3",
        "2, 7/10, 1",
        "3, 1/4, 1/4",
        "3, 3/10, 1/3",
        "3, 1/3, 1/3",
        "3, 2/5, 1/3",
        "3, 1/2, 1/2",
        "3, 3/5, 2/3",
        "3, 2/3, 2/3",
        "3, 7/10, 2/3"
    })
    void steps_tableOfTheSource(int k, String share, String value) {
        DualFeasible function = DualFeasible.steps(k, CAPACITY);
        assertThat(function.of(of(share, CAPACITY))).isEqualTo(of(value, function.denominator()));
    }

    @ParameterizedTest
    @CsvSource({"25, 0", "30, 30", "65, 65", "71, 100"})
    void ignoringBelow_threeTenths(long size, long value) {
        assertThat(DualFeasible.ignoringBelow(30, 100).of(size)).isEqualTo(value);
    }

    @RepeatedTest(200)
    void family_sizesThatShareOneLength_neverAddUpToMoreThanOne(RepetitionInfo repetition) {
        RandomGenerator random =
                RandomGeneratorFactory.of("L64X128MixRandom").create(repetition.getCurrentRepetition());
        long capacity = random.nextLong(10, 200);
        long left = capacity;
        List<Long> sizes = new java.util.ArrayList<>();
        while (left > 0) {
            long size = random.nextLong(1, left + 1);
            sizes.add(size);
            left -= size;
        }
        for (DualFeasible function : DualFeasible.family(capacity, sizes)) {
            assertThat(sizes.stream().mapToLong(function::of).sum())
                    .as("seed %d, %s of %d", repetition.getCurrentRepetition(), sizes, capacity)
                    .isLessThanOrEqualTo(function.denominator());
        }
    }

    private static long of(String share, long whole) {
        String[] parts = share.split("/");
        long over = parts.length == 1 ? 1 : Long.parseLong(parts[1]);
        return Long.parseLong(parts[0]) * whole / over;
    }
}
