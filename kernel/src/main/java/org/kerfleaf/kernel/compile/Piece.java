package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.Passage;

/**
 * One top-level piece of Java.
 *
 * @param passage the cell or expression it stands in
 * @param step the build step, 0 for none
 * @param live the ordinal of the live value it is, -1 in a cell
 * @param offset where it begins in the passage
 * @param text its text, with the last semicolon if that was left out
 * @param names what it declares
 */
public record Piece(Passage passage, int step, int live, int offset, String text, List<Declared> names) {
    private static final Pattern IMPORT = Pattern.compile("\\s*import\\b");

    /** Splits a cell; text that makes no sense is one piece up to the end of the cell. */
    public static List<Piece> of(SourceCodeAnalysis analysis, Passage passage) {
        List<Piece> pieces = new ArrayList<>();
        int at = begin(passage.text(), 0);
        while (at < passage.text().length()) {
            String rest = passage.text().substring(at);
            CompletionInfo info = analysis.analyzeCompletion(rest);
            boolean whole = info.completeness().isComplete();
            int length = whole ? rest.length() - info.remaining().length() : rest.length();
            String text = rest.substring(0, length);
            List<Declared> names = whole ? Declared.in(text) : Declared.inBroken(text);
            if (info.completeness() == Completeness.COMPLETE_WITH_SEMI) {
                text += ";";
            }
            pieces.add(new Piece(passage, 0, -1, at, text, names));
            at = begin(passage.text(), at + Math.max(1, length));
        }
        return pieces;
    }

    /** The whole of a live value; whether it is one expression is seen when it is compiled. */
    static Piece ofLive(Passage passage, int live) {
        int at = begin(passage.text(), 0);
        return new Piece(passage, 0, live, at, passage.text().substring(at), List.of());
    }

    /** The same piece in another place. */
    Piece in(Passage other, int otherStep) {
        return new Piece(other, otherStep, live, offset, text, names);
    }

    // Past blanks, comments and stray semicolons.
    private static int begin(String text, int from) {
        String masked = Masked.of(text);
        int at = from;
        while (at < masked.length() && (Character.isWhitespace(masked.charAt(at)) || masked.charAt(at) == ';')) {
            at++;
        }
        return at;
    }

    boolean isLive() {
        return live >= 0;
    }

    boolean isImport() {
        return IMPORT.matcher(Masked.of(text)).lookingAt();
    }

    /** The line of the file on which it begins. */
    int line() {
        return passage.lineAt(offset);
    }

    /** Says what is wrong at an offset of this piece. */
    CellProblem problem(int at, String words) {
        return passage.problem(offset + Math.max(0, Math.min(at, text.length())), words);
    }

    /** Refuses this piece for what is wrong at an offset of it. */
    Refusal refusal(int at, String words) {
        return new Refusal(live, Optional.empty(), problem(at, words));
    }

    /** Where a name stands in it as a word; its beginning if it does not. */
    int find(String name) {
        return Math.max(0, Masked.indexOf(Masked.of(text), name, 0));
    }

    /** How others call it: by its name, or by its line. */
    String called() {
        return names.isEmpty() ? "line " + line() : names.get(0).name();
    }
}
