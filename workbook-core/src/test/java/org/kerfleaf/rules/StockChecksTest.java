package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.stock.Surface;

class StockChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;
    private static final Optional<Length> THREE_QUARTERS = Optional.of(Length.ofSixtyFourths(48));

    /** PS 1-19: a 3/4 in sheet is 23/32 to 25/32 in, so the seed-swap cabinet's 23/32 is just within. */
    @Test
    void thicknessMeasured_seedSwapCabinet_isJustWithin() {
        Check check = thickness(Optional.of(Length.ofSixtyFourths(46)));

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.name()).isEqualTo("Thickness measured: exterior plywood");
        assertThat(check.result()).isEqualTo("A caliper says 23/32 in, sold as 3/4 in. Wanted: 23/32 in to 25/32 in.");
        assertThat(check.margin()).isEqualTo("nothing to spare");
        assertThat(check.level()).hasValue(0);
    }

    @Test
    void thicknessMeasured_thinnerThanTheLimit_isShort() {
        Check check = thickness(Optional.of(Length.ofSixtyFourths(45)));

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result()).endsWith("Short by 1/64 in.");
        assertThat(check.level().getAsDouble()).isCloseTo(-0.5, within(1e-9));
        assertThat(check.advice()).contains("caliper");
    }

    @Test
    void thicknessMeasured_thickerThanTheLimit_isOver() {
        assertThat(thickness(Optional.of(Length.ofSixtyFourths(52))).result()).endsWith("Over by 1/32 in.");
    }

    @Test
    void thicknessMeasured_nobodyMeasured_isNotKnown() {
        Check check = thickness(Optional.empty());

        assertThat(check.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(check.level()).isEmpty();
        assertThat(check.advice()).startsWith("Measure it with a caliper");
    }

    @Test
    void thicknessMeasured_labelNoStandardHas_isNotKnown() {
        assertThat(StockChecks.thicknessMeasured(
                                "clear",
                                Optional.of(Length.ofSixtyFourths(8)),
                                THREE_QUARTERS,
                                Surface.UNSANDED,
                                INCHES)
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** EN 315:2000, unsanded 18 mm: 17.06 to 19.34 mm. */
    @Test
    void thicknessMeasured_metric_isHeldToEn315() {
        Optional<Length> label = Optional.of(Length.ofMillimetres(18));
        Check holds = StockChecks.thicknessMeasured(
                "", label, Optional.of(Length.ofMillimetres(17.1)), Surface.UNSANDED, MeasureStyle.MILLIMETRES);
        Check falls = StockChecks.thicknessMeasured(
                "", label, Optional.of(Length.ofMillimetres(17)), Surface.UNSANDED, MeasureStyle.MILLIMETRES);

        assertThat(holds.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(holds.name()).isEqualTo("Thickness measured");
        assertThat(falls.result())
                .isEqualTo("A caliper says 17 mm, sold as 18 mm. Wanted: 17.1 mm to 19.3 mm. Short by 0.1 mm.");
    }

    /** PS 1-19: a 48 in sheet may be 47 15/16 in; 1/4 in trimmed off both edges leaves 47 7/16 in for sure. */
    @Test
    void fullWidthPart_shortestSheet_decides() {
        Length sheet = Length.ofInches(48);
        Length trims = Length.ofSixtyFourths(32);

        assertThat(StockChecks.fullWidthPart("Lid", Length.ofInches(47.4375), sheet, trims, INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check check = StockChecks.fullWidthPart("Lid", Length.ofInches(47.5), sheet, trims, INCHES);
        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.margin()).isEqualTo("over by 1/16 in");
        assertThat(check.advice()).isEqualTo("Measure this sheet, or make the part 47 7/16 in.");
    }

    /** Geometry: four of 24 in do not come out of 96 with a 1/8 kerf; of 23 7/8 they do. */
    @Test
    void equalPieces_fourQuarters_kerfEatsTheLast() {
        Check check = equal(4, Length.ofInches(24));

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result())
                .contains("take 96 3/8 in; 3 come out of 96 in")
                .contains("Over by 3/8 in");
        assertThat(check.advice()).isEqualTo("At 23 29/32 in each, 4 come out.");
        assertThat(equal(4, Length.ofInches(23.90625)).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** The potting bench's kerf trap: 2 x 72 + 1/8 is more than a 12 ft board; 71 7/8 fits. */
    @Test
    void equalPieces_pottingBench_isTheKerfTrap() {
        Length twelveFeet = Length.ofInches(144);
        Length kerf = Length.ofSixtyFourths(8);
        Check trap = StockChecks.equalPieces("Deck", 2, Length.ofInches(72), twelveFeet, kerf, INCHES);

        assertThat(trap.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(trap.result()).contains("The kerf eats the last one.");
        assertThat(StockChecks.equalPieces("Deck", 2, Length.ofInches(71.875), twelveFeet, kerf, INCHES)
                        .margin())
                .isEqualTo("1/8 in to spare");
    }

    /** Second derivation: pieces cut off one after the other, a kerf lost each time another follows. */
    @Test
    void equalPieces_random_agreesWithCutting() {
        long seed = 96;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 2_000; i++) {
            Length stock = new Length(random.nextLong(500_000_000L, 4_000_000_000L));
            Length piece = new Length(random.nextLong(50_000_000L, 900_000_000L));
            Length kerf = new Length(random.nextLong(0, 4_000_000L));
            int cut = 0;
            Length rest = stock;
            while (!rest.isShorterThan(piece)) {
                rest = rest.minus(piece, kerf);
                cut++;
            }
            int wanted = random.nextInt(1, 12);
            Check check = StockChecks.equalPieces("", wanted, piece, stock, kerf, INCHES);

            assertThat(check.verdict())
                    .as(
                            "seed %d, case %d: %d of %s from %s, kerf %s, %d come",
                            seed, i, wanted, piece, stock, kerf, cut)
                    .isEqualTo(cut >= wanted ? Verdict.HOLDS : Verdict.SHORT);
        }
    }

    private static Check equal(int wanted, Length piece) {
        return StockChecks.equalPieces("", wanted, piece, Length.ofInches(96), Length.ofSixtyFourths(8), INCHES);
    }

    private static Check thickness(Optional<Length> measured) {
        return StockChecks.thicknessMeasured("exterior plywood", THREE_QUARTERS, measured, Surface.UNSANDED, INCHES);
    }
}
