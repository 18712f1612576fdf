package org.kerfleaf.kernel.help;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.kernel.compile.TypeWords;
import org.kerfleaf.words.WordIndex;
import org.kerfleaf.words.WordIndex.Entry;

/**
 * One way to say a word.
 *
 * @param word its name
 * @param brackets whether brackets belong to it
 * @param parameters what stands in the brackets, in order
 * @param gives what its value is, in a maker's words
 * @param text what it means, empty if nothing is said of it
 * @param refuses when it refuses, one sentence each
 * @param example one line as a cell could hold it
 */
public record Signature(
        String word,
        boolean brackets,
        List<Parameter> parameters,
        String gives,
        String text,
        List<String> refuses,
        Optional<String> example) {
    public Signature {
        parameters = List.copyOf(parameters);
        refuses = List.copyOf(refuses);
    }

    /**
     * What stands in one place of the brackets.
     *
     * @param name its name
     * @param what what it is, in a maker's words: {@code a text in quotes}
     * @param more what else is said of it, may be empty
     */
    public record Parameter(String name, String what, String more) {}

    /** A word of the vocabulary. */
    public static Signature of(Entry entry) {
        List<Parameter> parameters = entry.parameters().stream()
                .map(one -> new Parameter(
                        one.name(), TypeWords.wanted(one.type()), entry.more().getOrDefault(one.name(), "")))
                .toList();
        return new Signature(
                entry.name(),
                entry.isMethod(),
                parameters,
                TypeWords.of(entry.gives()),
                entry.text(),
                List.copyOf(entry.refuses().values()),
                WordIndex.get().exampleOf(entry));
    }

    /** Something nobody wrote about: a name of the workbook, or of Java's own. */
    static Signature of(String name, boolean brackets, Map<String, String> parameters, String type) {
        List<Parameter> takes = parameters.entrySet().stream()
                .map(one -> new Parameter(one.getKey(), TypeWords.wanted(one.getValue()), ""))
                .toList();
        return new Signature(name, brackets, takes, TypeWords.of(type), "", List.of(), Optional.empty());
    }

    /** As it is written: {@code rabbet(face, edge, wide, deep)}. */
    public String written() {
        return brackets
                ? parameters.stream().map(Parameter::name).collect(Collectors.joining(", ", word + "(", ")"))
                : word;
    }
}
