package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
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
}
