package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.testing.Draw;
import org.kerfleaf.testing.Property;

/** Promises about contact that hold wherever a build stands. */
class TouchingPropertyTest {
    private static final Length LEAST = Length.ofMillimetres(20);
    private static final Length MOST = Length.ofMillimetres(500);

    /** A stack of boards, each on the one below, moved sideways, so that all but the lowest touch the one below over a rectangle. */
    private static List<PlacedSolid> stack(RandomGenerator random) {
        List<PlacedSolid> stack = new ArrayList<>();
        Length up = Length.ZERO;
        for (int i = 1; i <= 6; i++) {
            Length wide = Draw.length(random, LEAST, MOST);
            Length deep = Draw.length(random, LEAST, MOST);
            Length thick = Draw.length(random, Length.ofMillimetres(3), Length.ofMillimetres(40));
            Vector at = new Vector(random.nextInt(15), random.nextInt(15), up.inMillimetres());
            stack.add(new PlacedSolid("Board", i, Solid.of(Outline.rectangle(wide, deep), thick), Pose.HOME.moved(at)));
            up = up.plus(thick);
        }
        return stack;
    }

    private static List<PlacedSolid> elsewhere(List<PlacedSolid> build, RandomGenerator random) {
        Vector axis = new Vector(random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextDouble() - 0.5);
        Angle angle = Angle.ofDegrees(random.nextDouble(360));
        Vector by = new Vector(random.nextDouble() * 20_000 - 10_000, random.nextDouble() * 10_000, 300);
        return build.stream()
                .map(s -> s.at(s.pose()
                        .turnedAbout(new Vector(50, 70, 10), axis, angle)
                        .moved(by)))
                .toList();
    }

    private static double[] areas(List<PlacedSolid> build) {
        return Touching.all(build).stream()
                .flatMap(t -> t.touches().stream())
                .mapToDouble(t -> t.area().squareMillimetres())
                .toArray();
    }

    @Test
    void all_stack_neighboursTouchOverTheirOverlap() {
        forAll(51, 200, TouchingPropertyTest::stack, stack -> {
            List<Touching> all = Touching.all(stack);
            assertThat(all).hasSize(5).allMatch(t -> t.clash().isEmpty());
            for (Touching pair : all) {
                Bounds a = pair.a().bounds();
                Bounds b = pair.b().bounds();
                Vector shared = a.high().min(b.high()).minus(a.low().max(b.low()));
                assertThat(pair.area().squareMillimetres()).isEqualTo(shared.x() * shared.y(), within(1e-6));
                Touch touch = pair.touches().get(0);
                assertThat(touch.along().inMillimetres()).isEqualTo(Math.max(shared.x(), shared.y()), within(2e-6));
                assertThat(touch.across().inMillimetres()).isEqualTo(Math.min(shared.x(), shared.y()), within(2e-6));
            }
        });
    }

    @Test
    void all_buildTurnedAndMoved_sameContacts() {
        forAll(
                52,
                100,
                random -> List.of(stack(random), elsewhere(stack(random), random)),
                both -> assertThat(both)
                        .allSatisfy(build -> assertThat(areas(build)).hasSize(5)));
        RandomGenerator random = Property.seeded(53);
        List<PlacedSolid> cabinet = CabinetSolids.all();
        double[] areas = areas(cabinet);
        for (int i = 0; i < 20; i++) {
            assertThat(areas(elsewhere(cabinet, random))).containsExactly(areas, within(1e-6));
        }
    }

    @Test
    void all_planterTurnedAndMoved_sameLines() {
        RandomGenerator random = Property.seeded(54);
        for (int i = 0; i < 20; i++) {
            List<Touching> all = Touching.all(elsewhere(PlanterSolids.all(), random));
            assertThat(all.stream()
                            .flatMap(t -> t.lines().stream())
                            .mapToDouble(LineTouch::length)
                            .sum())
                    .isEqualTo(851.099, within(5e-4));
        }
    }

    @Test
    void between_movedApart_touchesNoMore() {
        forAll(55, 200, TouchingPropertyTest::stack, stack -> {
            PlacedSolid low = stack.get(0);
            PlacedSolid high = stack.get(1);
            PlacedSolid lifted = high.at(high.pose().moved(new Vector(0, 0, 0.011)));
            Touching pair = Touching.between(low, lifted);
            assertThat(pair.isAny()).isFalse();
            assertThat(pair.gap().orElseThrow().size().inMillimetres()).isEqualTo(0.011, within(2e-6));
            PlacedSolid pressed = high.at(high.pose().moved(new Vector(0, 0, -1)));
            Clash clash = Touching.between(low, pressed).clash().orElseThrow();
            assertThat(clash.sizes().get(2).inMillimetres()).isEqualTo(1, within(2e-6));
        });
    }

    @Test
    void between_exchanged_sameAreaClashAndGap() {
        forAll(56, 200, TouchingPropertyTest::stack, stack -> {
            for (double dz : new double[] {0, -2, 3}) {
                PlacedSolid a = stack.get(0);
                PlacedSolid b = stack.get(1).at(stack.get(1).pose().moved(new Vector(0, 0, dz)));
                Touching there = Touching.between(a, b);
                Touching back = Touching.between(b, a);
                assertThat(back.area().squareMillimetres())
                        .isEqualTo(there.area().squareMillimetres(), within(1e-6));
                assertThat(volume(back)).isEqualTo(volume(there), within(1e-4));
                assertThat(back.gap().map(Gap::size)).isEqualTo(there.gap().map(Gap::size));
            }
        });
    }

    private static double volume(Touching pair) {
        return pair.clash().map(c -> c.volume().cubicMillimetres()).orElse(0.0);
    }
}
