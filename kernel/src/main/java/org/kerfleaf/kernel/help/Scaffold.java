package org.kerfleaf.kernel.help;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.Passage;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.Declared;
import org.kerfleaf.kernel.compile.Masked;
import org.kerfleaf.kernel.compile.Piece;
import org.kerfleaf.words.Words;

/**
 * Makes of a workbook, up to a place in a cell, one class that javac can look at: methods and types become its members,
 * what is declared one method, and at the place stands a call of {@link #MARK}. A piece that cannot be read is left out.
 */
final class Scaffold implements AutoCloseable {
    /** The name at the place that is asked about. */
    static final String MARK = "here$";

    /** Used to split text into pieces, which runs nothing. */
    private final JShell shell = JShell.builder().executionEngine("local").build();

    private final SourceCodeAnalysis analysis = shell.sourceCodeAnalysis();
    private final Map<String, Said> known = new LinkedHashMap<>();

    /** A cell's text as members of a class and as statements of a method. */
    private record Said(String members, String statements) {}

    /** The class for a place of a cell: what stands there from {@code begin} on is not part of it. */
    String around(WorkbookSource source, int cell, int begin) {
        List<CellSource> above = source.cells().subList(0, cell);
        known.keySet().retainAll(above.stream().map(CellSource::text).toList());
        StringBuilder members = new StringBuilder();
        StringBuilder statements = new StringBuilder();
        for (CellSource one : above) {
            add(known.computeIfAbsent(one.text(), text -> said(pieces(text))), members, statements);
        }
        String before = source.cells().get(cell).text().substring(0, begin);
        List<Piece> pieces = pieces(before + MARK);
        int last = pieces.size() - 1;
        add(said(pieces.subList(0, last)), members, statements);
        statements.append(marked(before.substring(pieces.get(last).offset())));
        return String.join("\n", Words.imports()) + "\nclass Cells {\n" + members + "void cells() throws Throwable {\n"
                + statements + "\n}}\n";
    }

    private List<Piece> pieces(String text) {
        return Piece.of(analysis, new Passage(0, text, 1));
    }

    private static void add(Said said, StringBuilder members, StringBuilder statements) {
        members.append(said.members());
        statements.append(said.statements());
    }

    private static Said said(List<Piece> pieces) {
        StringBuilder members = new StringBuilder();
        StringBuilder statements = new StringBuilder();
        for (Piece piece : pieces) {
            if (isMember(piece.text())) {
                members.append(piece.text()).append('\n');
            } else {
                statements.append(declaration(piece)).append(";\n");
            }
        }
        return new Said(members.toString(), statements.toString());
    }

    /** As little of a piece as its names have their types by: the value is read only where the type is left to it. */
    private static String declaration(Piece piece) {
        String masked = Masked.of(piece.text());
        int equals = masked.indexOf('=');
        boolean typed = piece.names().size() == 1
                && equals > 0
                && !masked.stripLeading().startsWith("var ");
        boolean whole = !piece.names().isEmpty() && Writing.closing(masked).isEmpty();
        return typed ? piece.text().substring(0, equals) : whole ? piece.text() : "";
    }

    private static boolean isMember(String text) {
        return Declared.in(text).stream().anyMatch(one -> one.kind() != Declared.Kind.VARIABLE);
    }

    /** The piece that is being written, made whole; a method sees the names above it from within a class of its own. */
    private static String marked(String before) {
        String whole = before + MARK + "()" + Writing.closing(Masked.of(before)) + ";";
        return isMember(before) && before.contains("{") ? "class Here$ {\n" + whole + "\n}" : whole;
    }

    @Override
    public void close() {
        shell.close();
    }
}
