package org.kerfleaf.kernel.help;

import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.lang.model.type.TypeMirror;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.joda.money.Money;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.Jars;
import org.kerfleaf.kernel.compile.TypeWords;
import org.kerfleaf.kernel.help.Completion.Kind;
import org.kerfleaf.kernel.help.Scene.Sayable;
import org.kerfleaf.words.WordIndex;
import org.kerfleaf.words.WordIndex.Entry;
import org.kerfleaf.words.Words;

/**
 * Helps while a cell, or a live value in prose, is being written. One thread at a time may use it; javac needs a deep stack for deeply nested text.
 */
public final class CellHelp implements AutoCloseable {
    private static final Comparator<Completion> LIKELIEST = Comparator.comparing((Completion one) -> !one.fits())
            .thenComparing(Completion::kind)
            .thenComparing(Completion::name, String.CASE_INSENSITIVE_ORDER)
            .thenComparing(Completion::name);

    private final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    private final StandardJavaFileManager files =
            compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
    private final List<String> options = List.of(
            "-proc:none",
            "--should-stop=ifError=ATTR",
            "--should-stop=ifNoError=ATTR",
            "-classpath",
            Jars.holding(Words.class, Money.class));
    private final Scaffold scaffold = new Scaffold();
    private final WordIndex index = WordIndex.get();
    private String looked = "";
    private Scene scene;

    /**
     * What can stand at a place of a cell; nothing in a comment, in quotes, or where a new name is being given.
     *
     * @param cell the cell's ordinal
     * @param offset the place in the cell's text, in characters from 0
     * @throws IndexOutOfBoundsException if there is no such cell
     */
    public Completions complete(WorkbookSource source, int cell, int offset) {
        return complete(source, cell, offset, true);
    }

    /**
     * What can stand at a place of a live value in prose, which may speak of everything that any cell declares.
     *
     * @param live the live value's ordinal
     * @param offset the place in its expression, in characters from 0
     * @throws IndexOutOfBoundsException if there is no such live value
     */
    public Completions completeLive(WorkbookSource source, int live, int offset) {
        return complete(source.withLastCell(live), source.cells().size(), offset, false);
    }

    private Completions complete(WorkbookSource source, int cell, int offset, boolean declaring) {
        Writing writing = Writing.at(textOf(source, cell), offset);
        int from = writing.nameBegin();
        if (writing.isNotJava()) {
            return new Completions(from, from, List.of());
        }
        String begun = writing.text().substring(from, writing.offset());
        Scene here = scene(source, cell, from);
        List<TypeMirror> wanted = here.wanted();
        Map<String, Completion> byName = new LinkedHashMap<>();
        for (Sayable one : here.sayables()) {
            if (one.name().regionMatches(true, 0, begun, 0, begun.length())) {
                byName.merge(one.name(), completion(one, here.fits(one.type(), wanted)), CellHelp::together);
            }
        }
        if (declaring && here.isAtWord() && wanted.isEmpty()) {
            types(begun).forEach(type -> byName.putIfAbsent(type.name(), type));
        }
        return new Completions(
                from,
                writing.nameEnd(),
                byName.values().stream().sorted(LIKELIEST).toList());
    }

    private Completion completion(Sayable one, boolean fits) {
        Optional<Entry> entry = entry(one);
        boolean word = entry.flatMap(index::exampleOf).isPresent();
        String insert = one.name() + (!one.isMethod() ? "" : one.parameters().isEmpty() ? "()" : "(");
        return new Completion(
                one.name(),
                insert,
                TypeWords.of(one.type().toString()),
                entry.map(Entry::sentence).orElse(""),
                one.own() ? Kind.OWN : word ? Kind.WORD : Kind.OTHER,
                fits);
    }

    /** Two ways to say a word are shown as one; brackets are left open if one of them takes more. */
    private static Completion together(Completion one, Completion other) {
        Completion shown = LIKELIEST.compare(one, other) <= 0 ? one : other;
        boolean hidden = one.kind() == Kind.OWN && other.kind() != Kind.OWN;
        boolean more = !hidden && !one.insert().equals(other.insert());
        return new Completion(
                shown.name(),
                more ? shown.name() + "(" : shown.insert(),
                shown.what(),
                shown.sentence(),
                shown.kind(),
                shown.fits());
    }

    /**
     * What the word at a place takes and means: the word the place is in or right behind, else the one in whose brackets it is.
     *
     * @param cell the cell's ordinal
     * @param offset the place in the cell's text, in characters from 0
     * @return empty where there is no word that is known
     * @throws IndexOutOfBoundsException if there is no such cell
     */
    public Optional<WordHelp> explain(WorkbookSource source, int cell, int offset) {
        Writing writing = Writing.at(textOf(source, cell), offset);
        Optional<WordHelp> word = writing.isNotJava()
                ? Optional.empty()
                : help(
                        source,
                        cell,
                        writing.nameBegin(),
                        writing.text().substring(writing.nameBegin(), writing.nameEnd()),
                        -1);
        return word.or(
                () -> writing.call().flatMap(call -> help(source, cell, call.begin(), call.word(), call.commas())));
    }

    /**
     * What the word at a place of a live value takes and means.
     *
     * @param live the live value's ordinal
     * @param offset the place in its expression, in characters from 0
     * @return empty where there is no word that is known
     * @throws IndexOutOfBoundsException if there is no such live value
     */
    public Optional<WordHelp> explainLive(WorkbookSource source, int live, int offset) {
        return explain(source.withLastCell(live), source.cells().size(), offset);
    }

    private Optional<WordHelp> help(WorkbookSource source, int cell, int begin, String word, int commas) {
        if (word.isEmpty()) {
            return Optional.empty();
        }
        List<Signature> signatures = scene(source, cell, begin).sayables().stream()
                .filter(one -> one.name().equals(word) && (commas < 0 || one.isMethod()))
                .sorted(Comparator.comparing((Sayable one) -> !takes(one, commas)))
                .map(this::signature)
                .toList();
        return signatures.isEmpty()
                ? Optional.empty()
                : Optional.of(new WordHelp(signatures, inParameter(signatures.get(0), commas)));
    }

    private static boolean takes(Sayable method, int commas) {
        return commas < method.parameters().size();
    }

    /** The last parameter may take any number. */
    private static int inParameter(Signature signature, int commas) {
        return Math.min(commas, signature.parameters().size() - 1);
    }

    private Signature signature(Sayable one) {
        return entry(one)
                .map(Signature::of)
                .orElseGet(() -> Signature.of(
                        one.name(),
                        one.isMethod(),
                        one.parameters().stream()
                                .collect(Collectors.toMap(
                                        parameter -> parameter.getSimpleName().toString(),
                                        parameter -> parameter.asType().toString(),
                                        (a, b) -> a,
                                        LinkedHashMap::new)),
                        one.type().toString()));
    }

    private Optional<Entry> entry(Sayable one) {
        if (one.own()) {
            return Optional.empty();
        }
        String bare = one.isMethod()
                ? one.parameters().stream()
                        .map(parameter ->
                                TypeWords.shortName(erased(parameter.asType().toString())))
                        .collect(Collectors.joining(",", "(", ")"))
                : "";
        return index.of(one.element().getEnclosingElement().toString(), one.name() + bare);
    }

    private static String erased(String type) {
        return type.replaceAll("<.*>", "").replaceAll(".*\\.", "");
    }

    private List<Completion> types(String begun) {
        return index.all().stream()
                .filter(entry -> entry.name().isEmpty() && !entry.group().isEmpty())
                .filter(entry -> !entry.saidOf().contains(".") && entry.saidOf().startsWith(begun))
                .map(entry -> new Completion(
                        entry.saidOf(),
                        entry.saidOf() + " ",
                        "what kind of thing it is",
                        entry.sentence(),
                        Kind.TYPE,
                        false))
                .toList();
    }

    /** What javac makes of the place; while the letters of one word are typed it is the same. */
    private Scene scene(WorkbookSource source, int cell, int begin) {
        String text = scaffold.around(source, cell, begin);
        if (!text.equals(looked)) {
            scene = look(text);
            looked = text;
        }
        return scene;
    }

    private Scene look(String text) {
        JavaFileObject file = new SimpleJavaFileObject(URI.create("string:///Cells.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreErrors) {
                return text;
            }
        };
        try {
            return Scene.of((JavacTask) compiler.getTask(null, files, diagnostic -> {}, options, null, List.of(file)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The cells could not be looked at.", unreadable);
        }
    }

    private static String textOf(WorkbookSource source, int cell) {
        return source.cells().get(cell).text();
    }

    @Override
    public void close() {
        scaffold.close();
        try {
            files.close();
        } catch (IOException unclosed) {
            throw new UncheckedIOException("What the compiler had open could not be closed.", unclosed);
        }
    }
}
