package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.WorkbookSource;

class CellCompilerTest {
    private static final CellCompiler COMPILER = new CellCompiler();

    @AfterAll
    static void close() {
        COMPILER.close();
    }

    private static WorkbookSource book(String title, int line, String cell) {
        return new WorkbookSource(title, List.of(), List.of(new CellSource(0, cell, line, 0)), List.of());
    }

    /** Sizes being tried are no part of the source, so a changed size compiles nothing. */
    @Test
    void compile_sameText_compilesNothing() {
        CompiledWorkbook first = COMPILER.compile(book("A box", 2, "int a = 1;"));

        assertThat(COMPILER.compile(book("A box", 2, "int a = 1;"))).isSameAs(first);
        assertThat(COMPILER.compile(book("Another title", 2, "int a = 1;"))).isSameAs(first);
    }

    @Test
    void compile_otherTextOrPlace_compilesAgain() {
        CompiledWorkbook first = COMPILER.compile(book("A box", 2, "int a = 1;"));

        assertThat(COMPILER.compile(book("A box", 2, "int a = 2;"))).isNotSameAs(first);
        CompiledWorkbook moved = COMPILER.compile(book("A box", 5, "int a = 1;"));
        assertThat(moved.units())
                .singleElement()
                .satisfies(unit -> assertThat(unit.unit().line()).isEqualTo(5));
    }

    @Test
    void compile_whatCannotBeRead_leavesTheCompilerUsable() {
        String deep = "int a = " + "(".repeat(20_000) + "1" + ")".repeat(20_000) + ";";

        assertThat(COMPILER.compile(book("A box", 2, deep)).units()).hasSizeLessThan(2);
        assertThat(COMPILER.compile(book("A box", 2, "int a = 1;")).units()).hasSize(1);
    }

    private static WorkbookSource book(String... cells) {
        List<CellSource> placed = new ArrayList<>();
        for (String cell : cells) {
            placed.add(new CellSource(placed.size(), cell, 2 + 3 * placed.size(), 0));
        }
        return new WorkbookSource("A box", List.of(), placed, List.of());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "another value           | int a = 2;    | int twice(int n) { return 2 * n; }  | 1",
                "another type            | long a = 1;   | int twice(int n) { return 2 * n; }  | 2",
                "another name            | int z = 1;    | int twice(int n) { return 2 * n; }  | 2",
                "broken                  | int a = ;     | int twice(int n) { return 2 * n; }  | 2",
                "another body            | int a = 1;    | int twice(int n) { return n + n; }  | 1",
                "another type to give    | int a = 1;    | long twice(int n) { return 2 * n; } | 3",
                "nothing                 | int a = 1;    | int twice(int n) { return 2 * n; }  | 0",
                "another place           | ¶int a = 1;  | int twice(int n) { return 2 * n; }  | 0",
            })
    void compile_editedCell_evaluatesItAndWhatItsNamesTouch(String edit, String first, String second, int evaluations) {
        String[] rest = {"var b = a + 1;", "int c = 3;", "var d = twice(c);", "var e = d + c;", "int f = c;"};
        COMPILER.compile(
                book("int a = 1;", "int twice(int n) { return 2 * n; }", rest[0], rest[1], rest[2], rest[3], rest[4]));
        int before = COMPILER.evaluations();

        COMPILER.compile(book(first.replace("¶", "\n"), second, rest[0], rest[1], rest[2], rest[3], rest[4]));

        assertThat(COMPILER.evaluations() - before).as(edit).isEqualTo(evaluations);
    }
}
