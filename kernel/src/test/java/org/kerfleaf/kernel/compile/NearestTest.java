package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KNOWN =
            List.of("Length", "length", "pane", "panel", "wide", "width", "depth", "t");

    @ParameterizedTest
    @CsvSource({"lenght, length", "Lenght, Length", "panle, panel", "widht, width", "Width, width", "wid, wide", "ty, t"
    })
    void to_slipOfTheFinger_findsTheWord(String word, String meant) {
        assertThat(Nearest.to(word, KNOWN)).contains(meant);
    }

    @Test
    void to_somethingElse_findsNothing() {
        assertThat(Nearest.to("hinges", KNOWN)).isEmpty();
        assertThat(Nearest.to("x", KNOWN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"abc, abc, 0", "abc, acb, 1", "abc, abcd, 1", "abc, axc, 1", "abc, ABC, 1", "abc, xyz, 3"})
    void distance_lettersAddedLeftOutChangedOrSwapped_countOne(String one, String other, int distance) {
        assertThat(Nearest.distance(one, other)).isEqualTo(distance);
        assertThat(Nearest.distance(other, one)).isEqualTo(distance);
    }
}
