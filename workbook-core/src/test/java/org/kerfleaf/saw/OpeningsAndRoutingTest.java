package org.kerfleaf.saw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

/** Lines are common practice unless a test names its source; arithmetic is geometry. */
class OpeningsAndRoutingTest {
    private static final Length EIGHTH = Length.ofSixtyFourths(8);
    private static final Length SIXTEENTH = Length.ofSixtyFourths(4);

    /** Blade radius 92, 24 mm deep in 18 mm: 29 mm are left at each end (worked outside the program). */
    @Test
    void plunge_184mmBlade_leavesTwentyNine() {
        double past = SawAngles.PAST_THE_SHEET.inMillimetres();
        Length sheet = Length.ofMillimetres(24 - past);
        Length blade = Length.ofMillimetres(184L);
        double d = 24;
        double t = sheet.inMillimetres();

        double left = number(Openings.plunge(blade, sheet), "left uncut below at each end");

        assertThat(left).isCloseTo(Math.sqrt(d * (184 - d)) - Math.sqrt((d - t) * (184 - d + t)), within(1e-6));
        // With 18 mm exactly the blade is 24.35 deep.
        assertThat(number(Openings.plunge(blade, Length.ofMillimetres(18L)), "left uncut below at each end"))
                .isCloseTo(29, within(0.5));
    }

    /** Second derivation: the blade's circle cut by two level lines, found by bisection along each. */
    @Test
    void plunge_random_agreesWithTheCircle() {
        long seed = 77;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 200; i++) {
            double radius = random.nextDouble(60, 150);
            double sheet = random.nextDouble(6, 40);
            double deep = sheet + SawAngles.PAST_THE_SHEET.inMillimetres();
            double above = onCircle(radius, radius - deep);
            double below = onCircle(radius, radius - deep + sheet);
            List<Reading> set = Openings.plunge(Length.ofMillimetres(2 * radius), Length.ofMillimetres(sheet));

            assertThat(number(set, "shortest side to plunge"))
                    .as("seed %d, case %d", seed, i)
                    .isCloseTo(2 * above, within(1e-4));
            assertThat(number(set, "left uncut below at each end"))
                    .as("seed %d, case %d", seed, i)
                    .isCloseTo(above - below, within(1e-4));
        }
    }

    private static double onCircle(double radius, double down) {
        double least = 0;
        double most = radius;
        for (int i = 0; i < 60; i++) {
            double middle = (least + most) / 2;
            if (Math.hypot(middle, down) < radius) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return least;
    }

    private static double number(List<Reading> set, String what) {
        return set.stream()
                .filter(r -> r.what().equals(what))
                .map(r -> ((Length) r.value().value()).inMillimetres())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void startHole_roundedCorner_isTheCornersOwnBit() {
        assertThat(Openings.startHole(Length.ofSixtyFourths(16), Optional.empty(), EIGHTH, SIXTEENTH)
                        .orElseThrow()
                        .value())
                .isEqualTo(Length.ofInches(0.5));
    }

    @Test
    void startHole_squareCorner_isTheBladeAndSomeRoomToTheNextBit() {
        Optional<Length> blade = Optional.of(Length.ofSixtyFourths(21));

        assertThat(Openings.startHole(Length.ZERO, blade, EIGHTH, SIXTEENTH)
                        .orElseThrow()
                        .value())
                .isEqualTo(Length.ofSixtyFourths(32));
        assertThat(Openings.startHole(Length.ZERO, Optional.empty(), EIGHTH, SIXTEENTH))
                .isEmpty();
    }

    /** Rabbet 1/2 wide, 3/16 deep in 23/32: bearing 1 3/8 - 1 = 3/8; 2 passes; 17/32 left. */
    @Test
    void rabbet_seedSwapCabinet_isSetAsTheTradeSays() {
        Routing routing =
                new Routing(Length.ofSixtyFourths(12), Length.ofInches(0.5), Length.ofSixtyFourths(46), EIGHTH);

        List<Reading> set = routing.rabbet(Optional.of(Length.ofInches(1.375)), Optional.of(Length.ZERO));

        assertThat(set)
                .extracting(r -> r.what() + " " + r.in(MeasureStyle.INCHES))
                .containsExactly(
                        "depth 3/16 in",
                        "passes 2",
                        "deep in each pass 3/32 in",
                        "width 1/2 in",
                        "left under it 17/32 in",
                        "cutter 1 3/8 in",
                        "bearing 3/8 in",
                        "radius left in its corners 11/16 in");
    }

    /** A bearing of 3/8 follows a corner of 1/4: 1/4 + 1/2. */
    @Test
    void rabbet_roundedOpening_keepsItsCentre() {
        Routing routing =
                new Routing(Length.ofSixtyFourths(12), Length.ofInches(0.5), Length.ofSixtyFourths(46), EIGHTH);

        List<Reading> set = routing.rabbet(Optional.of(Length.ofInches(1.375)), Optional.of(Length.ofInches(0.25)));

        assertThat(set.get(7).value().value()).isEqualTo(Length.ofInches(0.75));
    }

    @Test
    void rabbet_cutterTooSmallOrNotSaid_isSaid() {
        Routing routing =
                new Routing(Length.ofSixtyFourths(12), Length.ofInches(0.5), Length.ofSixtyFourths(46), EIGHTH);

        assertThat(routing.lacking(Optional.of(Length.ofInches(1)))).contains("too small");
        assertThat(routing.lacking(Optional.empty())).contains("bearing is not known");
        assertThat(routing.lacking(Optional.of(Length.ofInches(1.375)))).isEmpty();
    }
}
