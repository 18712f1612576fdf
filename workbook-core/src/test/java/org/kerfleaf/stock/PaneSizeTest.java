package org.kerfleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.TemperatureChange;

class PaneSizeTest {
    private static final TemperatureChange SIXTY_F = new TemperatureChange(60 / 1.8);
    private static final Expansion ACRYLIC = Expansion.ofPerFahrenheit(4.0e-5);
    private static final Ratio DAMP = Ratio.of(0.003);

    /** Sheet makers' movement tables (seen in copies): 48 in over 100 °F, 24, 36 over 120, polycarbonate, and in millimetres. */
    @ParameterizedTest
    @CsvSource({
        "48, 4.0e-5, 100, 0.1920",
        "24, 4.0e-5, 100, 0.0960",
        "36, 4.0e-5, 120, 0.1728",
        "24, 3.8e-5, 100, 0.0912"
    })
    void over_change_isTheMakersMovement(double inches, double perFahrenheit, double fahrenheit, double moves) {
        Ratio share = Expansion.ofPerFahrenheit(perFahrenheit).over(new TemperatureChange(fahrenheit / 1.8));

        assertThat(inches * share.value()).isCloseTo(moves, within(1e-4));
    }

    @Test
    void over_metric_isTheMakersMovement() {
        assertThat(1000
                        * Expansion.ofPerKelvin(65e-6)
                                .over(new TemperatureChange(60))
                                .value())
                .isCloseTo(3.9, within(1e-9));
        assertThat(600
                        * Expansion.ofPerKelvin(72e-6)
                                .over(new TemperatureChange(50))
                                .value())
                .isCloseTo(2.160, within(1e-3));
    }

    /** Opening 24 in, pockets 1/2 in, ± 60 °F (worked outside the program): 24.9401, cut 24 15/16, cold bite 0.4388. */
    @Test
    void cut_worked_isRoundedDownAndStillHeld() {
        Length pocket = Length.ofInches(25);

        assertThat(PaneSize.largest(pocket, ACRYLIC, SIXTY_F, PaneSize.DRY)
                        .value()
                        .inInches())
                .isCloseTo(24.9401, within(1e-4));
        Length cut = cut(25, PaneSize.DRY);
        assertThat(cut).isEqualTo(Length.ofInches(24.9375));
        assertThat(bite(cut, 24)).isCloseTo(0.4388, within(1e-4));
    }

    /** The seed-swap cabinet's pane: pocket 14 x 16, opening 13 x 15. */
    @Test
    void cut_seedSwapCabinet_isThirteenFifteenSixteenths() {
        assertThat(cut(14, PaneSize.DRY)).isEqualTo(Length.ofInches(13.9375));
        assertThat(cut(16, PaneSize.DRY)).isEqualTo(Length.ofInches(15.9375));
        assertThat(bite(Length.ofInches(13.9375), 13)).isCloseTo(0.4520, within(5e-5));
        assertThat(bite(Length.ofInches(15.9375), 15)).isCloseTo(0.4496, within(5e-5));
    }

    /** The cold frame's pane, dry: pocket 44 x 28.0483, opening 43 x 27.0483. */
    @Test
    void cut_coldFrame_isHeldWhenCold() {
        assertThat(cut(44, PaneSize.DRY)).isEqualTo(Length.ofInches(43.875));
        assertThat(cut(28.0483, PaneSize.DRY)).isEqualTo(Length.ofInches(27.96875));
        assertThat(bite(Length.ofInches(43.875), 43)).isCloseTo(0.385, within(5e-4));
        assertThat(bite(Length.ofInches(27.96875), 27.0483)).isCloseTo(0.427, within(5e-4));
    }

    /** The cold frame's pane in damp air: 43.764 exact, cut 43 3/4, bite 0.322. */
    @Test
    void cut_coldFrameDamp_bitesLess() {
        assertThat(PaneSize.largest(Length.ofInches(44), ACRYLIC, SIXTY_F, DAMP)
                        .value()
                        .inInches())
                .isCloseTo(43.764, within(5e-4));
        assertThat(cut(44, DAMP)).isEqualTo(Length.ofInches(43.75));
        assertThat(bite(Length.ofInches(43.75), 43)).isCloseTo(0.3225, within(5e-4));
    }

    @Test
    void cut_reason_holdsTheExactSize() {
        assertThat(PaneSize.cut(Length.ofInches(14), ACRYLIC, SIXTY_F, PaneSize.DRY, MeasureStyle.INCHES)
                        .reason()
                        .in(MeasureStyle.INCHES))
                .contains("pocket 14 in", "exact 13 31/32", "warmer 60 °F", "expansion 4/100000 for each °F");
    }

    /** Second derivation: grow the pane again; it must fit its pocket, and one more step must not. */
    @Test
    void cut_random_fitsWhenHotAndDampAndNoStepMoreDoes() {
        long seed = 20260412;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 2_000; i++) {
            MeasureStyle style = random.nextBoolean() ? MeasureStyle.INCHES : MeasureStyle.MILLIMETRES;
            Length pocket = new Length(random.nextLong(50_000_000L, 3_000_000_000L));
            Expansion expansion = Expansion.ofPerKelvin(random.nextDouble(0, 1e-4));
            TemperatureChange warmer = new TemperatureChange(random.nextDouble(0, 60));
            Ratio damp = Ratio.of(random.nextDouble(0, 0.006));

            Length cut = PaneSize.cut(pocket, expansion, warmer, damp, style).value();
            double grown = 1 + expansion.perKelvin() * warmer.kelvin() + damp.value();

            assertThat(cut.inMillimetres() * grown)
                    .as("seed %d, case %d: %s in a pocket of %s", seed, i, cut, pocket)
                    .isLessThanOrEqualTo(pocket.inMillimetres() + 1e-6);
            assertThat(cut.plus(style.step()).inMillimetres() * grown)
                    .as("seed %d, case %d: one step more than %s in %s", seed, i, cut, pocket)
                    .isGreaterThan(pocket.inMillimetres() - 2e-6);
        }
    }

    @Test
    void named_words_findTheKind() {
        assertThat(GlazingKind.named("acrylic")).contains(GlazingKind.ACRYLIC);
        assertThat(GlazingKind.named("Extruded acrylic, clear")).contains(GlazingKind.EXTRUDED_ACRYLIC);
        assertThat(GlazingKind.named("polycarbonate")).contains(GlazingKind.POLYCARBONATE);
        assertThat(GlazingKind.named("toughened glass")).contains(GlazingKind.TEMPERED_GLASS);
        assertThat(GlazingKind.named("window glass")).contains(GlazingKind.GLASS);
        assertThat(GlazingKind.named("exterior plywood")).isEmpty();
        assertThat(GlazingKind.named("fibreglass")).isEmpty();
    }

    @Test
    void swelling_polycarbonate_isNotKnown() {
        assertThat(GlazingKind.POLYCARBONATE.swelling()).isEmpty();
        assertThat(GlazingKind.ACRYLIC.swelling().orElseThrow().value()).isEqualTo(DAMP);
    }

    private static Length cut(double pocket, Ratio damp) {
        return PaneSize.cut(Length.ofInches(pocket), ACRYLIC, SIXTY_F, damp, MeasureStyle.INCHES)
                .value();
    }

    private static double bite(Length cut, double opening) {
        return PaneSize.coldBite(cut, Length.ofInches(opening), ACRYLIC, SIXTY_F)
                .value()
                .inInches();
    }
}
