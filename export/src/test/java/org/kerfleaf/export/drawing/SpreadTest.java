package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

class SpreadTest {
    @Test
    void of_placesFarApart_leavesThem() {
        assertThat(Spread.of(new double[] {10, 30, 60}, 0, 100, 7).places()).containsExactly(10, 30, 60);
    }

    @Test
    void of_twoTooNear_movesBothByTheSame() {
        assertThat(Spread.of(new double[] {50, 51}, 0, 100, 7).places()).containsExactly(47, 54);
    }

    @Test
    void of_nearTheEnd_staysInside() {
        assertThat(Spread.of(new double[] {99, 100}, 0, 100, 7).places()).containsExactly(93, 100);
    }

    @Test
    void of_edgeTooShort_takesMoreRows() {
        assertThat(Spread.of(new double[] {1, 2, 3, 4}, 0, 10, 7).rows()).isEqualTo(3);
    }

    @Test
    void of_randomPlaces_keepsOrderDistanceAndEnds() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        for (int i = 0; i < 500; i++) {
            double[] wanted =
                    random.doubles(random.nextInt(1, 40), 0, 150).sorted().toArray();
            Spread spread = Spread.of(wanted, 0, 150, 6.8);
            double step = 6.8 / spread.rows();
            for (int k = 0; k < wanted.length; k++) {
                assertThat(spread.places()[k])
                        .as("seed 7, case %d: %s", i, Arrays.toString(wanted))
                        .isBetween(-1e-9, 150 + 1e-9);
                if (k > 0) {
                    assertThat(spread.places()[k] - spread.places()[k - 1])
                            .as("seed 7, case %d: %s", i, Arrays.toString(wanted))
                            .isGreaterThan(step - 1e-9);
                }
            }
        }
    }

    @Test
    void of_noPlaces_isEmpty() {
        assertThat(Spread.of(new double[0], 0, 10, 7).places()).isEmpty();
        assertThat(Spread.rows(1, 10, 7)).isCloseTo(1, within(0));
    }
}
