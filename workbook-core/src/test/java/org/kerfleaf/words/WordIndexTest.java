package org.kerfleaf.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kerfleaf.sketch.Asked;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.words.WordIndex.Entry;
import org.kerfleaf.words.WordIndex.Parameter;

/** The index holds, for everything a cell can say, what the Javadoc says of it. */
class WordIndexTest {
    private static final WordIndex INDEX = WordIndex.get();

    /** The public types that a cell sees by name without saying so. */
    private static List<Class<?>> types() throws IOException, URISyntaxException, ClassNotFoundException {
        Path classes = Path.of(
                Words.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        List<Class<?>> types = new ArrayList<>();
        for (String name : List.of("measure", "sketch", "words")) {
            try (Stream<Path> files = Files.list(classes.resolve("org/kerfleaf").resolve(name))) {
                for (Path file : files.sorted().toList()) {
                    String simple = file.getFileName().toString().replaceFirst("\\.class$", "");
                    if (!simple.equals("package-info") && file.toString().endsWith(".class")) {
                        Class<?> type = Class.forName("org.kerfleaf." + name + "." + simple);
                        if (isPublic(type)) {
                            types.add(type);
                        }
                    }
                }
            }
        }
        return types;
    }

    private static boolean isPublic(Class<?> type) {
        Class<?> outer = type.getDeclaringClass();
        return Modifier.isPublic(type.getModifiers()) && (outer == null || isPublic(outer));
    }

    /** Whether the method is declared by the JDK already: {@code equals}, {@code compareTo}, an enum's {@code values}. */
    private static boolean isTheJdks(Method method) {
        boolean ofEnum = method.getDeclaringClass().isEnum()
                && Modifier.isStatic(method.getModifiers())
                && Set.of("values", "valueOf").contains(method.getName());
        return ofEnum
                || method.isSynthetic()
                || Stream.of(Object.class, Throwable.class, Comparable.class)
                        .flatMap(known -> Arrays.stream(known.getMethods()))
                        .anyMatch(known -> known.getName().equals(method.getName())
                                && known.getParameterCount() == method.getParameterCount());
    }

    private static String member(Method method) {
        return method.getName()
                + Arrays.stream(method.getParameterTypes())
                        .map(Class::getSimpleName)
                        .collect(Collectors.joining(",", "(", ")"));
    }

    @Test
    void everyMethodACellCanCall_hasAText() throws Exception {
        List<String> silent = new ArrayList<>();
        int methods = 0;
        for (Class<?> type : types()) {
            for (Method method : type.getDeclaredMethods()) {
                if (Modifier.isPublic(method.getModifiers()) && !isTheJdks(method)) {
                    methods++;
                    if (INDEX.of(type.getCanonicalName(), member(method))
                            .map(Entry::text)
                            .orElse("")
                            .isBlank()) {
                        silent.add(type.getSimpleName() + "." + member(method));
                    }
                }
            }
        }
        assertThat(silent).isEmpty();
        assertThat(methods).isGreaterThan(500);
    }

    @Test
    void everyConstantACellCanSay_hasAText() throws Exception {
        List<String> silent = new ArrayList<>();
        for (Class<?> type : types()) {
            if (type.isEnum()) {
                for (Object constant : type.getEnumConstants()) {
                    String name = ((Enum<?>) constant).name();
                    if (INDEX.of(type.getCanonicalName(), name)
                            .map(Entry::text)
                            .orElse("")
                            .isBlank()) {
                        silent.add(type.getSimpleName() + "." + name);
                    }
                }
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void everyParameter_hasItsNameInTheClassFileToo() throws Exception {
        for (Class<?> type : types()) {
            for (Method method : type.getDeclaredMethods()) {
                INDEX.of(type.getCanonicalName(), member(method))
                        .filter(entry -> !method.isSynthetic())
                        .ifPresent(
                                entry -> assertThat(entry.parameters().stream().map(Parameter::name))
                                        .as(type.getSimpleName() + "." + entry.member())
                                        .containsExactlyElementsOf(Arrays.stream(method.getParameters())
                                                .map(java.lang.reflect.Parameter::getName)
                                                .toList()));
            }
        }
    }

    @Test
    void everyWord_hasAGroupAndAnExample() throws Exception {
        Set<String> without = new TreeSet<>();
        for (Class<?> type : types()) {
            for (Method method : type.getDeclaredMethods()) {
                Entry entry = INDEX.of(type.getCanonicalName(), member(method)).orElse(null);
                if (isAWord(method)
                        && (INDEX.exampleOf(entry).isEmpty() || !WordIndex.GROUPS.contains(entry.group()))) {
                    without.add(type.getSimpleName() + "." + member(method));
                }
            }
        }
        assertThat(without).isEmpty();
    }

    /** A word a cell begins with, or a wither: said of a thing a maker declares, it gives such a thing again. */
    private static boolean isAWord(Method method) {
        Class<?> type = method.getDeclaringClass();
        if (type == Words.class) {
            return Modifier.isPublic(method.getModifiers()) && !method.getName().equals("imports");
        }
        boolean said = INDEX.of(type.getCanonicalName(), "")
                .filter(known -> type.getPackage() == Part.class.getPackage()
                        && !known.group().isEmpty())
                .isPresent();
        boolean wither = method.getReturnType() == type || method.getReturnType() == Asked.class;
        return said && wither && !Modifier.isStatic(method.getModifiers()) && Modifier.isPublic(method.getModifiers());
    }

    @Test
    void groups_allHaveWords() {
        assertThat(INDEX.words().stream().map(Entry::group).collect(Collectors.toSet()))
                .containsExactlyInAnyOrderElementsOf(WordIndex.GROUPS);
    }

    @Test
    void of_rabbetAlongAnEdge_hasSentenceParametersAndExample() {
        Entry rabbet =
                INDEX.of(Part.class.getName(), "rabbet(Side,Side,Wide,Deep)").orElseThrow();

        assertThat(rabbet.sentence()).isEqualTo("A step cut along a whole edge, on one face.");
        assertThat(rabbet.parameters())
                .containsExactly(
                        new Parameter("Side", "face"),
                        new Parameter("Side", "edge"),
                        new Parameter("Trait.Wide", "wide"),
                        new Parameter("Trait.Deep", "deep"));
        assertThat(rabbet.gives()).isEqualTo("Part");
        assertThat(rabbet.group()).isEqualTo("shapes");
        assertThat(rabbet.example().orElseThrow()).contains(".rabbet(INSIDE, TOP, wide(\"3/4 in\"), deep(\"3/8 in\"))");
    }

    @Test
    void of_tagsAndLinks_arePlainWords() {
        Entry parse = INDEX.of("org.kerfleaf.measure.Area", "parse(String)").orElseThrow();
        assertThat(parse.text()).isEqualTo("Reads 350 sq ft, 12 m2, 600 sq in.");
        assertThat(parse.refuses()).isEqualTo(Map.of("MeasureTextException", "if it is no area"));

        Entry repeat =
                INDEX.of(Words.class.getName(), "repeat(int,IntFunction)").orElseThrow();
        assertThat(repeat.parameters())
                .containsExactly(new Parameter("int", "times"), new Parameter("IntFunction<T>", "make"));
        assertThat(INDEX.all())
                .noneMatch(entry -> entry.text().contains("{@") || entry.text().contains("</"));
    }

    @Test
    void of_componentOfARecord_hasItsParamOrItsInterfacesText() {
        assertThat(INDEX.of("org.kerfleaf.sketch.Joint", "every()")
                        .orElseThrow()
                        .text())
                .isEqualTo("how far apart fasteners stand at most, along the contact");
        assertThat(INDEX.of("org.kerfleaf.sketch.Bolt", "metal()").orElseThrow().text())
                .isEqualTo("What it is made of or coated with.");
    }

    @Test
    void exampleOf_anotherWayToSayAWord_isTheSame() {
        Entry byLength = INDEX.of(Part.class.getName(), "wide(Length)").orElseThrow();
        assertThat(byLength.example()).isEmpty();
        assertThat(INDEX.exampleOf(byLength)).contains("panel(\"Lid\", ply).wide(\"20 in\").deep(\"10 in\").times(1)");
    }
}
