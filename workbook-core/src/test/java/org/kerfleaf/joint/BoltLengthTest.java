package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;

class BoltLengthTest {
    private static final Length THREE_EIGHTHS = Length.ofSixtyFourths(24);
    private static final Length TWO_BY = Length.ofSixtyFourths(96);
    private static final Length FOUR_BY = Length.ofSixtyFourths(224);

    /** The seed-swap cabinet's arm, post and arm: 7.125 in, so a 7 1/2 in bolt. */
    @Test
    void sold_armPostArm_isSevenAndAHalf() {
        List<Length> stack = List.of(TWO_BY, FOUR_BY, TWO_BY);

        assertThat(BoltLength.least(stack, THREE_EIGHTHS).value()).isEqualTo(Length.ofInches(7.125));
        assertThat(BoltLength.sold(stack, THREE_EIGHTHS).value()).isEqualTo(Length.ofInches(7.5));
    }

    /** The potting bench's legs: 1 1/2 + 3 1/2 + washers + nut, so 6 in. */
    @Test
    void sold_railAndLeg_isSix() {
        assertThat(BoltLength.sold(List.of(TWO_BY, FOUR_BY), THREE_EIGHTHS).value())
                .isEqualTo(Length.ofInches(6));
    }

    @Test
    void sold_lengthJustSold_isNotRoundedFurther() {
        List<Length> stack = List.of(Length.ofInches(2.375));

        assertThat(BoltLength.sold(stack, THREE_EIGHTHS).value()).isEqualTo(Length.ofInches(3));
    }

    /** M10: nut 10, two threads of 1.5, washers 2 x 1.5875 mm. */
    @Test
    void least_metric_usesMetricThreads() {
        List<Length> stack = List.of(Length.ofMillimetres(45), Length.ofMillimetres(90));

        assertThat(BoltLength.least(stack, Length.ofMillimetres(10)).value()).isEqualTo(Length.ofMillimetres(151.175));
        assertThat(BoltLength.sold(stack, Length.ofMillimetres(10)).value()).isEqualTo(Length.ofMillimetres(160));
    }

    @Test
    void sold_diameterNobodyMakes_isRefused() {
        assertThatThrownBy(() -> BoltLength.sold(List.of(TWO_BY), Length.ofMillimetres(9.3)))
                .hasMessageContaining("9.3 mm", "3/8");
    }
}
