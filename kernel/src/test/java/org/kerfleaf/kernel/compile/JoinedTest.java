package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.wire.Unit;

class JoinedTest {
    private static Joined joined(String cell) {
        WorkbookSource source = new WorkbookSource("", List.of(), List.of(new CellSource(0, cell, 1, 0)), List.of());
        try (CellCompiler compiler = new CellCompiler()) {
            CompiledWorkbook compiled = compiler.compile(source);
            assertThat(compiled.refusals()).isEmpty();
            return Joined.of(compiled);
        }
    }

    @Test
    void of_valuesAndMethods_standInOneClass() {
        Joined joined = joined("int a = 1;\nint twice(int n) { return 2 * n; }\nvar b = twice(a);\na + b");

        assertThat(joined.classes()).hasSize(1);
        assertThat(joined.units()).extracting(Unit::home).containsOnly("REPL.Shared0");
        assertThat(joined.units()).extracting(Unit::className).doesNotContain("REPL.Shared0");
        assertThat(joined.shared()).containsExactly("REPL.Shared0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "int a = 1;",
                "List<String> all = new ArrayList<>();\nall.add(\"one\");",
                "record Leg(int high) { int half() { return high / 2; } }\nvar leg = new Leg(4);",
                "interface Cut { int at(); }\nCut cut = () -> 7;",
            })
    void of_whatKeepsNothingButValues_isForgetful(String cell) {
        assertThat(joined(cell).forgetful()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "class Kept { static int runs; }",
                "record Leg(int high) { static int made; }",
                "enum Mood { GOOD; int runs; }",
                "interface Cut { List<Integer> ALL = new ArrayList<>(); }",
                "var one = new Object() { int n; };",
                "int checked(int n) { assert n > 0; return n; }",
            })
    void of_whatKeepsSomethingElsewhere_isNot(String cell) {
        assertThat(joined(cell).forgetful()).isFalse();
    }

    @Test
    void of_moreThanOneClassHolds_takesSeveral() {
        StringBuilder cell = new StringBuilder();
        for (int i = 0; i < 80; i++) {
            cell.append(
                    "String text%d = \"%s\";%n".formatted(i, Integer.toString(i).repeat(600)));
        }

        Joined joined = joined(cell.toString());

        assertThat(joined.shared()).hasSizeBetween(2, 4);
        assertThat(joined.classes()).hasSameSizeAs(joined.shared());
    }
}
