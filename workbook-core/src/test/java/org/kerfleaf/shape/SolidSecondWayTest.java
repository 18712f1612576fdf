package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.testing.Draw;
import org.kerfleaf.testing.Property;

/**
 * Random boards against the same boards made of half-spaces by a library that knows nothing of ours.
 *
 * <p>Of 30 000 more boards that library missed about one in 3 000, where walls are a nanometre apart; there our faces were closed
 * and agreed with our convex pieces.
 */
class SolidSecondWayTest {
    private static final Precision.DoubleEquivalence NEAR = Precision.doubleEquivalenceOfEpsilon(1e-7);

    /** Pieces a nanometre thin are left out: over a metre of 20 mm that is 0.02 mm³; a wall too many would be hundreds of mm². */
    private static final double SKIN = 0.02;

    /** Sizes on a coarse grid, so that walls often fall on walls. */
    private static Length size(RandomGenerator random, Length whole, int from, int to) {
        return whole.times(random.nextInt(from, to + 1)).dividedBy(10);
    }

    private static Solid board(RandomGenerator random) {
        Length wide = Draw.length(random, Length.ofMillimetres(100), Length.ofMillimetres(900));
        Length high = Draw.length(random, Length.ofMillimetres(100), Length.ofMillimetres(600));
        Length thick = Draw.length(random, Length.ofMillimetres(6), Length.ofMillimetres(60));
        Outline outline =
                random.nextInt(4) == 0 ? Outline.trapezoid(wide, high, high.half()) : Outline.rectangle(wide, high);
        if (random.nextBoolean()) {
            outline = outline.opening(
                    "window",
                    box(
                            size(random, wide, 2, 3),
                            size(random, wide, 4, 7),
                            size(random, high, 1, 1),
                            size(random, high, 2, 3)));
        }
        Solid solid = Solid.of(outline, thick);
        for (int i = random.nextInt(3); i > 0; i--) {
            SheetSide side = Draw.oneOf(random, SheetSide.values());
            Outline shape = box(
                    size(random, wide, 0, 4),
                    size(random, wide, 5, 10),
                    size(random, high, 0, 2),
                    size(random, high, 3, 10));
            solid = solid.pocket("pocket " + i, shape, size(random, thick, 1, 8), side);
        }
        for (String edge : List.of("BOTTOM", "RIGHT", "TOP", "LEFT")) {
            if (random.nextInt(3) == 0) {
                Angle tilt = Angle.ofDegrees(random.nextDouble(1, 60));
                solid = solid.bevelled(edge, tilt, Draw.oneOf(random, SheetSide.values()));
            }
        }
        return solid;
    }

    private static Outline box(Length left, Length right, Length low, Length high) {
        return Outline.rectangle(right.minus(left), high.minus(low)).moved(left, low);
    }

    /** A convex ring times an interval of w. */
    private static RegionBSPTree3D prism(Outline ring, double low, double high) {
        List<double[]> planes = new ArrayList<>();
        for (OutlineEdge edge : ring.edges()) {
            double out = edge.leaves() - StrictMath.PI / 2;
            planes.add(new double[] {
                StrictMath.cos(out),
                StrictMath.sin(out),
                0,
                edge.from().x(),
                edge.from().y(),
                0
            });
        }
        planes.add(new double[] {0, 0, -1, 0, 0, low});
        planes.add(new double[] {0, 0, 1, 0, 0, high});
        RegionBSPTree3D tree = RegionBSPTree3D.full();
        planes.forEach(p -> keep(tree, Vector3D.of(p[0], p[1], p[2]), Vector3D.of(p[3], p[4], p[5])));
        return tree;
    }

    private static void keep(RegionBSPTree3D tree, Vector3D normal, Vector3D on) {
        RegionBSPTree3D half = RegionBSPTree3D.empty();
        half.insert(Planes.fromPointAndNormal(on, normal, NEAR).span());
        tree.intersection(half);
    }

    private static RegionBSPTree3D tree(Solid solid) {
        double t = solid.thickness().inMillimetres();
        RegionBSPTree3D tree = prism(solid.outline(), 0, t);
        for (String opening : solid.outline().openings()) {
            tree.difference(prism(solid.outline().opening(opening), -1, t + 1));
        }
        for (Pocket pocket : solid.pockets()) {
            double depth = pocket.depth().inMillimetres();
            boolean inside = pocket.side() == SheetSide.INSIDE;
            tree.difference(prism(pocket.shape(), inside ? t - depth : -1, inside ? t + 1 : depth));
        }
        for (Cut cut : solid.cuts()) {
            Vector3D normal =
                    Vector3D.of(cut.normal().x(), cut.normal().y(), cut.normal().z());
            keep(tree, normal, normal.multiply(cut.offset()));
        }
        return tree;
    }

    @Test
    void volumeMiddleAndSurface_randomBoards_sameFromHalfSpaces() {
        forAll(41, 1000, SolidSecondWayTest::board, solid -> {
            RegionBSPTree3D tree = tree(solid);
            assertThat(solid.volume().cubicMillimetres()).isEqualTo(tree.getSize(), within(SKIN));
            assertThat(solid.surface().squareMillimetres()).isEqualTo(tree.getBoundarySize(), within(SKIN));
            assertThat(solid.unclosed()).isLessThan(SKIN);
            Vector3D middle = tree.getCentroid();
            Vector ours = solid.centroid();
            assertThat(ours.minus(new Vector(middle.getX(), middle.getY(), middle.getZ()))
                            .length())
                    .isLessThan(1e-6);
        });
    }

    @Test
    void pieces_randomBoards_addUpToTheVolume() {
        forAll(
                42,
                1000,
                SolidSecondWayTest::board,
                solid -> assertThat(solid.pieces().stream()
                                .mapToDouble(ConvexPiece::volume)
                                .sum())
                        .isEqualTo(solid.volume().cubicMillimetres(), within(SKIN)));
    }

    @Test
    void mirrored_randomBoards_sameVolumeAndSurface() {
        forAll(43, 300, SolidSecondWayTest::board, solid -> {
            Solid other = solid.mirrored();
            assertThat(other.volume().cubicMillimetres())
                    .isEqualTo(solid.volume().cubicMillimetres(), within(SKIN));
            assertThat(other.surface().squareMillimetres())
                    .isEqualTo(solid.surface().squareMillimetres(), within(SKIN));
            assertThat(other.faces().stream().map(Face::name).distinct().sorted())
                    .containsExactlyElementsOf(solid.faces().stream()
                            .map(Face::name)
                            .distinct()
                            .sorted()
                            .toList());
        });
    }

    @Test
    void holds_randomPoints_sameAsTheTree() {
        forAll(44, 100, SolidSecondWayTest::board, solid -> {
            RegionBSPTree3D tree = tree(solid);
            RandomGenerator random = Property.seeded(solid.thickness().nanometres());
            Bounds box = Bounds.of(solid.corners());
            for (int i = 0; i < 50; i++) {
                Vector p = box.low()
                        .plus(new Vector(
                                random.nextDouble() * box.sizes().x(),
                                random.nextDouble() * box.sizes().y(),
                                random.nextDouble() * box.sizes().z()));
                assertThat(solid.holds(p)).as("%s", p).isEqualTo(tree.contains(Vector3D.of(p.x(), p.y(), p.z())));
            }
        });
    }

    @Test
    void clash_randomPairs_sameVolumeAsTheTrees() {
        forAll(45, 200, SolidSecondWayTest::pair, pair -> {
            RegionBSPTree3D a = tree(pair.get(0).solid());
            RegionBSPTree3D b = tree(pair.get(1).solid());
            b.transform(matrix(pair.get(1).pose()));
            RegionBSPTree3D both = RegionBSPTree3D.empty();
            both.intersection(a, b);
            double ours = Touching.between(pair.get(0), pair.get(1))
                    .clash()
                    .map(c -> c.volume().cubicMillimetres())
                    .orElse(0.0);
            assertThat(ours).isEqualTo(both.getSize() > 0.5 ? both.getSize() : 0, within(1e-2));
        });
    }

    private static AffineTransformMatrix3D matrix(Pose p) {
        return AffineTransformMatrix3D.of(
                p.u().x(),
                p.v().x(),
                p.w().x(),
                p.origin().x(),
                p.u().y(),
                p.v().y(),
                p.w().y(),
                p.origin().y(),
                p.u().z(),
                p.v().z(),
                p.w().z(),
                p.origin().z());
    }

    /** Two boards, the second turned anyhow, their middles within 100 mm. */
    private static List<PlacedSolid> pair(RandomGenerator random) {
        Solid a = board(random);
        Solid b = board(random);
        Vector axis = new Vector(random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextDouble() - 0.5);
        Pose turned = Pose.HOME.turnedAbout(b.centroid(), axis, Angle.ofDegrees(random.nextDouble(360)));
        Vector off = new Vector(random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextDouble() - 0.5);
        Pose pose = turned.moved(a.centroid().minus(b.centroid()).plus(off.times(200)));
        return List.of(new PlacedSolid("A", 1, a, Pose.HOME), new PlacedSolid("B", 1, b, pose));
    }
}
