package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class RichTest {
    private static final Style TEN = new Style(Face.LABEL, 10, Ink.BLACK);
    private static final double S = TEN.size();

    private static List<Piece> pieces(Rich text) {
        return text.words().stream().flatMap(word -> word.pieces().stream()).toList();
    }

    @Test
    void of_lengthWithFraction_raisesNumeratorAndLowersDenominator() {
        List<Piece> pieces = pieces(Rich.of(Length.ofSixtyFourths(104), MeasureStyle.INCHES, TEN));
        assertThat(pieces).extracting(Piece::text).containsExactly("1 ", "5", "⁄", "8");
        assertThat(pieces).extracting(Piece::size).containsExactly(S, 0.64 * S, 0.8 * S, 0.64 * S);
        assertThat(pieces).extracting(Piece::rise).containsExactly(0.0, 0.30 * S, 0.0, -0.06 * S);
    }

    @Test
    void of_lengthWithFraction_leavesAGapBeforeTheNumerator() {
        List<Piece> pieces = pieces(Rich.of(Length.ofSixtyFourths(104), MeasureStyle.INCHES, TEN));
        double afterWhole = Face.LABEL.advance("1") * S;
        assertThat(pieces.get(1).x() - afterWhole).isCloseTo(0.16 * S, within(1e-9));
    }

    @Test
    void of_wholeInches_hasNoFraction() {
        assertThat(Rich.of(Length.ofInches(19), MeasureStyle.INCHES, TEN)).hasToString("19");
    }

    @Test
    void of_heavyLength_saysSo() {
        assertThat(Rich.of(Length.ofInches(24.41497), MeasureStyle.INCHES, TEN)).hasToString("24 13⁄32 heavy");
        assertThat(Rich.nearest(Length.ofInches(24.41497), MeasureStyle.INCHES, TEN))
                .hasToString("24 13⁄32");
    }

    @Test
    void of_sentence_buildsItsFractions() {
        assertThat(pieces(Rich.of("a No. 6 x 1 5/8 in screw, ½ in", TEN)))
                .extracting(Piece::text)
                .containsExactly("a", "No. 6", "x", "1 ", "5", "⁄", "8", " in", "screw,", "1", "⁄", "2", " in");
    }

    @Test
    void of_dateOrRatio_isNoFraction() {
        assertThat(pieces(Rich.of("12/04/2026 and/or 24/7", TEN)))
                .extracting(Piece::text)
                .doesNotContain("⁄");
    }

    @Test
    void of_signsTheFacesLack_drawsThem() {
        Rich text = Rich.of("≤ ≥ → ✓ ☐", TEN);
        assertThat(pieces(text)).allMatch(piece -> piece.sign().isPresent());
        assertThat(text.width()).isGreaterThan(4 * S * 0.5);
    }

    @Test
    void of_diameterSign_becomesALetterThatIsThere() {
        assertThat(Rich.of("⌀ 10", TEN)).hasToString("Ø 10");
    }

    @Test
    void plus_spaceAtTheEnd_partsTheWords() {
        assertThat(Rich.of("deep ", TEN).plus("22", TEN).width())
                .isCloseTo(Rich.of("deep 22", TEN).width(), within(1e-9));
        assertThat(Rich.of("deep", TEN).plus("22", TEN).words()).hasSize(1);
    }

    @Test
    void wrap_randomText_isNeverWiderAndLosesNoLetter() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20260420);
        for (int i = 0; i < 300; i++) {
            StringBuilder words = new StringBuilder();
            int count = random.nextInt(1, 30);
            for (int k = 0; k < count; k++) {
                words.append("abcdefghijklmnopqrstuvwxyz", 0, random.nextInt(1, 26))
                        .append(random.nextInt(9) == 0 ? " 3 5/32 in " : " ");
            }
            double width = random.nextDouble(12, 80);
            Rich text = Rich.of(words.toString(), TEN);
            StringBuilder back = new StringBuilder();
            for (Line line : text.wrap(width)) {
                assertThat(line.width())
                        .as("seed 20260420, case %d: %s", i, words)
                        .isLessThanOrEqualTo(width + 1e-6);
                back.append(line);
            }
            assertThat(back.toString().replace(" ", ""))
                    .isEqualTo(words.toString().replace(" ", "").replace('/', '⁄'));
        }
    }
}
