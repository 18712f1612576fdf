package org.kerfleaf.kernel.compile;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.joda.money.Money;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.Passage;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.words.Words;

/** One JShell session that compiles one workbook: every piece in document order, then every live value. */
final class CompileSession implements AutoCloseable {
    private final CollectingControl control = new CollectingControl();
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final Map<Piece, List<Snippet>> snippets = new LinkedHashMap<>();
    private final Map<Piece, Refusal> refused = new LinkedHashMap<>();

    CompileSession() {
        shell = JShell.builder()
                .executionEngine(control.provider(), Map.of())
                .compilerOptions(
                        "-classpath",
                        Jars.holding(Words.class, Money.class, JsonTypeInfo.class),
                        "-proc:none",
                        "-XDstringConcat=inline")
                .build();
        analysis = shell.sourceCodeAnalysis();
        Words.imports().forEach(shell::eval);
    }

    CompiledWorkbook compile(WorkbookSource source) {
        List<Piece> pieces = split(source);
        Names names = new Names(pieces);
        for (Piece piece : pieces) {
            if (refused.containsKey(piece)) {
                continue;
            }
            Optional<Refusal> beforehand = names.refuse(piece);
            if (beforehand.isPresent()) {
                refused.put(piece, beforehand.get());
            } else {
                evaluate(piece);
            }
        }
        Diagnosis diagnosis = new Diagnosis(shell, names, refused);
        snippets.forEach((piece, made) -> diagnosis.of(piece, made).ifPresent(refusal -> refused.put(piece, refusal)));
        return new Assembly(analysis, control.classes(), names, snippets, refused).assemble();
    }

    private List<Piece> split(WorkbookSource source) {
        List<Piece> pieces = new ArrayList<>();
        for (CellSource cell : source.cells()) {
            pieces.addAll(pieces(cell));
        }
        for (ProseSource live : source.liveValues()) {
            pieces.add(Piece.ofLive(Passage.of(live), live.ordinal()));
        }
        return pieces;
    }

    private List<Piece> pieces(CellSource cell) {
        Passage passage = Passage.of(cell);
        int open = Masked.openComment(cell.text());
        if (open < 0) {
            return Piece.of(analysis, passage, cell.step());
        }
        // JShell takes such a comment for the end of the cell, and a maker's lines would be gone without a word.
        String good = cell.text().substring(0, open);
        Piece comment = new Piece(passage, cell.step(), -1, open, cell.text().substring(open), List.of());
        refused.put(comment, refusal(comment, "The comment does not end: */ is missing."));
        List<Piece> pieces =
                new ArrayList<>(Piece.of(analysis, new Passage(passage.cell(), good, passage.line()), cell.step()));
        pieces.add(comment);
        return pieces;
    }

    private void evaluate(Piece piece) {
        if (piece.isLive() && !isOneExpression(piece)) {
            refused.put(piece, refusal(piece, "Prose shows the value of one expression; this is none."));
            return;
        }
        try {
            List<Snippet> made = Stream.of(shell.eval(piece.text()))
                    .flatMap(List::stream)
                    .filter(event -> event.causeSnippet() == null)
                    .map(SnippetEvent::snippet)
                    .toList();
            snippets.put(piece, made);
        } catch (RuntimeException | StackOverflowError | InternalError tooDeep) {
            // Seen with a thousand nested parentheses; the session lives on.
            refused.put(piece, refusal(piece, "This is nested too deep to be read."));
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

    private static Refusal refusal(Piece piece, String words) {
        return new Refusal(piece.live(), Optional.empty(), piece.problem(0, words));
    }

    @Override
    public void close() {
        shell.close();
    }
}
