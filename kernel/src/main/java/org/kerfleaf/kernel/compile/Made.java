package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;
import jdk.jshell.VarSnippet;
import org.kerfleaf.kernel.wire.Unit;

/**
 * A snippet with its class.
 *
 * @param offsets for every line of the class's source the offset of its first letter in the piece
 * @param code its class and what is nested in it
 */
record Made(Piece piece, Snippet snippet, String className, int[] offsets, List<Bytecode> code) {
    static Made of(Piece piece, Snippet snippet, SnippetWrapper wrapper, CellClasses classes) {
        String className = wrapper.fullClassName();
        List<Bytecode> code =
                classes.of(className).values().stream().map(CellClass::code).toList();
        return new Made(piece, snippet, className, offsets(wrapper), code);
    }

    private static int[] offsets(SnippetWrapper wrapper) {
        List<Integer> offsets = new ArrayList<>(List.of(0));
        String text = wrapper.wrapped();
        for (int begin = 0; begin >= 0 && begin < text.length(); ) {
            int at = begin;
            while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
                at++;
            }
            offsets.add(Math.max(0, wrapper.wrappedToSourcePosition(at)));
            int end = text.indexOf('\n', begin);
            begin = end < 0 ? -1 : end + 1;
        }
        return offsets.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Whether it does something when its turn comes. */
    boolean runs() {
        return code.stream().anyMatch(Bytecode::runs) && snippet.kind() != Snippet.Kind.METHOD;
    }

    int offsetOf(int line) {
        return offsets[Math.max(0, Math.min(line, offsets.length - 1))];
    }

    /** The classes of pieces that it names, its own included. */
    Set<String> touches() {
        Set<String> all = new TreeSet<>();
        code.forEach(one -> all.addAll(one.touches()));
        return all;
    }

    /** What the child runs of it. */
    CompiledUnit unit(int index, List<Integer> needs) {
        Unit.Value value = switch (snippet.kind()) {
            case VAR -> piece.isLive() ? Unit.Value.PROSE : Unit.Value.FIELD;
            case EXPRESSION -> piece.isLive() ? Unit.Value.PROSE : Unit.Value.RETURNED;
            default -> Unit.Value.NONE;
        };
        Optional<String> field =
                value == Unit.Value.FIELD ? Optional.of(((VarSnippet) snippet).name()) : Optional.empty();
        Unit unit = new Unit(
                index,
                className,
                className,
                runs(),
                value,
                field,
                piece.passage().cell(),
                piece.line(),
                piece.step(),
                needs);
        return new CompiledUnit(unit, piece, offsets);
    }
}
