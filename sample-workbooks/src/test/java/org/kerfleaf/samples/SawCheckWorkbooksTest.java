package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.workbook.Workbook;

/** For each check of saws and routers a workbook that trips it and one that holds, which differ in one size or word. */
class SawCheckWorkbooksTest {
    private static final String BUILD = """
            # A try

            ```java
            measureIn(INCHES);
            Sheet    ply    = sheet("plywood", "48 in", "96 in").measured("3/4 in");
            Lumber   strip  = lumber("1x3").lengths("8 ft");
            Saw      saw    = circularSaw().kerf("1/8 in").cutsDeep("2 3/8 in");
            MitreSaw mitre  = mitreSaw().stopsAt("50 deg");
            Jigsaw   jig    = jigsaw().blade("3/8 in");
            Router   router = router().cutter("1 3/8 in").bite("1/8 in");

            Part face  = panel("Face", ply).wide("20 in").high("24 in")
                             .opening("doorway", rectangle(length("12 in"), length("16 in")).rounded("1/4 in"))
                             .rabbet(INSIDE, TOP, wide("1/2 in"), deep("3/16 in")).times(1);
            Part trim  = board("Trim", strip).cutTo("20 in").mitred(RIGHT, "50 deg", BOTTOM).times(1);
            Part side  = panel("Side", ply).deep("10 in").high("20 in").bevelled(TOP, "30 deg", INSIDE).times(2).pair();
            Part cleat = board("Cleat", strip).cutTo("23 7/8 in").times(4);
            ```
            """;

    private static Check check(String name, String text, String instead) {
        assertThat(BUILD).contains(text);
        Workbook workbook = Workbook.parse(BUILD.replace(text, instead));
        return Sample.plan(workbook, Map.of()).checks().stream()
                .filter(c -> c.name().startsWith(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no check “%s”".formatted(name)));
    }

    private static Verdict verdict(String name, String text, String instead) {
        return check(name, text, instead).verdict();
    }

    /** Check 6: four of 24 in do not come out of 96 in, since three kerfs are lost; 23 7/8 do. */
    @Test
    void equalPieces() {
        Check trips = check("Equal pieces: Cleat", "23 7/8 in", "24 in");

        assertThat(trips.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(trips.result()).contains("The kerf eats the last one.");
        assertThat(trips.advice()).contains("23 29/32 in");
        assertThat(verdict("Equal pieces: Cleat", "23 7/8 in", "23 7/8 in")).isEqualTo(Verdict.HOLDS);
        assertThat(verdict("Equal pieces: Cleat", ".kerf(\"1/8 in\")", "")).isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Check 23: 3/4 in and 1/8 past it. */
    @Test
    void bladeDepth() {
        assertThat(verdict("Blade depth", "2 3/8 in", "3/4 in")).isEqualTo(Verdict.SHORT);
        assertThat(verdict("Blade depth", "2 3/8 in", "7/8 in")).isEqualTo(Verdict.HOLDS);
        assertThat(verdict(
                        "Blade depth", "Saw      saw    = circularSaw().kerf(\"1/8 in\").cutsDeep(\"2 3/8 in\");", ""))
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Check 24. */
    @Test
    void sawStop() {
        Check trips = check("Saw stop", "stopsAt(\"50 deg\")", "stopsAt(\"47 deg\")");

        assertThat(trips.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(trips.advice()).isEqualTo("Turn the stock against a squared block and set 40°.");
        assertThat(verdict("Saw stop", "stopsAt(\"50 deg\")", "stopsAt(\"50 deg\")"))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict("Saw stop", ".stopsAt(\"50 deg\")", "")).isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Check 25: two kerfs of 1/8 in at 30 degrees are 0.2887 in, to 1/64 in 9/32. */
    @Test
    void sharedBevel() {
        Check trips = check("Shared bevel cut", ".pair();", ".pairFromOneBlank();");

        assertThat(trips.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(trips.advice()).contains("9/32 in apart");
        assertThat(verdict("Shared bevel cut", ".pair();", ".pair();")).isEqualTo(Verdict.HOLDS);
        assertThat(verdict("Shared bevel cut", ".kerf(\"1/8 in\")", "")).isEqualTo(Verdict.NOT_KNOWN);
    }

    /** Check 26. */
    @Test
    void shortPiece() {
        assertThat(verdict("Short piece", "cutTo(\"20 in\")", "cutTo(\"5 1/2 in\")"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict("Short piece", "cutTo(\"20 in\")", "cutTo(\"6 in\")"))
                .isEqualTo(Verdict.HOLDS);
    }

    /** Check 27: 3/4 in less 9/16 leaves 3/16. */
    @Test
    void rabbetLip() {
        assertThat(verdict("Rabbet lip", "deep(\"3/16 in\")", "deep(\"9/16 in\")"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict("Rabbet lip", "deep(\"3/16 in\")", "deep(\"1/2 in\")"))
                .isEqualTo(Verdict.HOLDS);
    }

    /** Check 28: 3/16 in at once, or in two passes. */
    @Test
    void routerBite() {
        Check trips = check("Router bite", "bite(\"1/8 in\")", "bite(\"1/4 in\")");

        assertThat(trips.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(trips.advice()).isEqualTo("2 passes would do.");
        assertThat(verdict("Router bite", "bite(\"1/8 in\")", "bite(\"1/8 in\")"))
                .isEqualTo(Verdict.HOLDS);
    }

    /** Check 31: a corner of 1/4 in is a hole of 1/2 in, as the blade of 3/8 in wants. */
    @Test
    void startHole() {
        assertThat(verdict("Start hole", "rounded(\"1/4 in\")", "rounded(\"3/16 in\")"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict("Start hole", "rounded(\"1/4 in\")", "rounded(\"1/4 in\")"))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict("Start hole", ".blade(\"3/8 in\")", "")).isEqualTo(Verdict.NOT_KNOWN);
    }
}
