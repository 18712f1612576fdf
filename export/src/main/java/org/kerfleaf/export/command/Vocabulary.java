package org.kerfleaf.export.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.kerfleaf.export.terminal.VocabularyText;
import org.kerfleaf.export.terminal.VocabularyText.Form;
import org.kerfleaf.export.terminal.VocabularyText.Group;
import org.kerfleaf.export.terminal.VocabularyText.Said;
import org.kerfleaf.kernel.compile.TypeWords;
import org.kerfleaf.kernel.help.Signature;
import org.kerfleaf.words.WordIndex;
import org.kerfleaf.words.WordIndex.Entry;

/** The words of a cell as they are shown: those of one name that are said of one kind of thing are one word. */
final class Vocabulary {
    private static final WordIndex INDEX = WordIndex.get();

    private Vocabulary() {}

    /** Every word, group by group. */
    static String all(int columns) {
        List<Group> groups = WordIndex.GROUPS.stream().map(Vocabulary::of).toList();
        return VocabularyText.of(groups, WordIndex.aroundTheExamples(), columns);
    }

    static String group(String group, int columns) {
        return VocabularyText.of(List.of(of(group)), WordIndex.aroundTheExamples(), columns);
    }

    /** One word in full, wherever it is said; empty if there is none of that name. */
    static Optional<String> word(String name, int columns) {
        List<Said> said =
                grouped(INDEX.words().stream().filter(word -> word.name().equalsIgnoreCase(name)));
        return said.isEmpty() ? Optional.empty() : Optional.of(VocabularyText.inFull(said, columns));
    }

    /** The names of all words. */
    static List<String> names() {
        return INDEX.words().stream().map(Entry::name).distinct().toList();
    }

    private static Group of(String group) {
        return new Group(
                group,
                grouped(INDEX.words().stream().filter(word -> word.group().equals(group))));
    }

    private static List<Said> grouped(Stream<Entry> words) {
        Map<String, List<Entry>> byName = words.sorted(Comparator.comparing(Vocabulary::place))
                .collect(Collectors.groupingBy(
                        word -> word.type() + "." + word.name(), LinkedHashMap::new, Collectors.toList()));
        return byName.values().stream().map(Vocabulary::said).toList();
    }

    /** What a cell begins with stands first, then what is said of its values, in the same order. */
    private static int place(Entry word) {
        List<String> made = INDEX.words().stream()
                .filter(Entry::standsAlone)
                .map(Entry::gives)
                .distinct()
                .toList();
        int at = made.indexOf(word.saidOf());
        if (word.standsAlone()) {
            return word.isMethod() ? -2 : -1;
        }
        return at < 0 ? made.size() : at;
    }

    private static Said said(List<Entry> ways) {
        Entry first = ways.get(0);
        Entry shown = ways.stream()
                .filter(way -> way.example().isPresent())
                .findFirst()
                .orElseThrow();
        List<Form> forms =
                ways.stream().map(Signature::of).map(Vocabulary::form).toList();
        String of = first.standsAlone() ? "" : TypeWords.of(first.saidOf());
        return new Said(
                first.name(),
                first.group(),
                of,
                shown.sentence(),
                forms,
                shown.example().orElseThrow(),
                next(first));
    }

    private static Form form(Signature way) {
        List<String> parameters = new ArrayList<>();
        for (Signature.Parameter one : way.parameters()) {
            parameters.add(one.name() + ": " + one.what() + (one.more().isEmpty() ? "" : ", " + one.more()));
        }
        return new Form(way.written(), way.gives(), way.text(), parameters, way.refuses());
    }

    /** What can be said of the value of a word, if its value is another kind of thing than what it was said of. */
    private static List<String> next(Entry word) {
        return word.gives().equals(word.saidOf())
                ? List.of()
                : INDEX.words().stream()
                        .filter(other -> other.isMethod() && other.saidOf().equals(word.gives()))
                        .map(Entry::name)
                        .distinct()
                        .toList();
    }
}
