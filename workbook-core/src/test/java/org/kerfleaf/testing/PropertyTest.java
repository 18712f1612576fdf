package org.kerfleaf.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;

class PropertyTest {
    @Test
    void forAll_sameSeed_drawsTheSameCases() {
        assertThat(drawn(5)).hasSize(20).isEqualTo(drawn(5)).isNotEqualTo(drawn(6));
    }

    @Test
    void forAll_brokenPromise_saysSeedNumberAndCase() {
        List<Long> seen = new ArrayList<>();
        assertThatThrownBy(() -> Property.forAll(5, 20, random -> random.nextLong(100), number -> {
                    seen.add(number);
                    assertThat(seen).as("so far").hasSizeLessThan(3);
                }))
                .isInstanceOf(AssertionError.class)
                .hasMessageStartingWith("Seed 5, case 3 of 20: " + drawn(5).get(2))
                .hasMessageContaining("so far");
    }

    @Test
    void forAll_noCases_isRefused() {
        assertThatThrownBy(() -> Property.forAll(1, 0, random -> 1, number -> {}))
                .hasMessageContaining("Cases (0)");
    }

    @Test
    void sixtyFourths_narrowRange_staysInsideAndReachesBothEnds() {
        Length least = Length.ofSixtyFourths(-3);
        Length most = Length.ofSixtyFourths(2).plus(new Length(1));
        List<Length> seen = new ArrayList<>();
        Property.forAll(1, 200, random -> Draw.sixtyFourths(random, least, most), seen::add);
        assertThat(seen)
                .allMatch(length -> length.compareTo(least) >= 0 && length.compareTo(most) <= 0)
                .contains(Length.ofSixtyFourths(-3), Length.ofSixtyFourths(2));
    }

    private static List<Long> drawn(long seed) {
        List<Long> cases = new ArrayList<>();
        Property.forAll(seed, 20, random -> random.nextLong(100), cases::add);
        return cases;
    }
}
