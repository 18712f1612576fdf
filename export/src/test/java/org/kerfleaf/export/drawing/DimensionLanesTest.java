package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

class DimensionLanesTest {
    private static DimensionLanes.Wish wish(double from, double to, String value) {
        return new DimensionLanes.Wish(
                from, to, Rich.of(value, Dimensions.VALUE).line());
    }

    private static List<DimensionLanes.Placed> placed(DimensionLanes.Wish... wishes) {
        return DimensionLanes.of(List.of(wishes), Double.NEGATIVE_INFINITY, 50);
    }

    @Test
    void of_neighbours_standInOneChainTheOverallOutside() {
        List<DimensionLanes.Placed> placed = placed(wish(0, 100, "100"), wish(0, 40, "40"), wish(40, 100, "60"));
        assertThat(placed).extracting(DimensionLanes.Placed::lane).containsExactly(0, 0, 1);
        assertThat(placed.get(2).wish().length()).isEqualTo(100);
    }

    @Test
    void of_narrowEnds_putTheirValuesOutsideTheChain() {
        List<DimensionLanes.Placed> placed = placed(wish(0, 3, "18"), wish(3, 97, "560"), wish(97, 100, "18"));
        assertThat(placed).extracting(DimensionLanes.Placed::lane).containsOnly(0);
        assertThat(placed).anyMatch(p -> p.valueEnd() < 0).anyMatch(p -> p.valueAt() > 100);
    }

    @Test
    void of_narrowInTheMiddle_takesALaneOfItsOwn() {
        List<DimensionLanes.Placed> placed = placed(wish(0, 48, "480"), wish(48, 50, "20"), wish(50, 100, "500"));
        assertThat(placed.stream()
                        .filter(p -> p.wish().length() == 2)
                        .findFirst()
                        .orElseThrow()
                        .lane())
                .isZero();
        assertThat(placed).extracting(DimensionLanes.Placed::lane).contains(1);
    }

    @Test
    void of_randomSizes_nothingMeets() {
        for (long seed = 0; seed < 300; seed++) {
            RandomGenerator random =
                    RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
            List<DimensionLanes.Wish> wishes = new ArrayList<>();
            int count = 1 + random.nextInt(12);
            for (int i = 0; i < count; i++) {
                double from = random.nextInt(0, 90);
                double to = from + random.nextInt(1, 100);
                wishes.add(wish(from, to, Integer.toString(random.nextInt(1, 2000))));
            }
            List<DimensionLanes.Placed> placed = DimensionLanes.of(wishes, -20, 50);
            assertThat(placed).as("seed %d", seed).hasSize(count);
            for (DimensionLanes.Placed a : placed) {
                assertThat(a.valueAt()).as("seed %d", seed).isGreaterThanOrEqualTo(-20);
                for (DimensionLanes.Placed b : placed) {
                    if (a != b && a.lane() == b.lane()) {
                        boolean apart = a.lineTo() <= b.lineFrom() + 1e-6 || b.lineTo() <= a.lineFrom() + 1e-6;
                        assertThat(apart).as("seed %d: %s, %s", seed, a, b).isTrue();
                    }
                }
            }
        }
    }
}
