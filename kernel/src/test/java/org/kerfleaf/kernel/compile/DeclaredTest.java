package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DeclaredTest {
    private static List<String> names(List<Declared> declared) {
        return declared.stream().map(one -> one.kind() + " " + one.name()).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Length width = size(\"a\", \"b\");      | VARIABLE width",
                "var shelves = repeat(2, i -> i);      | VARIABLE shelves",
                "final int x;                          | VARIABLE x",
                "Map<String, List<Part>> all = null;   | VARIABLE all",
                "java.util.List<Part> all = null       | VARIABLE all",
                "int[] a = {1, 2};                     | VARIABLE a",
                "int a[] = {1, 2};                     | VARIABLE a",
                "Part leg(String name, int n) { }      | METHOD leg",
                "<T> List<T> many(T one) { }           | METHOD many",
                "static Length half(Length a) { }      | METHOD half",
                "record Leg(String name) {}            | TYPE Leg",
                "enum Wood { OAK }                     | TYPE Wood",
                "final class A extends B {}            | TYPE A",
                "sealed interface S permits T {}       | TYPE S",
            })
    void in_oneDeclaration_findsItsName(String text, String name) {
        assertThat(names(Declared.in(text))).containsExactly(name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "panel(\"Floor\", ply).wide(width);",
                "width = length(\"3 in\");",
                "if (a < b) { int c = 1; }",
                "for (Part p : all) { place(p); }",
                "return 3;",
                "throw new IllegalStateException();",
                "new Part();",
                "import java.util.List;",
                "a.b.c(d);",
                "n++;",
                "\"Length width = 3;\".length();",
                "a < b",
            })
    void in_whatDeclaresNothing_isEmpty(String text) {
        assertThat(Declared.in(text)).isEmpty();
    }

    @Test
    void in_severalVariables_findsAll() {
        assertThat(names(Declared.in("int a = f(1, 2), b = 3, c;")))
                .containsExactly("VARIABLE a", "VARIABLE b", "VARIABLE c");
    }

    @Test
    void in_offset_isThatOfTheName() {
        assertThat(Declared.in("/* Length width */ Length width = w;").get(0).offset())
                .isEqualTo("/* Length width */ Length ".length());
    }

    @Test
    void inBroken_everyLine_isLookedAt() {
        assertThat(names(Declared.inBroken("Part a = panel(\"A\", ply\nPart b = panel(\"B\");\n  Length c = 3")))
                .containsExactly("VARIABLE a", "VARIABLE b", "VARIABLE c");
    }

    @Test
    void clashesWith_methodsWithOtherParameters_doNot() {
        Declared one = Declared.in("int f(int a) { return a; }").get(0);
        Declared renamed = Declared.in("int f(int other) { return other; }").get(0);
        Declared other = Declared.in("int f(double a) { return 1; }").get(0);

        assertThat(one.clashesWith(renamed)).isTrue();
        assertThat(one.clashesWith(other)).isFalse();
    }
}
