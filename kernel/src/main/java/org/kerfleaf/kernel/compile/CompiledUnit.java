package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import java.util.List;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.wire.Unit;

/** A unit ready to run, and the way back from its bytecode to the maker's text. */
public final class CompiledUnit {
    private final Unit unit;
    private final Piece piece;
    private final int[] offsets;

    /** @param offsets for every line of the class's source, counted from 1, an offset in the piece */
    CompiledUnit(Unit unit, Piece piece, int[] offsets) {
        this.unit = unit;
        this.piece = piece;
        this.offsets = offsets;
    }

    /** What the child runs. */
    public Unit unit() {
        return unit;
    }

    /** The ordinal of the live value it is, -1 in a cell. */
    public int live() {
        return piece.live();
    }

    /** How others call it: the name it declares, or its line. */
    public String called() {
        return piece.called();
    }

    /** The maker's text. */
    String text() {
        return piece.text();
    }

    /** Whether a class belongs to it. */
    public boolean owns(String className) {
        return Bytecode.outermost(className).equals(unit.className());
    }

    /** Says what is wrong with it as a whole. */
    public CellProblem problem(String words) {
        return piece.problem(0, words);
    }

    /** Whether its text uses a name. */
    public boolean mentions(String name) {
        return Masked.indexOf(Masked.of(piece.text()), name, 0) >= 0;
    }

    /** Says what is wrong where it uses a name. */
    public CellProblem problemAtName(String name, String words) {
        return piece.problem(piece.find(name), words);
    }

    /** Says what is wrong in a line of its class's source. */
    public CellProblem problemInLine(int line, String words) {
        return piece.problem(offsetOf(line), words);
    }

    /**
     * Says what is wrong with a text in quotes that a line of its class's source uses: it stands in that line, or in one
     * below.
     *
     * @param column the column of that text, from 1
     */
    public CellProblem problemInText(int line, String quoted, int column, String words) {
        int at = piece.text().indexOf('"' + quoted + '"', offsetOf(line));
        return piece.problem(at < 0 ? offsetOf(line) : at + Math.max(1, column), words);
    }

    /** Says what is wrong with the first of these texts in quotes that stands in a line of its class's source. */
    public CellProblem problemAtOneOf(int line, List<String> quoted, String words) {
        String within = lineText(line);
        return quoted.stream()
                .map(one -> within.indexOf('"' + one + '"'))
                .filter(at -> at >= 0)
                .findFirst()
                .map(at -> piece.problem(offsetOf(line) + at + 1, words))
                .orElseGet(() -> problemInLine(line, words));
    }

    /** Says what is wrong where a line of its class's source names something. */
    public CellProblem problemAtName(int line, String name, String words) {
        int at = Masked.indexOf(Masked.of(lineText(line)), name, 0);
        return at < 0 ? problemInLine(line, words) : piece.problem(offsetOf(line) + at, words);
    }

    // From where the line of the class's source begins to the end of that line in the cell.
    private String lineText(int line) {
        int begin = offsetOf(line);
        int end = piece.text().indexOf('\n', begin);
        return piece.text().substring(begin, end < 0 ? piece.text().length() : end);
    }

    CacheEntry.Kept kept() {
        return new CacheEntry.Kept(unit, piece.live(), piece.offset(), piece.text(), piece.names(), offsets);
    }

    int offsetOf(int line) {
        return offsets[Math.max(0, Math.min(line, offsets.length - 1))];
    }

    @Override
    public String toString() {
        return unit + " " + Arrays.toString(offsets);
    }
}
