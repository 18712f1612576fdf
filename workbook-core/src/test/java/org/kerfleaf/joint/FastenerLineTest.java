package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;

class FastenerLineTest {
    private static final Length END = FastenerLine.END_DISTANCE;
    private static final Length FIVE = Length.ofInches(5);

    /** The seed-swap cabinet's joints, every 5 in at most (worked outside the program). */
    @ParameterizedTest
    @CsvSource({"22, 5", "11, 3", "24.41497, 6", "24, 6", "8, 2", "23, 5", "23.001, 6"})
    void count_contact_isCeilingPlusOne(double contact, int screws) {
        assertThat(FastenerLine.count(Length.ofInches(contact), END, FIVE).value())
                .isEqualTo(screws);
    }

    @Test
    void count_noRoomForTwo_isOneInTheMiddle() {
        assertThat(FastenerLine.count(Length.ofInches(3), END, FIVE).value()).isEqualTo(1);
        assertThat(FastenerLine.positions(Length.ofInches(2), END, FIVE)).containsExactly(Length.ofInches(1));
        assertThat(FastenerLine.count(Length.ofInches(3.01), END, FIVE).value()).isEqualTo(2);
    }

    @Test
    void positions_shortContact_standAtItsQuarters() {
        assertThat(FastenerLine.positions(Length.ofInches(4), END, FIVE))
                .containsExactly(Length.ofInches(1), Length.ofInches(3));
    }

    @Test
    void positions_shelfDepth_standAnInchAndAHalfFromTheEnds() {
        assertThat(FastenerLine.positions(Length.ofInches(11), END, FIVE))
                .containsExactly(Length.ofInches(1.5), Length.ofInches(5.5), Length.ofInches(9.5));
    }

    @Test
    void count_noSpacing_isRefused() {
        assertThatThrownBy(() -> FastenerLine.count(FIVE, END, Length.ZERO)).hasMessageContaining("every 0 in");
    }

    /** Second derivation: the fewest that keep both ends and the spacing, found by adding one at a time. */
    @Test
    void count_random_isTheFewestThatKeepTheSpacing() {
        long seed = 71;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 2_000; i++) {
            Length contact = new Length(random.nextLong(130_000_000L, 2_500_000_000L));
            Length every = new Length(random.nextLong(30_000_000L, 400_000_000L));
            Length run = contact.minus(END, END);
            int fewest = 2;
            while (every.times(fewest - 1L).isShorterThan(run)) {
                fewest++;
            }
            List<Length> places = FastenerLine.positions(contact, END, every);

            assertThat(FastenerLine.count(contact, END, every).value())
                    .as("seed %d, case %d: %s every %s", seed, i, contact, every)
                    .isEqualTo(fewest)
                    .isEqualTo(places.size());
            for (int n = 1; n < places.size(); n++) {
                assertThat(places.get(n).minus(places.get(n - 1)))
                        .as("seed %d, case %d: gap %d of %s", seed, i, n, contact)
                        .isGreaterThan(Length.ZERO)
                        .isLessThanOrEqualTo(every.plus(new Length(1)));
            }
        }
    }
}
