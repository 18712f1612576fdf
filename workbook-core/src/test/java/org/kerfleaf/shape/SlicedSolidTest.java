package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pieces cut by a plane of the build that is no cut of their own. */
class SlicedSolidTest {
    private static final List<Vector> NORMALS = List.of(
            Vector.X,
            Vector.Y,
            Vector.Z,
            Vector.X.negated(),
            new Vector(0.6, 0.8, 0),
            new Vector(0, 0.6, -0.8),
            new Vector(2, -3, 6).times(1 / 7.0));

    static List<PlacedSolid> pieces() {
        return CabinetSolids.all();
    }

    @ParameterizedTest
    @MethodSource("pieces")
    void behind_bothSidesOfAPlane_areTogetherThePiece(PlacedSolid piece) {
        Random random = new Random(5);
        for (Vector normal : NORMALS) {
            for (int i = 0; i < 4; i++) {
                PlacedSolid.Reach reach = piece.project(normal);
                double offset = reach.least() + (0.1 + 0.8 * random.nextDouble()) * (reach.most() - reach.least());
                PlacedSolid here = piece.behind(normal, offset).orElseThrow();
                PlacedSolid there = piece.behind(normal.negated(), -offset).orElseThrow();
                double whole = piece.volume().inCubicInches();
                // Between an arc and its chords a plane cuts slivers of no account.
                assertThat(here.volume().inCubicInches() + there.volume().inCubicInches())
                        .as("%s at %s, %s", piece.part(), normal, offset)
                        .isCloseTo(whole, within(whole * 2e-4));
                assertThat(here.solid().unclosed()).isLessThan(1e-5);
                assertThat(area(here)).isCloseTo(area(there), within(1e-3 + area(here) * 1e-7));
                assertThat(here.project(normal).most()).isCloseTo(offset, within(1e-6));
            }
        }
    }

    private static double area(PlacedSolid sliced) {
        return sliced.faces().stream()
                .filter(f -> f.name().equals(PlacedSolid.SLICE))
                .mapToDouble(Face::squareMillimetres)
                .sum();
    }

    /** Counted on a grid of points of the plane that lie in the wood: another way to the same area. */
    @ParameterizedTest
    @MethodSource("pieces")
    void behind_slice_hasTheAreaOfTheWoodInThePlane(PlacedSolid piece) {
        for (Vector normal : List.of(Vector.X, Vector.Y, Vector.Z)) {
            PlacedSolid.Reach reach = piece.project(normal);
            double offset = reach.least() + 0.4137 * (reach.most() - reach.least());
            Pose plane = Pose.facing(normal.times(offset), normal);
            PlacedSolid.Reach across = piece.project(plane.u());
            PlacedSolid.Reach up = piece.project(plane.v());
            int steps = 400;
            double du = (across.most() - across.least()) / steps;
            double dv = (up.most() - up.least()) / steps;
            int in = 0;
            for (int i = 0; i < steps; i++) {
                for (int j = 0; j < steps; j++) {
                    Vector at = new Vector(across.least() + (i + 0.5) * du, up.least() + (j + 0.5) * dv, 0);
                    in += piece.holds(plane.toWorld(at)) ? 1 : 0;
                }
            }
            double counted = in * du * dv;
            double rim = 4 * (steps * du * dv + steps * dv * du);
            assertThat(area(piece.behind(normal, offset).orElseThrow()))
                    .as("%s at %s", piece.part(), normal)
                    .isCloseTo(counted, within(rim));
        }
    }

    @Test
    void behind_planeBesideThePiece_leavesAllOrNothing() {
        PlacedSolid piece = pieces().get(0);
        double most = piece.project(Vector.X).most();
        assertThat(piece.behind(Vector.X, most)).contains(piece);
        assertThat(piece.behind(Vector.X.negated(), -most)).isEqualTo(Optional.empty());
    }
}
