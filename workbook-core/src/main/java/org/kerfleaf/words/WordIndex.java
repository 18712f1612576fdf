package org.kerfleaf.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the Javadoc says of everything a cell can say: the public types, methods, constants and record components of the
 * packages {@code measure}, {@code sketch} and {@code words}. The build writes it from the sources into the jar.
 */
public final class WordIndex {
    /** The groups in which words are shown, in this order. */
    public static final List<String> GROUPS = List.of(
            "sizes",
            "what we buy",
            "parts",
            "shapes",
            "what follows others",
            "placing",
            "sides and ways",
            "joints",
            "sealing and paint",
            "door and glazing",
            "the place",
            "what it carries",
            "the work",
            "asked of the plan",
            "measures");

    private static final Pattern PARAMETER = Pattern.compile("((?:[^,<]|<[^>]*>)+) (\\w+)(?:, |$)");

    private static final WordIndex OURS = read();

    private final Map<String, Entry> entries = new LinkedHashMap<>();

    private WordIndex() {}

    /** The index in the jar. */
    public static WordIndex get() {
        return OURS;
    }

    /** Everything in it, types in the order of their packages and names, members as they stand in the source. */
    public List<Entry> all() {
        return List.copyOf(entries.values());
    }

    /**
     * What is said of a member.
     *
     * @param type the type that declares it, as in {@code org.kerfleaf.sketch.Shape.At}
     * @param member its name, with the bare types of its parameters if it is a method: {@code wide(String)}, {@code LEFT}
     */
    public Optional<Entry> of(String type, String member) {
        return Optional.ofNullable(entries.get(type + "#" + member));
    }

    /** The members that a workbook's cells are made of: those with an example, and others of the same name and type. */
    public List<Entry> words() {
        return entries.values().stream()
                .filter(one -> !one.name().isEmpty() && exampleOf(one).isPresent())
                .toList();
    }

    /** The example of a word, which may stand at another way to say it. */
    public Optional<String> exampleOf(Entry word) {
        if (word.isComponent()) {
            return Optional.empty();
        }
        return word.example()
                .or(() -> entries.values().stream()
                        .filter(other ->
                                other.type().equals(word.type()) && other.name().equals(word.name()))
                        .flatMap(other -> other.example().stream())
                        .findFirst());
    }

    /** The cell that stands above every example: the sizes, parts and places which the examples speak of. */
    public static String aroundTheExamples() {
        try (InputStream in = WordIndex.class.getResourceAsStream("around-the-examples.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("What stands around the examples cannot be read.", unreadable);
        }
    }

    /** One parameter of a method: its type as written in the source, and its name. */
    public record Parameter(String type, String name) {}

    /**
     * One type or member.
     *
     * @param type the type it is, or is declared in, with its package
     * @param member name and bare types of parameters; empty for the type itself
     * @param parameters of a method
     * @param gives the type of its value as written in the source; empty for a type
     * @param isComponent whether it only tells what was said: the accessor of a record's component
     * @param group one of {@link #GROUPS}, or empty
     * @param text what it is; empty if the Javadoc is silent
     * @param more what is said of each parameter, by its name
     * @param refuses when it refuses, by the name of the exception
     */
    public record Entry(
            String type,
            String member,
            List<Parameter> parameters,
            String gives,
            boolean isComponent,
            String group,
            String text,
            Map<String, String> more,
            Map<String, String> refuses,
            Optional<String> example) {
        /** Its name without parameters; empty for the type itself. */
        public String name() {
            return member.replaceFirst("\\(.*", "");
        }

        /** Whether it is a method. */
        public boolean isMethod() {
            return member.endsWith(")");
        }

        /** The type it is said of, without its package: {@code Part}, {@code Shape.At}. */
        public String saidOf() {
            return type.replaceFirst("^(?:[a-z]\\w*\\.)+", "");
        }

        /** Whether a cell can begin with it: it is a word by itself, or a constant. */
        public boolean standsAlone() {
            return type.equals(Words.class.getName()) || !isMethod();
        }

        /** The first sentence of what it is. */
        public String sentence() {
            return text.replaceFirst("(?s)(?<=[.!?])\\s+(?=[A-Z]).*", "");
        }
    }

    private static WordIndex read() {
        WordIndex index = new WordIndex();
        try (InputStream in = WordIndex.class.getResourceAsStream("words.index");
                BufferedReader lines = new BufferedReader(new InputStreamReader(
                        Objects.requireNonNull(in, "The index of the words is not in the jar."),
                        StandardCharsets.UTF_8))) {
            Map<String, String> said = new LinkedHashMap<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                int tab = line.indexOf('\t');
                if (tab >= 0) {
                    said.put(line.substring(0, tab), line.substring(tab + 1));
                } else {
                    Entry entry = entry(said);
                    index.entries.put(entry.type() + "#" + entry.member(), entry);
                    said.clear();
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The index of the words cannot be read.", unreadable);
        }
        return index;
    }

    private static Entry entry(Map<String, String> said) {
        return new Entry(
                said.get("of"),
                said.get("word"),
                parameters(said.get("says")),
                said.get("gives"),
                said.containsKey("component"),
                said.getOrDefault("group", ""),
                said.getOrDefault("text", ""),
                under("param ", said),
                under("throws ", said),
                Optional.ofNullable(said.get("example")));
    }

    private static List<Parameter> parameters(String says) {
        List<Parameter> parameters = new ArrayList<>();
        int open = says.indexOf('(');
        Matcher one = PARAMETER.matcher(open < 0 ? "" : says.substring(open + 1, says.length() - 1));
        while (one.find()) {
            parameters.add(new Parameter(one.group(1), one.group(2)));
        }
        return List.copyOf(parameters);
    }

    private static Map<String, String> under(String prefix, Map<String, String> said) {
        Map<String, String> some = new LinkedHashMap<>();
        said.forEach((key, words) -> {
            if (key.startsWith(prefix)) {
                some.put(key.substring(prefix.length()), words);
            }
        });
        return some;
    }
}
