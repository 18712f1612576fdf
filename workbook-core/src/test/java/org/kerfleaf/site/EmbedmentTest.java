package org.kerfleaf.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.WindSpeed;
import org.kerfleaf.sketch.Exposure;
import org.kerfleaf.sketch.Soil;

class EmbedmentTest {
    /** IBC 1807.3.2.1 with the lateral bearing of table 1806.2, repeated until it stands still (derived), in feet. */
    @ParameterizedTest
    @CsvSource({
        "80, 4, 0.41248, SAND, false, 4.280",
        "80, 4, 0.83333, SAND, false, 3.245",
        "80, 4, 0.83333, CLAY, false, 3.803",
        "150, 6, 1, SAND, false, 4.228",
        "500, 8, 1.5, CLAY, true, 5.500"
    })
    void depth_worked_agrees(double pounds, double height, double across, Soil soil, boolean doubled, double depth) {
        assertThat(feet(pounds, height, across, soil, doubled)).isCloseTo(depth, within(0.001));
    }

    /** One step without repeating: P 1000, h 6, b 1.5, S1 300 gives A 5.200 and 8.985 ft. */
    @Test
    void once_worked_agrees() {
        assertThat(Embedment.once(1000, 6, 1.5, 300)).isCloseTo(8.985, within(0.001));
    }

    /** The seed-swap cabinet on its 4x4 in sand: 75.4 lb at 3.982 ft, 4.177 ft alone, 3.180 ft with the doubling. */
    @Test
    void depth_seedSwapCabinet_holdsWithTheDoublingOnly() {
        Force push = Wind.push(
                        Wind.pressure(WindSpeed.ofMilesPerHour(115), Exposure.OPEN_GROUND, feet(15), Length.ZERO)
                                .value(),
                        feet(4.649).by(feet(1)))
                .value();

        assertThat(push.inPounds()).isCloseTo(75.4, within(0.05));
        double diagonal = 3.5 * Math.sqrt(2) / 12;
        assertThat(feet(push.inPounds(), 3.982, diagonal, Soil.SAND, false)).isCloseTo(4.177, within(0.001));
        assertThat(feet(push.inPounds(), 3.982, diagonal, Soil.SAND, true)).isCloseTo(3.180, within(0.001));
    }

    @Test
    void depth_deeperThanTheRule_isEmpty() {
        assertThat(Embedment.depth(Force.ofPounds(3000), feet(6), feet(1), Soil.SAND, false))
                .isEmpty();
    }

    /** Second derivation: with a = 7.02 P/(f s b) the depth solves d³ = a (d + 1.09 h); found by halving. */
    @Test
    void depth_random_solvesTheCubic() {
        long seed = 1807;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 1_000; i++) {
            double p = random.nextDouble(5, 600);
            double h = random.nextDouble(0, 10);
            double b = random.nextDouble(0.3, 2);
            Soil soil = Soil.values()[random.nextInt(3)];
            boolean doubled = random.nextBoolean();
            double bearing = switch (soil) {
                case GRAVEL -> 200;
                case SAND -> 150;
                case CLAY -> 100;
            };
            double a = 7.02 * p / ((doubled ? 2 : 1) * bearing * b);
            double low = 0;
            double high = 100;
            for (int n = 0; n < 100; n++) {
                double middle = (low + high) / 2;
                if (middle * middle * middle < a * (middle + 1.09 * h)) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            if (low > 11.99) {
                continue;
            }
            assertThat(feet(p, h, b, soil, doubled))
                    .as("seed %d, case %d: %f lb at %f ft, %f ft across, %s", seed, i, p, h, b, soil)
                    .isCloseTo(low, within(1e-5));
        }
    }

    @Test
    void byThumb_post_isAThirdButTwoFeet() {
        assertThat(Embedment.byThumb(Length.ofInches(96)).value()).isEqualTo(Length.ofInches(32));
        assertThat(Embedment.byThumb(Length.ofInches(60)).value()).isEqualTo(Length.ofInches(24));
    }

    @Test
    void depth_reason_saysTheDoubling() {
        assertThat(Embedment.depth(Force.ofPounds(80), feet(4), feet(1), Soil.SAND, true)
                        .orElseThrow()
                        .reason()
                        .in(MeasureStyle.INCHES))
                .contains("doubled", "150 lb/ft²", "IBC 1807.3.2.1");
    }

    private static double feet(double pounds, double height, double across, Soil soil, boolean doubled) {
        return Embedment.depth(Force.ofPounds(pounds), feet(height), feet(across), soil, doubled)
                        .orElseThrow()
                        .value()
                        .inInches()
                / 12;
    }

    private static Length feet(double number) {
        return Length.ofInches(number * 12);
    }
}
