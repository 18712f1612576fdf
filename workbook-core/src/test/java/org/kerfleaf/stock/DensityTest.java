package org.kerfleaf.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Volume;

class DensityTest {
    /** APA panel weights, 3.0 lb/ft2 for each inch (seen in a copy); a 4 x 8 ft sheet. */
    @ParameterizedTest
    @CsvSource({"16, 24.0", "24, 36.0", "32, 48.0", "40, 60.0", "46, 69.0", "48, 72.0"})
    void named_plywood_weighsAsTheTable(long sixtyFourths, double pounds) {
        Volume sheet = Length.ofInches(48).by(Length.ofInches(96)).by(Length.ofSixtyFourths(sixtyFourths));

        assertThat(named("exterior plywood").of(sheet).inPounds()).isCloseTo(pounds, within(0.05));
    }

    /** Wood Handbook chapter 4: G 0.40 at 12 % is 28.0 lb/ft3 or 448 kg/m3. */
    @ParameterizedTest
    @CsvSource({
        "western redcedar 1x8, 22.4, 358",
        "Ponderosa pine, 28.0, 448",
        "western hemlock, 31.4, 504",
        "Western Larch, 36.3, 582",
        "white oak, 47.5, 762"
    })
    void named_species_isDensityAtTwelvePerCent(String stock, double pounds, double kilograms) {
        assertThat(named(stock).inPoundsPerCubicFoot()).isCloseTo(pounds, within(0.1));
        assertThat(named(stock).kilogramsPerCubicMetre()).isCloseTo(kilograms, within(1.0));
    }

    @Test
    void named_hyphens_areWordGaps() {
        assertThat(named("Douglas-fir 2x4")).isEqualTo(named("douglas fir"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2x4",
                "4x4 treated",
                "cedar",
                "redwood",
                "birch plywood",
                "marine plywood",
                "steel ridge angle",
                "pineapple"
            })
    void named_nothingInTheTables_isEmpty(String stock) {
        assertThat(Density.named(stock)).isEmpty();
    }

    /** The cold frame's pane: 43 7/8 x 27 31/32 x 1/8 in of acrylic at 1.19 g/cm3 is 6.59 lb (worked outside the program). */
    @Test
    void named_acrylic_weighsTheColdFramesPane() {
        Volume pane = Length.ofInches(43.875).by(Length.ofInches(27.96875)).by(Length.ofInches(0.125));

        assertThat(named("acrylic").of(pane).inPounds()).isCloseTo(6.59, within(0.005));
    }

    /** The cold frame's lid: 281.43 in3 at 28 lb/ft3 is 4.56 lb (worked outside the program). */
    @Test
    void of_densitySaidOutright_weighsTheColdFramesLid() {
        Volume frame = Length.ofInches(281.43).by(Length.ofInches(1)).by(Length.ofInches(1));

        assertThat(Density.ofPoundsPerCubicFoot(28).of(frame).inPounds()).isCloseTo(4.56, within(0.005));
    }

    @Test
    void in_style_usesThatUnitsHabit() {
        assertThat(Density.ofPoundsPerCubicFoot(36).in(MeasureStyle.INCHES)).isEqualTo("36.0 lb/ft³");
        assertThat(Density.ofPoundsPerCubicFoot(36).in(MeasureStyle.MILLIMETRES))
                .isEqualTo("577 kg/m³");
    }

    @Test
    void new_nothing_isRefused() {
        assertThatThrownBy(() -> new Density(0)).hasMessageContaining("0.0 kg/m³");
    }

    private static Density named(String stock) {
        return Density.named(stock).orElseThrow().value();
    }
}
