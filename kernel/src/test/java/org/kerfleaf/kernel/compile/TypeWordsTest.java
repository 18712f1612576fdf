package org.kerfleaf.kernel.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.words.WordIndex;

class TypeWordsTest {
    static Stream<String> typesThatWordsAreSaidOf() {
        WordIndex index = WordIndex.get();
        return index.all().stream()
                .filter(entry ->
                        !entry.name().isEmpty() && index.exampleOf(entry).isPresent())
                .map(WordIndex.Entry::saidOf)
                .filter(type -> !type.isEmpty() && !type.endsWith("Words"))
                .distinct();
    }

    /** What has no words of its own is shown by its name in quotes, which no maker ever typed. */
    @ParameterizedTest
    @MethodSource("typesThatWordsAreSaidOf")
    void of_whatAWordIsSaidOf_isInAMakersWords(String type) {
        assertThat(TypeWords.of(type)).doesNotContain("“");
    }
}
