package org.kerfleaf.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.testing.Property;

class ScrewChoiceTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;

    private static WoodScrew screw(int gauge, String length) {
        return new WoodScrew(gauge, Length.parse(length));
    }

    private static ScrewChoice.Contact contact(String through, String wood, String edge) {
        return new ScrewChoice.Contact(Length.parse(through), Length.parse(wood), Length.parse(edge));
    }

    private static ScrewChoice choose(ScrewChoice.Contact contact, WoodScrew... drawer) {
        return ScrewChoice.among(List.of(drawer), List.of(contact), "Side to Floor", INCHES);
    }

    /** Into the edge of 23/32 ply, as in the cold frame: 6 D of No. 6 are 0.828 in; No. 8 wants 0.41 in to the edge, 0.359 are there. */
    @Test
    void intoASheetsEdge_theLongestNumberSix() {
        ScrewChoice choice = choose(
                contact("23/32 in", "20 in", "23/64 in"),
                screw(6, "1 1/4 in"),
                screw(6, "1 5/8 in"),
                screw(6, "2 in"),
                screw(8, "2 in"));
        assertThat(choice.chosen()).isEqualTo(screw(6, "2 in"));
        assertThat(choice.refused().stream().map(r -> r.screw().words(INCHES) + ": " + r.because()))
                .containsExactly(
                        "No. 6 x 1 1/4 in: reaches 19/32 in; 6 D are 53/64 in",
                        "No. 6 x 1 5/8 in: it would do; the longer one holds more",
                        "No. 8 x 2 in: 23/64 in from the edge; 2.5 D are 13/32 in");
    }

    @Test
    void intoAThinPart_noTipComesWithin1_16() {
        ScrewChoice choice = choose(contact("3/4 in", "3/4 in", "1 in"), screw(6, "1 5/8 in"), screw(4, "1 1/4 in"));
        assertThat(choice.suits()).isFalse();
        assertThat(choice.chosen())
                .as("both break one rule; this one is thinner")
                .isEqualTo(screw(4, "1 1/4 in"));
        assertThat(choice.refused())
                .extracting(ScrewChoice.Refused::because)
                .containsExactly("goes 15/16 in into 3/4 in of wood", "reaches 9/16 in; 6 D are 43/64 in");
        // 6 D of No. 4 are 0.672 in; 11/16 in are free: no length sold is 1 11/32 to 1 3/8 in long.
        assertThat(choice.wouldSuit()).isEmpty();
    }

    @Test
    void noneInTheDrawer_saysWhichWould() {
        assertThat(choose(contact("3/4 in", "3 1/2 in", "3/4 in"), screw(8, "1 in"))
                        .wouldSuit())
                .as("6 D of No. 8 are 0.984 in; with 11/16 in of the first part 1.67 in")
                .contains(screw(8, "1 3/4 in"));
    }

    /** Whatever is chosen keeps the three rules, and nothing longer in the drawer does: said a second time in plain inches. */
    @Test
    void anyDrawer_theChosenIsTheLongestThatKeepsTheRules() {
        Property.forAll(
                11,
                200,
                draw -> List.of(
                        0.25 + draw.nextDouble() * 1.5, 0.5 + draw.nextDouble() * 3, 0.2 + draw.nextDouble() * 0.5),
                sizes -> {
                    List<WoodScrew> drawer = ScrewLengths.all(INCHES.unit());
                    ScrewChoice choice = ScrewChoice.among(
                            drawer,
                            List.of(new ScrewChoice.Contact(
                                    Length.ofInches(sizes.get(0)),
                                    Length.ofInches(sizes.get(1)),
                                    Length.ofInches(sizes.get(2)))),
                            "",
                            INCHES);
                    Stream<WoodScrew> suit = drawer.stream().filter(s -> {
                        double d = 0.060 + 0.013 * s.gauge();
                        double reach = s.length().inInches() - sizes.get(0) + 1 / 16.0;
                        return reach >= 6 * d - 1e-7
                                && reach <= sizes.get(1) - 1 / 16.0 + 1e-7
                                && sizes.get(2) >= 2.5 * d - 1e-7;
                    });
                    assertThat(Optional.of(choice.chosen())
                                    .filter(s -> choice.suits())
                                    .map(s -> s.length().inInches()))
                            .isEqualTo(suit.map(s -> s.length().inInches()).max(Double::compare));
                });
    }
}
