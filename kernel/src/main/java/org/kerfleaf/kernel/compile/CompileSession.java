package org.kerfleaf.kernel.compile;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;
import org.joda.money.Money;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.Evaluated.Seen;
import org.kerfleaf.kernel.compile.Evaluated.State;
import org.kerfleaf.words.Words;

/** One JShell session that compiles one workbook, and keeps up with its edits: see {@link Walk}. */
final class CompileSession implements AutoCloseable {
    /** So many evaluations make a session slow: JShell forgets nothing. */
    private static final int MOST_EVALUATIONS = 2000;

    private final CollectingControl control = new CollectingControl();
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final Splitting splitting;
    private final Set<Evaluated> alive = new LinkedHashSet<>();
    private final Map<Evaluated, List<State>> left = new HashMap<>();
    private int evaluations;
    private boolean exact = true;

    CompileSession() {
        shell = JShell.builder()
                .executionEngine(control.provider(), Map.of())
                .compilerOptions(
                        "-classpath", Jars.holding(Words.class, Money.class), "-proc:none", "-XDstringConcat=inline")
                .build();
        analysis = shell.sourceCodeAnalysis();
        splitting = new Splitting(analysis);
        Words.imports().forEach(shell::eval);
    }

    /** Compiles a workbook; nothing if only a new session would come to what a new session comes to. */
    Optional<CompiledWorkbook> compile(WorkbookSource source) {
        if (!exact || evaluations > MOST_EVALUATIONS) {
            return Optional.empty();
        }
        List<Piece> pieces = splitting.split(source);
        Names names = new Names(pieces);
        Map<Piece, Refusal> refused = new LinkedHashMap<>();
        pieces.forEach(piece -> names.refuse(piece).ifPresent(refusal -> refused.put(piece, refusal)));
        Walk walk = new Walk(this, pieces, refused.keySet());
        return walk.go().map(evaluated -> {
            exact = walk.isExact();
            left.keySet().retainAll(alive);
            alive.forEach(one -> left.put(one, states(one.snippets())));
            return assemble(names, evaluated, refused);
        });
    }

    private CompiledWorkbook assemble(Names names, Map<Piece, Evaluated> evaluated, Map<Piece, Refusal> refused) {
        Map<Piece, List<Snippet>> snippets = new LinkedHashMap<>();
        evaluated.forEach((piece, one) -> {
            if (one.unread().isEmpty()) {
                snippets.put(piece, one.snippets());
            } else {
                refused.put(piece, piece.refusal(0, one.unread()));
            }
        });
        Diagnosis diagnosis = new Diagnosis(shell, names, refused);
        snippets.forEach((piece, made) -> diagnosis.of(piece, made).ifPresent(refusal -> refused.put(piece, refusal)));
        return new Assembly(analysis, control.classes(), names, snippets, refused).assemble();
    }

    /** How many pieces were evaluated so far. */
    int evaluations() {
        return evaluations;
    }

    /** Everything evaluated that was not dropped. */
    Set<Evaluated> alive() {
        return alive;
    }

    /** Evaluates a piece. @param old what it replaces, null for nothing */
    Evaluated evaluate(Piece piece, Set<Mention> words, Seen seen, Evaluated old) {
        evaluations++;
        Evaluated one = evaluated(piece, words, seen);
        if (old != null) {
            drop(old);
        }
        alive.add(one);
        return one;
    }

    private Evaluated evaluated(Piece piece, Set<Mention> words, Seen seen) {
        if (piece.isLive() && !isOneExpression(piece)) {
            String unread = "Prose shows the value of one expression; this is none.";
            return new Evaluated(piece, words, seen, List.of(), unread, List.of());
        }
        try {
            List<Snippet> made = Stream.of(shell.eval(piece.text()))
                    .flatMap(List::stream)
                    .filter(event -> event.causeSnippet() == null)
                    .map(SnippetEvent::snippet)
                    .toList();
            return new Evaluated(piece, words, seen, made, "", states(made));
        } catch (RuntimeException | StackOverflowError | InternalError tooDeep) {
            // Seen with a thousand nested parentheses; the session lives on.
            String unread = "This is nested too deep to be read.";
            return new Evaluated(piece, words, seen, List.of(), unread, List.of());
        }
    }

    private boolean isOneExpression(Piece piece) {
        if (piece.text().isBlank()) {
            return false;
        }
        SourceCodeAnalysis.CompletionInfo info = analysis.analyzeCompletion(piece.text());
        boolean whole = info.completeness() == SourceCodeAnalysis.Completeness.COMPLETE
                || info.completeness() == SourceCodeAnalysis.Completeness.COMPLETE_WITH_SEMI
                || info.completeness() == SourceCodeAnalysis.Completeness.CONSIDERED_INCOMPLETE;
        return !whole || info.remaining().isBlank() && Declared.in(piece.text()).isEmpty();
    }

    /** The same evaluation, with what it waits for noted. */
    Evaluated sawBelow(Evaluated one, List<String> below) {
        Seen seen = new Seen(one.seen().imports(), one.seen().above(), below);
        Evaluated noted = new Evaluated(one.piece(), one.words(), seen, one.snippets(), one.unread(), one.states());
        alive.remove(one);
        alive.add(noted);
        return noted;
    }

    /** Takes a piece out of the session. */
    void drop(Evaluated one) {
        alive.remove(one);
        one.snippets().stream()
                .filter(snippet -> shell.status(snippet).isActive())
                .forEach(shell::drop);
    }

    List<State> states(List<Snippet> snippets) {
        return snippets.stream()
                .map(snippet -> new State(shell.status(snippet), className(snippet)))
                .toList();
    }

    private String className(Snippet snippet) {
        SnippetWrapper wrapper = analysis.wrapper(snippet);
        return wrapper == null ? "" : wrapper.fullClassName();
    }

    /** Whether it stands as it did when the last workbook was compiled. */
    boolean isAsLeft(Evaluated one) {
        return states(one.snippets()).equals(left.get(one));
    }

    /** The names that others can use of a piece. */
    Set<Mention> gives(Evaluated one) {
        Set<Mention> names = new HashSet<>();
        for (Snippet snippet : one.snippets()) {
            if (!shell.status(snippet).isActive()) {
                continue;
            }
            if (snippet instanceof VarSnippet value) {
                names.add(new Mention(value.name(), false));
            } else if (snippet instanceof MethodSnippet method) {
                names.add(new Mention(method.name(), true));
            } else if (snippet instanceof TypeDeclSnippet type) {
                names.add(new Mention(type.name(), false));
                names.add(new Mention(type.name(), true));
            }
        }
        return names;
    }

    /** How a piece stands and what others can use of it, as a text. */
    String usable(Evaluated one) {
        StringBuilder text = new StringBuilder();
        for (State state : states(one.snippets())) {
            text.append(state.status()).append(control.classes().version(state.className()));
        }
        return text.toString();
    }

    /** Whether a piece was compiled against a class that is no longer there. */
    boolean hasStale(List<Evaluated> all) {
        Set<String> there = new HashSet<>();
        all.forEach(one -> states(one.snippets()).forEach(state -> there.add(state.className())));
        return all.stream()
                .flatMap(one -> states(one.snippets()).stream())
                .filter(state -> state.status() == Snippet.Status.VALID)
                .flatMap(state -> control.classes().of(state.className()).values().stream())
                .anyMatch(code -> !there.containsAll(code.code().touches()));
    }

    @Override
    public void close() {
        shell.close();
    }
}
