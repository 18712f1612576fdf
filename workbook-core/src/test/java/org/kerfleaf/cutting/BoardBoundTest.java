package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source of the rows: Martello and Toth, Knapsack Problems (1990), chapter 8 (from memory), worked again by hand; facts 11.4. */
class BoardBoundTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "35 35 35 35 35                      | 100    | 2 | 2",
                "51 51 51 51                         | 100    | 3 | 4",
                "60 60 60 35 35 35 20 20             | 100    | 4 | 4",
                "36.125 36.125 36.125 60.125 60.125  | 96.125 | 3 | 4",
                "34 34 34 34                         | 100    | 2 | 2"
            })
    void byLength_and_byHalves(String sizes, double capacity, int byLength, int byHalves) {
        assertThat(BoardBound.byLength(sizes(sizes), thousandths(capacity))).isEqualTo(byLength);
        assertThat(BoardBound.byHalves(sizes(sizes), thousandths(capacity))).isEqualTo(byHalves);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"35 35 35 35 35 | 100 | 3", "34 34 34 34 | 100 | 2", "51 51 51 51 | 100 | 4"})
    void bySteps(String sizes, double capacity, int expected) {
        assertThat(BoardBound.bySteps(sizes(sizes), thousandths(capacity))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"51 51 51 51 | 100 | no two of the 4 longest", "50 50 1 | 100 | longer together than one board"})
    void of_saysWhy(String sizes, double capacity, String words) {
        assertThat(BoardBound.of(sizes(sizes), thousandths(capacity)).because()).contains(words);
    }

    private static long[] sizes(String text) {
        return Arrays.stream(text.trim().split(" +"))
                .mapToLong(size -> thousandths(Double.parseDouble(size)))
                .toArray();
    }

    private static long thousandths(double value) {
        return Math.round(value * 1000);
    }
}
