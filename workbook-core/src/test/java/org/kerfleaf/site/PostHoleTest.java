package org.kerfleaf.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Volume;

class PostHoleTest {
    /** The seed-swap cabinet: hole 10 in round, 44 in deep, gravel 4 in (worked outside the program). */
    @Test
    void volume_seedSwapCabinet_isTwoCubicFeet() {
        Length ten = Length.ofInches(10);

        assertThat(PostHole.volume(ten, Length.ofInches(44)).value().inCubicFeet())
                .isCloseTo(2.0, within(5e-4));
        assertThat(PostHole.volume(ten, Length.ofInches(4)).value().inCubicFeet())
                .isCloseTo(0.1818, within(5e-5));
        assertThat(PostHole.inGround(Length.ofInches(44), Length.ofInches(4)).value())
                .isEqualTo(Length.ofInches(40));
    }

    /** Its heights: post top 32, seat 33 1/2, and the knob, 2 in and half a 20 in door above that, at 45 1/2. */
    @Test
    void above_seedSwapCabinet_endsAtTheKnob() {
        Length top = PostHole.postTop(Length.ofInches(72), Length.ofInches(40)).value();
        Length box =
                PostHole.above("post top", top, "seat", Length.ofInches(1.5)).value();
        Length knob = PostHole.above("box's underside", box, "knob in the box", Length.ofInches(12))
                .value();

        assertThat(top).isEqualTo(Length.ofInches(32));
        assertThat(box).isEqualTo(Length.ofInches(33.5));
        assertThat(knob).isEqualTo(Length.ofInches(45.5));
    }

    @Test
    void spoil_hole_isAQuarterMore() {
        assertThat(PostHole.spoil(Volume.ofLitres(40)).value()).isEqualTo(Volume.ofLitres(50));
    }

    /** Bag makers' data sheets (seen in a copy): cubic feet from a bag. */
    @ParameterizedTest
    @CsvSource({"40, 0.300", "50, 0.375", "60, 0.450", "80, 0.600", "90, 0.675"})
    void makes_bag_isTheMakers(double pounds, double cubicFeet) {
        assertThat(Concrete.makes(Mass.ofPounds(pounds)).value().inCubicFeet()).isCloseTo(cubicFeet, within(1e-9));
    }

    /** Geometry: hole, 3 1/2 in post over the full depth, nothing wasted; bags of 60, 80 and 50 lb. */
    @ParameterizedTest
    @CsvSource({"8, 24, 0.5280, 2, 1, 2", "10, 36, 1.3810, 4, 3, 4", "12, 36, 2.1010, 5, 4, 6"})
    void bags_aroundAPost_areCounted(double across, double deep, double net, int sixty, int eighty, int fifty) {
        Area post = Length.ofInches(3.5).by(Length.ofInches(3.5));
        Volume concrete = Concrete.around(post, Length.ofInches(across), Length.ofInches(deep))
                .value();

        assertThat(concrete.inCubicFeet()).isCloseTo(net, within(1e-4));
        assertThat(Concrete.bags(concrete, Mass.ofPounds(60)).value()).isEqualTo(sixty);
        assertThat(Concrete.bags(concrete, Mass.ofPounds(80)).value()).isEqualTo(eighty);
        assertThat(Concrete.bags(concrete, Mass.ofPounds(50)).value()).isEqualTo(fifty);
    }
}
