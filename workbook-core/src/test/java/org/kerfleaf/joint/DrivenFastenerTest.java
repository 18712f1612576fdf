package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.shape.Vector;

class DrivenFastenerTest {
    private static DrivenFastener screw(Vector head, Vector tip) {
        return new DrivenFastener(
                DrivenFastener.Kind.SCREW,
                head,
                tip,
                Optional.of(WoodScrew.diameter(6).value()));
    }

    /** The first along x from 0 to 10; the other from (x1, y1, z1) to (x2, y2, z2). */
    @ParameterizedTest
    @CsvSource({
        "5, -5, 3,    5, 5, 3,     3", // crossing above
        "5, 4, 0,     5, 9, 0,     4", // ends short of it
        "13, 4, 0,    13, 9, 0,    5", // past the end, 3-4-5
        "2, 1, 0,     8, 1, 0,     1", // alongside
        "-4, 0, 3,    -8, 0, 3,    5", // before the start
        "20, 0, 0,    12, 0, 0,    2", // head on
    })
    void between_isTheDistanceOfTheShanks(
            double x1, double y1, double z1, double x2, double y2, double z2, double apart) {
        DrivenFastener one = screw(Vector.ZERO, new Vector(10, 0, 0));
        DrivenFastener other = screw(new Vector(x1, y1, z1), new Vector(x2, y2, z2));
        assertThat(one.between(other).inMillimetres()).isCloseTo(apart, within(1e-6));
        assertThat(other.between(one)).isEqualTo(one.between(other));
    }

    private record Two(Vector a, Vector b, Vector c, Vector d) {}

    private static Vector point(RandomGenerator random) {
        return new Vector(random.nextDouble(-50, 50), random.nextDouble(-50, 50), random.nextDouble(-50, 50));
    }

    /** Against points sampled on both shanks: none is nearer, and some come as near as the samples are fine. */
    @Test
    void between_atRandom_agreesWithSampledPoints() {
        forAll(41, 200, random -> new Two(point(random), point(random), point(random), point(random)), two -> {
            double least = Double.POSITIVE_INFINITY;
            int n = 80;
            for (int i = 0; i <= n; i++) {
                Vector p = two.a.plus(two.b.minus(two.a).times(i / (double) n));
                for (int j = 0; j <= n; j++) {
                    Vector q = two.c.plus(two.d.minus(two.c).times(j / (double) n));
                    least = Math.min(least, p.minus(q).length());
                }
            }
            double found = screw(two.a, two.b).between(screw(two.c, two.d)).inMillimetres();
            double step = (two.b.minus(two.a).length() + two.d.minus(two.c).length()) / n / 2;
            assertThat(found).isBetween(least - step, least + 1e-6);
        });
    }

    @Test
    void isCrossedBy_onlyFromAnotherDirection() {
        DrivenFastener right = screw(Vector.ZERO, new Vector(10, 0, 0));
        assertThat(right.isCrossedBy(screw(new Vector(0, 5, 0), new Vector(10, 5, 0))))
                .isFalse();
        assertThat(right.isCrossedBy(screw(new Vector(30, 0, 0), new Vector(20, 0, 0))))
                .isTrue();
        assertThat(right.isCrossedBy(screw(new Vector(5, -5, 3), new Vector(5, 5, 3))))
                .isTrue();
    }

    @Test
    void wanted_isBothRadiiAndAQuarterInch_anUnknownShankCountsAsALine() {
        DrivenFastener screw = screw(Vector.ZERO, Vector.X);
        DrivenFastener nail = new DrivenFastener(DrivenFastener.Kind.NAIL, Vector.ZERO, Vector.Y, Optional.empty());
        // No. 6: 0.138 in.
        assertThat(screw.wanted(screw).inInches()).isCloseTo(0.138 + 0.25, within(1e-9));
        assertThat(screw.wanted(nail).inInches()).isCloseTo(0.069 + 0.25, within(1e-9));
    }
}
