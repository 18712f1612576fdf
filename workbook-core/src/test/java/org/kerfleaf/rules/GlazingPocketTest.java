package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;

/** The rabbet's depth against what lies in it, and its corners against the pane's. */
class GlazingPocketTest {
    private static Length in(String text) {
        return Length.parse(text);
    }

    private static Check depth(String deep, Optional<Length> fills, Optional<Length> bead) {
        return GlazingChecks.rabbetDepth("Pane", in(deep), fills, bead, MeasureStyle.INCHES);
    }

    @Test
    void rabbetDepth_takesBeddingAndPane() {
        assertThat(depth("3/16 in", Optional.of(in("3/16 in")), Optional.empty())
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        Check shallow = depth("1/8 in", Optional.of(in("3/16 in")), Optional.empty());
        assertThat(shallow.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(shallow.advice()).isEqualTo("A rabbet 3/16 in deep would take them.");
        assertThat(depth("3/16 in", Optional.of(in("3/16 in")), Optional.of(in("1/4 in")))
                        .verdict())
                .as("a bead that lies in the rabbet too")
                .isEqualTo(Verdict.SHORT);
        assertThat(depth("3/16 in", Optional.empty(), Optional.empty()).verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    private static Verdict corner(String cutter, String rounded, boolean squared) {
        return GlazingChecks.paneCorner(
                        "Pane",
                        cutter.isEmpty() ? Optional.empty() : Optional.of(in(cutter)),
                        in(rounded),
                        squared,
                        MeasureStyle.INCHES)
                .verdict();
    }

    /** A cutter 1 in across leaves corners of 1/2 in. */
    @Test
    void paneCorner_isSquaredOrRounded() {
        assertThat(corner("1 in", "0 in", false)).isEqualTo(Verdict.SHORT);
        assertThat(corner("1 in", "0 in", true)).isEqualTo(Verdict.HOLDS);
        assertThat(corner("1 in", "1/2 in", false)).isEqualTo(Verdict.HOLDS);
        assertThat(corner("", "0 in", false)).isEqualTo(Verdict.NOT_KNOWN);
    }
}
