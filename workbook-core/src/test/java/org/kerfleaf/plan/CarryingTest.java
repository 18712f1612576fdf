package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.words.Words.*;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.MeasureTextException;
import org.kerfleaf.measure.SpreadLoad;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.stock.Stiffness;

class CarryingTest {
    /** Architectural Woodwork Standards 2009, 4.4.14.10.11 with L/144 of 1.2.21 (seen in a copy), read from a plan. */
    @ParameterizedTest
    @CsvSource({
        "0.95, 3/4 in, 40, 40.03",
        "0.95, 1 in, 40, 53.37",
        "0.95, 1 in, 50, 49.54",
        "1.80, 3/4 in, 50, 45.98",
        "1.80, 1 in, 40, 66.04",
        "1.82, 3/4 in, 40, 49.71",
        "1.82, 1 in, 50, 61.53"
    })
    void longest_woodworkTable_isReadFromThePlan(String e, String thick, int psf, double inches) {
        Loads.Bending bending = shelf(e, thick, psf + " lb/sq ft").bending().orElseThrow();
        assertThat(bending.limits())
                .filteredOn(l -> l.limit() == SagLimit.WOODWORK_STANDARD)
                .allSatisfy(l -> assertThat(l.longest().value().inInches()).isCloseTo(inches, within(0.005)));
    }

    /** What is said along the length and what is said on the area come to the same on a shelf a foot deep. */
    @Test
    void load_byLengthByAreaAndInAll_agree() {
        double byArea = shelf("1.2", "3/4 in", "40 lb/sq ft").load().value().grams();
        assertThat(shelf("1.2", "3/4 in", "40 lb/ft").load().value().grams()).isCloseTo(byArea, within(1e-6));
        assertThat(shelf("1.2", "3/4 in", "120 lb").load().value().grams()).isCloseTo(byArea, within(1e-6));
    }

    private static Loads.Carried shelf(String e, String thick, String load) {
        Plan plan = Bench.plan(bench -> {
            Sheet sheet = bench.keep(sheet("shelf board", "48 in", "96 in")
                    .soldAs("1 in")
                    .measured(thick)
                    .stiffness(e + " million psi"));
            Part shelf = bench.keep(panel("Shelf", sheet).wide("36 in").deep("12 in"));
            Placing shelfIn = bench.keep(place(shelf));
            bench.keep(carries(shelfIn, load).spans("36 in"));
        });
        return plan.loads().carried().get(0);
    }

    @Test
    void sag_withoutASpan_isNotKnown() {
        Plan plan = Bench.plan(bench -> {
            Part shelf = bench.keep(panel("Shelf", bench.ply()).wide("36 in").deep("12 in"));
            bench.keep(carries(bench.keep(place(shelf)), "20 lb/ft"));
        });
        assertThat(plan.check("Sag: Shelf").orElseThrow().verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(plan.check("Sag: Shelf").orElseThrow().advice()).contains("spans(\"22 in\")");
    }

    @Test
    void words_thatMakeNoSense_sayWhatWould() {
        assertThatThrownBy(() -> SpreadLoad.parse("much"))
                .isInstanceOf(MeasureTextException.class)
                .hasMessageContaining("20 lb/ft");
        assertThatThrownBy(() -> Stiffness.parse("stiff")).hasMessageContaining("1.2 million psi");
        assertThat(SpreadLoad.parse("2 kN/m2")).isEqualTo(SpreadLoad.parse("2000 N/m²"));
        assertThat(Stiffness.parse("8 GPa")).isEqualTo(Stiffness.parse("8000 MPa"));
    }
}
