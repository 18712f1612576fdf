package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.shape.OutlineEdge;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.SketchException;
import org.kerfleaf.testing.Draw;

/** A brace turned to where it stands: one end lies against an upright post, the other under something level. */
class BraceTest {
    private static Sketch sketch(Length far, Length low) {
        return Bench.sketch(bench -> {
            Lumber two4 = bench.keep(lumber("2x4").lengths("16 ft"));
            bench.keep(board("Brace", two4).brace(out(far), down(low)).times(2));
        });
    }

    /** Second derivation: the sawn outline itself, turned by hand, meets post and underside flat, and reaches as far as was said. */
    @Test
    void brace_anySize_fitsPostAndUnderside() {
        forAll(
                61,
                60,
                random -> List.of(
                        Draw.length(random, Length.ofInches(9L), Length.ofInches(40L)),
                        Draw.length(random, Length.ofInches(9L), Length.ofInches(40L))),
                said -> {
                    Length far = said.get(0);
                    Length low = said.get(1);
                    Sketch sketch = sketch(far, low);
                    SizedPart brace = new Sizing(sketch, MeasureStyle.INCHES, new Problems())
                            .of("Brace")
                            .orElseThrow();
                    double long1 = Math.hypot(far.inMillimetres(), low.inMillimetres());
                    double cos = far.inMillimetres() / long1;
                    double sin = low.inMillimetres() / long1;

                    OutlineEdge post = brace.solid().outline().edge("LEFT");
                    OutlineEdge under = brace.solid().outline().edge("RIGHT");
                    assertThat(right(post.from(), cos, sin)).isCloseTo(0, within(1e-4));
                    assertThat(right(post.to(), cos, sin)).isCloseTo(0, within(1e-4));
                    assertThat(up(under.from(), cos, sin)).isCloseTo(low.inMillimetres(), within(1e-4));
                    assertThat(up(under.to(), cos, sin)).isCloseTo(low.inMillimetres(), within(1e-4));
                });
    }

    private static double right(OutlineEdge.Point at, double cos, double sin) {
        return at.u().inMillimetres() * cos - at.v().inMillimetres() * sin;
    }

    private static double up(OutlineEdge.Point at, double cos, double sin) {
        return at.u().inMillimetres() * sin + at.v().inMillimetres() * cos;
    }

    @Test
    void brace_bothEnds_addUpToARightAngle() {
        Plan plan = Planner.plan(sketch(Length.ofInches(10L), Length.ofInches(14L)), Bench.DAY);

        double sum = plan.sawSettings().stream()
                .filter(s -> s.scale().isPresent())
                .mapToDouble(s -> s.scale().get().value().inDegrees())
                .sum();

        assertThat(sum).isCloseTo(90, within(1e-8));
        assertThat(plan.sawSettings()).extracting(SawSetting::saw).containsOnly("mitre saw");
    }

    @Test
    void words_beyondWhatASawCanDo_areRefused() {
        Bench.sketch(bench -> {
            assertThatThrownBy(() -> corner("180 deg"))
                    .isInstanceOf(SketchException.class)
                    .hasMessage("A corner of 180 deg: more than 0 and less than 180 deg would be right.");
            assertThatThrownBy(() -> peak("30 deg", "90 deg")).hasMessageContaining("A slope of 90 deg");
            assertThatThrownBy(() -> peak("30 deg", "40 deg").leaning("10 deg")).hasMessageContaining("corner(...)");
            assertThatThrownBy(() -> tableSaw().baseToBlade(org.kerfleaf.sketch.Side.LEFT, "1 in"))
                    .hasMessage("A table saw has a fence and no base. Leave baseToBlade out.");
            assertThatThrownBy(() -> router().bite("0 in")).hasMessageContaining("More than nothing would be right");
        });
    }
}
