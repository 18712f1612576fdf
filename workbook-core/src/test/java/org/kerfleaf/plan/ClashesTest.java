package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.sketch.Side.BACK;
import static org.kerfleaf.sketch.Side.BOTTOM;
import static org.kerfleaf.sketch.Side.LEFT;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.sketch.Part;

/** Gaps and clashes are said to 1/64 in or 0.5 mm, and never as nothing. */
class ClashesTest {
    @ParameterizedTest
    @CsvSource({
        // printed in inches to that fraction: as it is, to the nearest 1/64, too small for a tape
        "1/64 in,  8,  1/64 in",
        "1/64 in,  32, 1/64 in",
        "0.4 mm,   32, 1/64 in",
        "0.6 mm,   32, 1/32 in light",
        "0.3 mm,   8,  1/64 in",
        "0.1 mm,   32, under 1/64 in",
        "3 mm,     16, 1/8 in light",
    })
    void distance_inches_isToThe64th(String distance, int finest, String printed) {
        MeasureStyle style = new MeasureStyle(LengthUnit.INCHES, finest);
        assertThat(Clashes.distance(Length.parse(distance), style)).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5 mm,  1, 0.5 mm",
        "0.4 mm,  1, 0.5 mm",
        "0.1 mm,  2, under 0.5 mm",
        "1/64 in, 2, 0.5 mm",
        "12 mm,   1, 12 mm",
    })
    void distance_millimetres_isToTheHalf(String distance, int finest, String printed) {
        MeasureStyle style = new MeasureStyle(LengthUnit.MILLIMETRES, finest);
        assertThat(Clashes.distance(Length.parse(distance), style)).isEqualTo(printed);
    }

    /** A floor, and a shelf that stands this far above it and is fastened to it. */
    private static void apart(Bench bench, String gap) {
        Part floor = bench.keep(panel("Floor", bench.ply()).wide("20 in").deep("10 in"));
        Part side = bench.keep(panel("Side", bench.ply()).deep("10 in").high("20 in"));
        var floorIn = bench.keep(place(floor));
        var sideIn = bench.keep(place(side).above(floorIn, gap));
        bench.keep(fasten(sideIn).to(floorIn));
    }

    @Test
    void apart_byASixtyFourth_saysSo() {
        assertThat(Bench.problems(b -> apart(b, "1/64 in")))
                .containsExactly("Side and Floor are fastened but do not touch: 1/64 in apart, up and down.");
    }

    @Test
    void apart_plannedInMillimetres_isSaidInMillimetres() {
        assertThat(inMillimetres(b -> apart(b, "1/64 in")))
                .containsExactly("Side and Floor are fastened but do not touch: 0.5 mm apart, up and down.");
    }

    @Test
    void apart_byLessThanATapeReads_isNotNothing() {
        assertThat(Bench.problems(b -> apart(b, "0.1 mm")))
                .containsExactly("Side and Floor are fastened but do not touch: under 1/64 in apart, up and down.");
    }

    /** A back behind a floor and flush with it at the back, which cannot both be. */
    private static void disagreeing(Bench bench) {
        Part floor = bench.keep(panel("Floor", bench.ply()).wide("20 in").deep("10 in"));
        Part back = bench.keep(panel("Back", bench.ply()).wide("20 in").high("10 in"));
        var floorIn = bench.keep(place(floor));
        bench.keep(place(back).behind(floorIn).flushAt(BACK));
    }

    @Test
    void wordsThatDisagree_plannedInMillimetres_sayByHowManyMillimetres() {
        assertThat(inMillimetres(ClashesTest::disagreeing))
                .containsExactly("Back: “behind” and “flush at back” disagree by 19 mm front to back.");
    }

    @Test
    void clash_ofASixtyFourth_isSaidToTheSixtyFourth() {
        Plan plan = Bench.plan(b -> {
            Part floor = b.keep(panel("Floor", b.ply()).wide("20 in").deep("10 in"));
            Part side = b.keep(panel("Side", b.ply()).deep("10 in").high("20 in"));
            Part shelf = b.keep(panel("Shelf", b.ply()).wide("20 1/64 in").deep("10 in"));
            var floorIn = b.keep(place(floor));
            var sidesIn = b.keep(place(side).leftAndRightOf(floorIn).flushAt(BOTTOM));
            b.keep(place(shelf).above(floorIn, "6 in").flushAt(LEFT));
        });
        var check = plan.check("One place, one part").orElseThrow();
        assertThat(check.result()).contains("1/64 ");
        assertThat(check.margin()).isEqualTo("1/64 in too much");
        assertThat(check.advice()).startsWith("One of them 1/64 in smaller");
    }

    private static List<String> inMillimetres(Consumer<Bench> said) {
        return Planner.plan(Bench.sketch(said), Bench.DAY, LengthUnit.MILLIMETRES).problems().stream()
                .map(p -> p.words())
                .toList();
    }
}
