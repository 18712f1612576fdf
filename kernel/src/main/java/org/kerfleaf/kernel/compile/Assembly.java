package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.compile.Bytecode.Access;
import org.kerfleaf.kernel.wire.ClassCode;

/**
 * Puts together what can run. Which piece needs which is read from the bytecode; JShell's own account of it leaves out
 * initialisers and bare expressions.
 */
final class Assembly {
    private final SourceCodeAnalysis analysis;
    private final CellClasses classes;
    private final Names names;
    private final Map<Piece, Refusal> refused;
    private final List<Made> made = new ArrayList<>();
    private final Map<String, Made> byClass = new HashMap<>();
    private final List<CellProblem> notes = new ArrayList<>();

    Assembly(
            SourceCodeAnalysis analysis,
            CellClasses classes,
            Names names,
            Map<Piece, List<Snippet>> snippets,
            Map<Piece, Refusal> refused) {
        this.analysis = analysis;
        this.classes = classes;
        this.names = names;
        this.refused = refused;
        snippets.forEach((piece, all) -> all.forEach(snippet -> take(piece, snippet)));
    }

    private void take(Piece piece, Snippet snippet) {
        SnippetWrapper wrapper = analysis.wrapper(snippet);
        if (wrapper == null || snippet.kind() == Snippet.Kind.IMPORT || snippet.kind() == Snippet.Kind.ERRONEOUS) {
            return;
        }
        Made one = Made.of(piece, snippet, wrapper, classes);
        byClass.putIfAbsent(one.className(), one);
        if (!refused.containsKey(piece)) {
            made.add(one);
        }
    }

    CompiledWorkbook assemble() {
        made.forEach(one -> misuse(one).ifPresent(refusal -> refused.putIfAbsent(one.piece(), refusal)));
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Made one : made) {
                if (!refused.containsKey(one.piece())) {
                    Optional<Refusal> waits = waits(one).or(() -> early(one));
                    waits.ifPresent(refusal -> refused.put(one.piece(), refusal));
                    changed |= waits.isPresent();
                }
            }
        }
        List<Made> running =
                made.stream().filter(one -> !refused.containsKey(one.piece())).toList();
        running.forEach(this::noteDropped);
        List<Refusal> refusals = refused.entrySet().stream()
                .sorted((a, b) -> Integer.compare(names.orderOf(a.getKey()), names.orderOf(b.getKey())))
                .map(Map.Entry::getValue)
                .toList();
        return new CompiledWorkbook(code(running), units(running), refusals, notes);
    }

    private Optional<Refusal> misuse(Made one) {
        for (Bytecode code : one.code()) {
            for (Access write : code.writes()) {
                Made owner = byClass.get(Bytecode.outermost(write.className()));
                String words = owner == null
                        ? "“%s” has its value already. One name, one value.".formatted(write.field())
                        : "“%s” has its value already, in line %d. One name, one value."
                                .formatted(write.field(), owner.piece().line());
                return refuse(one, write, words);
            }
            for (Access read : code.reads()) {
                Made owner = byClass.get(Bytecode.outermost(read.className()));
                if (owner != null && names.orderOf(owner.piece()) > names.orderOf(one.piece())) {
                    return refuse(
                            one,
                            read,
                            "“%s” is said further down, in line %d. Move that above this."
                                    .formatted(read.field(), owner.piece().line()));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Refusal> refuse(Made one, Access access, String words) {
        int lineBegin = one.offsetOf(access.line());
        int at = Masked.indexOf(Masked.of(one.piece().text()), access.field(), lineBegin);
        CellProblem problem = one.piece().problem(at < 0 ? lineBegin : at, words);
        return Optional.of(new Refusal(one.piece().live(), Optional.empty(), problem));
    }

    private Optional<Refusal> waits(Made one) {
        for (String touched : one.touches()) {
            Made owner = byClass.get(touched);
            if (owner == null) {
                // Compiled against a class that has been replaced: something it touches came together only further
                // down.
                return Optional.of(one.piece()
                        .refusal(0, "This needs something that is said further down. Move that above this."));
            }
            if (owner.piece() != one.piece() && refused.containsKey(owner.piece())) {
                int at = one.piece().find(owner.piece().called());
                return Optional.of(Diagnosis.waits(one.piece(), at, owner.piece(), names, refused));
            }
        }
        return Optional.empty();
    }

    // A method may stand above what it reads through others, but nothing that uses it may run before that has its
    // value.
    private Optional<Refusal> early(Made one) {
        if (!one.runs()) {
            return Optional.empty();
        }
        for (String direct : one.touches()) {
            Made used = byClass.get(direct);
            // What runs by itself and is right has been looked at already.
            Optional<Made> late = used == null || used.runs()
                    ? Optional.empty()
                    : reached(direct).stream()
                            .map(byClass::get)
                            .filter(other -> other.runs() && names.orderOf(other.piece()) > names.orderOf(one.piece()))
                            .findFirst();
            if (late.isPresent()) {
                Piece needed = late.get().piece();
                return Optional.of(one.piece()
                        .refusal(
                                one.piece().find(used.piece().called()),
                                "“%s” needs “%s”, which is said further down, in line %d. Move that above this."
                                        .formatted(used.piece().called(), needed.called(), needed.line())));
            }
        }
        return Optional.empty();
    }

    // In the order in which they are met, so that the same one is told every time.
    private Set<String> reached(String from) {
        Set<String> reached = new LinkedHashSet<>(Set.of(from));
        List<String> open = new ArrayList<>(reached);
        while (!open.isEmpty()) {
            for (String touched : byClass.get(open.remove(open.size() - 1)).touches()) {
                if (byClass.containsKey(touched) && reached.add(touched)) {
                    open.add(touched);
                }
            }
        }
        return reached;
    }

    private void noteDropped(Made one) {
        for (Bytecode code : one.code()) {
            for (Bytecode.Dropped dropped : code.dropped()) {
                notes.add(one.piece()
                        .problem(
                                one.offsetOf(dropped.line()),
                                "%s is made here and kept nowhere, so it does not count. Write: var all = repeat(4, i -> ...)."
                                        .formatted(capital(
                                                TypeWords.of(dropped.type().getSimpleName())))));
            }
        }
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private List<ClassCode> code(List<Made> running) {
        Map<String, CellClass> wanted = new TreeMap<>();
        running.forEach(one -> wanted.putAll(classes.of(one.className())));
        return wanted.entrySet().stream()
                .map(entry -> new ClassCode(entry.getKey(), entry.getValue().bytes()))
                .toList();
    }

    private List<CompiledUnit> units(List<Made> running) {
        Map<String, Integer> indexes = new LinkedHashMap<>();
        running.forEach(one -> indexes.putIfAbsent(one.className(), indexes.size()));
        Map<Integer, Set<Integer>> needs = new LinkedHashMap<>();
        List<Made> units = running.stream()
                .filter(one -> byClass.get(one.className()) == one)
                .toList();
        for (int i = 0; i < units.size(); i++) {
            Set<Integer> touched = new TreeSet<>();
            units.get(i).touches().forEach(name -> touched.add(indexes.get(name)));
            needs.put(i, touched);
        }
        List<CompiledUnit> compiled = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            compiled.add(units.get(i).unit(i, reach(i, needs)));
        }
        return compiled;
    }

    private static List<Integer> reach(int from, Map<Integer, Set<Integer>> needs) {
        Set<Integer> reached = new TreeSet<>();
        List<Integer> open = new ArrayList<>(needs.get(from));
        while (!open.isEmpty()) {
            int next = open.remove(open.size() - 1);
            if (next != from && reached.add(next)) {
                open.addAll(needs.get(next));
            }
        }
        return List.copyOf(reached);
    }
}
