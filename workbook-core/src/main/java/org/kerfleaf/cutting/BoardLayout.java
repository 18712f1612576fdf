package org.kerfleaf.cutting;

import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * One board with what is cut from it, in the order of cutting from its left end.
 *
 * @param board the board
 * @param placements the pieces, each a kerf after the one before
 * @param offcut what is left after the last cut
 */
public record BoardLayout(BoardSize board, List<BoardPlacement> placements, Length offcut) {
    public BoardLayout {
        placements = List.copyOf(placements);
    }

    /** One piece on a board: where it starts, from the board's untrimmed left end, and how long it is. */
    public record BoardPlacement(String part, Length at, Length length) {}
}
