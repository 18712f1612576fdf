package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/** Slices, hatching and interrupted views. */
class SliceDrawingTest {
    private static final double IN = 25.4;

    /** The wood in the plane, counted on a grid, just behind it. */
    private static double counted(List<Shown> shown, double x) {
        double step = 1.5;
        double area = 0;
        for (Shown one : shown) {
            PlacedSolid solid = one.solid();
            Vector low = solid.bounds().low();
            Vector high = solid.bounds().high();
            for (double y = low.y() + step / 2; x > low.x() && x - 1e-3 < high.x() && y < high.y(); y += step) {
                for (double z = low.z() + step / 2; z < high.z(); z += step) {
                    area += solid.holds(new Vector(x - 1e-3, y, z)) ? step * step : 0;
                }
            }
        }
        return area;
    }

    @ParameterizedTest
    @ValueSource(doubles = {11, 3.2, 5.9, 17.77, 21.9})
    void cut_area_isTheWoodInThePlane(double inches) {
        List<Shown> shown = SampleBuild.cabinet().stream()
                .filter(s -> !s.solid().part().equals("Post"))
                .toList();
        Scene scene = Scene.sliced(shown, View.SIDE, inches * IN);
        double counted = counted(shown, inches * IN);
        assertThat(scene.broken().isNowhere()).isTrue();
        assertThat(scene.cut().area()).isCloseTo(counted, within(0.03 * counted));
        assertThat(scene.shown())
                .allSatisfy(
                        s -> assertThat(s.drawn().project(Vector.X).most()).isLessThanOrEqualTo(inches * IN + 0.011));
    }

    /** A strip round each line as wide as the lines are apart covers the area. */
    @Test
    void hatching_length_timesSpacingIsTheArea() {
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            double[] outer = ring(random, 50, 50, 20, 40);
            double[] hole = ring(random, 50, 50, 5, 15);
            Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
            shape.append(Ink.polygon(outer), false);
            shape.append(Ink.polygon(hole), false);
            double area = Math.abs(twiceArea(outer)) / 2 - Math.abs(twiceArea(hole)) / 2;
            for (int kind = 0; kind < Hatching.kinds(); kind++) {
                Hatching hatching = Hatching.kind(kind);
                double length = length(hatching.within(new double[][] {outer, hole}));
                assertThat(length * hatching.apart()).isCloseTo(area, within(0.06 * area));
            }
        }
    }

    @Test
    void hatching_kinds_differInDirectionOrSpacing() {
        for (int i = 0; i < Hatching.kinds(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Hatching.kind(i)).isNotEqualTo(Hatching.kind(j));
            }
            assertThat(Hatching.kind(i).apart()).isGreaterThanOrEqualTo(0.7);
        }
    }

    private static double[] ring(Random random, double x, double y, double least, double most) {
        double[] xy = new double[16];
        for (int i = 0; i < 8; i++) {
            double r = least + (most - least) * random.nextDouble();
            xy[2 * i] = x + r * StrictMath.cos(i * StrictMath.PI / 4);
            xy[2 * i + 1] = y + r * StrictMath.sin(i * StrictMath.PI / 4);
        }
        return xy;
    }

    private static double twiceArea(double[] ring) {
        double sum = 0;
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            sum += ring[i] * ring[next + 1] - ring[next] * ring[i + 1];
        }
        return sum;
    }

    private static double length(Path2D lines) {
        double length = 0;
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator i = lines.getPathIterator(null); !i.isDone(); i.next()) {
            if (i.currentSegment(at) == PathIterator.SEG_LINETO) {
                length += StrictMath.hypot(at[0] - x, at[1] - y);
            }
            x = at[0];
            y = at[1];
        }
        return length;
    }

    @Test
    void broken_cabinetOnItsPost_leavesOutOnlyPost() {
        List<PlacedSolid> solids =
                SampleBuild.cabinet().stream().map(Shown::solid).toList();
        Broken broken = Broken.of(solids);
        assertThat(broken.axis()).isEqualTo(Axis.Z);
        for (PlacedSolid solid : solids) {
            PlacedSolid.Reach reach = solid.project(Vector.Z);
            boolean inTheGap = reach.most() > broken.from() && reach.least() < broken.to();
            assertThat(inTheGap).as(solid.part()).isEqualTo(solid.part().equals("Post"));
        }
        List<Shown> shortened = broken.shortened(SampleBuild.cabinet());
        assertThat(shortened).hasSize(solids.size() + 1);
        double high = shortened.stream()
                        .mapToDouble(s -> s.drawn().project(Vector.Z).most())
                        .max()
                        .orElseThrow()
                - shortened.stream()
                        .mapToDouble(s -> s.drawn().project(Vector.Z).least())
                        .min()
                        .orElseThrow();
        double whole = solids.stream()
                        .mapToDouble(s -> s.project(Vector.Z).most())
                        .max()
                        .orElseThrow()
                - solids.stream()
                        .mapToDouble(s -> s.project(Vector.Z).least())
                        .min()
                        .orElseThrow();
        assertThat(high).isCloseTo(whole - (broken.to() - broken.from()) + broken.kept(), within(1e-6));
        // Every place is drawn where the pieces are: ends of what is under the break, and what is over it.
        assertThat(broken.drawn(Axis.Z, broken.to() + 10)).isEqualTo(broken.to() + 10);
        assertThat(broken.drawn(Axis.Z, broken.from() - 10)).isCloseTo(broken.to() - broken.kept() - 10, within(1e-9));
        assertThat(broken.drawn(Axis.X, broken.from())).isEqualTo(broken.from());
    }

    @Test
    void broken_buildWithoutLongParts_isDrawnWhole() {
        List<PlacedSolid> box = SampleBuild.cabinet().stream()
                .map(Shown::solid)
                .filter(s -> !s.part().equals("Post"))
                .toList();
        assertThat(Broken.of(box).isNowhere()).isTrue();
    }

    @Test
    void neighbours_areHatchedUnlike() {
        Scene scene = Scene.sliced(SampleBuild.cabinet(), View.SIDE, 11 * IN);
        assertThat(scene.cut().kinds("Seat")).isNotEqualTo(scene.cut().kinds("Floor"));
        assertThat(scene.cut().kinds("Post")).isNotEqualTo(scene.cut().kinds("Seat"));
        assertThat(scene.cut().kinds("Back")).isNotEqualTo(scene.cut().kinds("Floor"));
    }
}
