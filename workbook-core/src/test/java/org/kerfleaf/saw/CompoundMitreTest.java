package org.kerfleaf.saw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Angle;

class CompoundMitreTest {
    /** A saw maker's printed compound-angle chart, to 0.01 degrees (seen in a copy); the last row, a 4-in-12 pyramid, is derived. */
    @ParameterizedTest
    @CsvSource({
        "5, 44.89, 3.53, 35.90, 2.94, 29.91, 2.50, 22.42, 1.91",
        "15, 44.01, 10.55, 35.06, 8.75, 29.15, 7.44, 21.81, 5.68",
        "20, 43.22, 14.00, 34.32, 11.60, 28.48, 9.85, 21.27, 7.52",
        "40, 37.45, 27.03, 29.10, 22.20, 23.86, 18.75, 17.60, 14.24",
        "45, 35.26, 30.00, 27.19, 24.56, 22.21, 20.70, 16.32, 15.70",
        "60, 26.57, 37.76, 19.96, 30.60, 16.10, 25.66, 11.70, 19.35",
        "75, 14.51, 43.08, 10.65, 34.59, 8.50, 28.88, 6.12, 21.69",
        "18.435, 43.49, 12.92, 34.58, 10.71, 28.71, 9.10, 21.45, 6.95"
    })
    void ofSides_chart_agrees(
            double side, double m4, double b4, double m5, double b5, double m6, double b6, double m8, double b8) {
        agrees(side, 4, m4, b4);
        agrees(side, 5, m5, b5);
        agrees(side, 6, m6, b6);
        agrees(side, 8, m8, b8);
    }

    /** Crown moulding laid flat, S = 90 - spring (saw manuals' tables, seen in copies). */
    @ParameterizedTest
    @CsvSource({
        "38, 90, 31.62, 33.86",
        "52, 90, 38.24, 25.81",
        "38, 135, 14.31, 17.55",
        "38, 120, 19.57, 23.20",
        "38, 88, 32.52, 34.53"
    })
    void ofCorner_crown_agreesWithTheManuals(double spring, double corner, double mitre, double bevel) {
        CompoundMitre cut = CompoundMitre.ofCorner(Angle.ofDegrees(90 - spring), Angle.ofDegrees(corner));

        assertThat(cut.mitre().value().inDegrees()).isCloseTo(mitre, within(0.01));
        assertThat(cut.tilt().value().inDegrees()).isCloseTo(bevel, within(0.01));
    }

    /** The splayed planter: six sides leaning 15° from upright, 8.499 and 28.879 (worked outside the program). */
    @Test
    void ofSides_splayedPlanter_isWorkedOut() {
        CompoundMitre cut = CompoundMitre.ofSides(Angle.ofDegrees(75), 6);

        assertThat(cut.mitre().value().inDegrees()).isCloseTo(8.499, within(5e-4));
        assertThat(cut.tilt().value().inDegrees()).isCloseTo(28.879, within(5e-4));
    }

    @Test
    void ofSides_flatFrame_isAPlainMitre() {
        CompoundMitre cut = CompoundMitre.ofSides(Angle.ZERO, 6);

        assertThat(cut.mitre().value()).isEqualTo(Angle.ofDegrees(30));
        assertThat(cut.tilt().value()).isEqualTo(Angle.ZERO);
    }

    @Test
    void ofSides_uprightBox_isAPlainBevel() {
        CompoundMitre cut = CompoundMitre.ofSides(Angle.RIGHT, 6);

        assertThat(cut.mitre().value()).isEqualTo(Angle.ZERO);
        assertThat(cut.tilt().value()).isEqualTo(Angle.ofDegrees(30));
    }

    @Test
    void ofSides_two_isRefused() {
        assertThatThrownBy(() -> CompoundMitre.ofSides(Angle.RIGHT, 2)).hasMessageContaining("2 sides");
    }

    /** Second derivation by vectors: the cut's plane bisects two neighbouring sides; measure mitre and tilt on the side itself. */
    @Test
    void ofSides_random_agreesWithVectors() {
        long seed = 1889;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 1_000; i++) {
            int sides = random.nextInt(3, 13);
            double s = Math.toRadians(random.nextDouble(1, 89));
            double half = Math.PI / sides;
            // The side climbs along "up" and runs along x; its neighbour is it turned about z by 2 · half.
            double[] up = {0, Math.cos(s), Math.sin(s)};
            double[] normal = {0, -Math.sin(s), Math.cos(s)};
            double[] bisector = {Math.cos(half), -Math.sin(half), 0};
            double tilt = Math.asin(Math.abs(dot(bisector, normal)));
            double mitre = Math.atan2(Math.abs(dot(bisector, up)), Math.abs(bisector[0]));
            CompoundMitre cut = CompoundMitre.ofSides(Angle.ofDegrees(Math.toDegrees(s)), sides);

            assertThat(cut.tilt().value().inRadians())
                    .as("seed %d, case %d: tilt of %d sides at %f", seed, i, sides, s)
                    .isCloseTo(tilt, within(1e-8));
            assertThat(cut.mitre().value().inRadians())
                    .as("seed %d, case %d: mitre of %d sides at %f", seed, i, sides, s)
                    .isCloseTo(mitre, within(1e-8));
        }
    }

    private static void agrees(double side, int sides, double mitre, double tilt) {
        CompoundMitre cut = CompoundMitre.ofSides(Angle.ofDegrees(side), sides);

        assertThat(cut.mitre().value().inDegrees()).as("mitre, %d sides", sides).isCloseTo(mitre, within(0.0051));
        assertThat(cut.tilt().value().inDegrees()).as("tilt, %d sides", sides).isCloseTo(tilt, within(0.0051));
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
