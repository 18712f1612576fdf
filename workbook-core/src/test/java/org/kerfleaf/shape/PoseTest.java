package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.kerfleaf.testing.Property.forAll;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;

class PoseTest {
    private static Vector vector(RandomGenerator random) {
        return new Vector(
                random.nextDouble(-1000, 1000), random.nextDouble(-1000, 1000), random.nextDouble(-1000, 1000));
    }

    private static Pose pose(RandomGenerator random) {
        return Pose.HOME
                .turnedAbout(vector(random), vector(random), Angle.ofDegrees(random.nextDouble(360)))
                .moved(vector(random));
    }

    private static void assertSame(Vector a, Vector b) {
        assertThat(a.minus(b).length()).as("%s and %s", a, b).isLessThan(1e-8);
    }

    @Test
    void toLocal_toWorld_roundTrip() {
        forAll(61, 500, random -> new Object[] {pose(random), vector(random)}, drawn -> {
            Pose pose = (Pose) drawn[0];
            Vector point = (Vector) drawn[1];
            assertSame(pose.toWorld(pose.toLocal(point)), point);
            assertSame(pose.toLocal(pose.toWorld(point)), point);
        });
    }

    @Test
    void then_firstThisThenTheOuter() {
        forAll(62, 500, random -> new Object[] {pose(random), pose(random), vector(random)}, drawn -> {
            Pose inner = (Pose) drawn[0];
            Pose outer = (Pose) drawn[1];
            Vector point = (Vector) drawn[2];
            assertSame(inner.then(outer).toWorld(point), outer.toWorld(inner.toWorld(point)));
        });
    }

    @Test
    void turnedAbout_quarterTurn() {
        Pose turned = Pose.HOME.turnedAbout(new Vector(1, 0, 0), Vector.Z.times(5), Angle.RIGHT);
        assertSame(turned.origin(), new Vector(1, -1, 0));
        assertSame(turned.u(), Vector.Y);
        assertSame(turned.v(), Vector.X.negated());
    }

    @Test
    void pose_leftHanded_isRefused() {
        assertThatThrownBy(() -> new Pose(Vector.ZERO, Vector.X, Vector.Y, Vector.Z.negated()))
                .hasMessageContaining("right-handed");
        assertThatThrownBy(() -> Pose.of(Vector.ZERO, Vector.X.times(2), Vector.Y))
                .hasMessageContaining("one long");
    }
}
