package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.cell.Passage;
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
     * Says what is wrong with a text in quotes that stands in a line of its class's source.
     *
     * @param column the column of that text, from 1
     */
    public CellProblem problemInText(int line, String quoted, int column, String words) {
        Passage passage = piece.passage();
        int begin = piece.offset() + offsetOf(line);
        int at = passage.text().indexOf('"' + quoted + '"', begin);
        boolean inLine = at >= 0 && at < passage.endOfLine(begin);
        return inLine ? passage.problem(at + Math.max(1, column), words) : passage.problem(begin, words);
    }

    int offsetOf(int line) {
        return offsets[Math.max(0, Math.min(line, offsets.length - 1))];
    }

    @Override
    public String toString() {
        return unit + " " + Arrays.toString(offsets);
    }
}
