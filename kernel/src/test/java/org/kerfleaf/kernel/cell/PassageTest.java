package org.kerfleaf.kernel.cell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PassageTest {
    private static final Passage THREE = Passage.of(new CellSource(4, "int a = 1;\r\nint b;\r\n\tint c;", 10, 0));

    private static CellProblem at(String word) {
        return THREE.problem(THREE.text().indexOf(word), "x");
    }

    @Test
    void problem_anyLine_hasLineColumnAndItsWords() {
        assertThat(at("a =")).isEqualTo(new CellProblem(4, 10, 5, "int a = 1;", "x"));
        assertThat(at("b;")).isEqualTo(new CellProblem(4, 11, 5, "int b;", "x"));
        assertThat(at("c;")).isEqualTo(new CellProblem(4, 12, 6, "\tint c;", "x"));
    }

    @Test
    void problem_atLineEndAndPastTheText_staysInIt() {
        assertThat(THREE.problem(10, "x")).isEqualTo(new CellProblem(4, 10, 11, "int a = 1;", "x"));
        assertThat(THREE.problem(1000, "x").line()).isEqualTo(12);
        assertThat(THREE.problem(-1, "x").column()).isEqualTo(1);
    }
}
