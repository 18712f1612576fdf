package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.kerfleaf.measure.Length;

/**
 * The fewest cuts after which a sheet or board is in pieces that can be carried: edge to edge, where its layout cuts anyway, so that
 * none goes through a part. What is trimmed off stays on, since a shop's saw follows the factory edge.
 */
public final class ShopCutting {
    private ShopCutting() {}

    /** A piece in hand, from the sheet's corner. */
    public record Piece(Length x, Length y, Length length, Length width) {
        Length low(boolean across) {
            return across ? x : y;
        }

        Length high(boolean across) {
            return across ? x.plus(length) : y.plus(width);
        }
    }

    /**
     * The cuts in the order to make them, and the pieces they leave, largest first. Of two that run the same way the further one comes
     * first, so that both are measured from a factory edge.
     *
     * @param leavesTooLarge whether a piece without any part cannot be carried: it may be cut as one likes
     */
    public record Result(List<SheetCut> cuts, List<Piece> pieces, boolean leavesTooLarge) {}

    /**
     * The fewest of a sheet's cuts, at most so many, after which every piece with a part in it can be carried; empty where none do.
     *
     * @param carried whether a piece of that length and width can be
     */
    public static Optional<Result> of(SheetLayout layout, int most, Predicate<Piece> carried) {
        SheetSize sheet = layout.sheet();
        List<Piece> whole = List.of(new Piece(Length.ZERO, Length.ZERO, sheet.length(), sheet.width()));
        for (int cuts = 0; cuts <= most; cuts++) {
            Optional<Result> found = with(layout, whole, List.of(), cuts, carried);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Divides the first piece that cannot be carried, since no cut elsewhere would help it. */
    private static Optional<Result> with(
            SheetLayout layout, List<Piece> pieces, List<SheetCut> made, int left, Predicate<Piece> carried) {
        Optional<Piece> tooLarge = pieces.stream()
                .filter(piece -> !carried.test(piece) && holdsAPart(piece, layout))
                .findFirst();
        if (tooLarge.isEmpty()) {
            return Optional.of(new Result(
                    inOrder(made), largestFirst(pieces), !pieces.stream().allMatch(carried)));
        }
        if (left == 0) {
            return Optional.empty();
        }
        for (SheetCut cut : layout.cuts()) {
            if (parts(cut, tooLarge.get(), layout)) {
                List<Piece> after = new ArrayList<>(pieces);
                after.remove(tooLarge.get());
                after.addAll(halves(cut, tooLarge.get(), layout.sheet().kerf()));
                List<SheetCut> more = new ArrayList<>(made);
                more.add(cut);
                Optional<Result> found = with(layout, after, more, left - 1, carried);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a cut at that place, from edge to edge of a piece, goes through no part: where it is longer than the layout's, through offcuts. */
    private static boolean parts(SheetCut cut, Piece piece, SheetLayout layout) {
        boolean across = cut.across();
        Length end = cut.at().plus(layout.sheet().kerf());
        boolean within = cut.at().isLongerThan(piece.low(across)) && cut.at().isShorterThan(piece.high(across));
        return within
                && layout.placements().stream()
                        .map(placed -> new Piece(placed.x(), placed.y(), placed.length(), placed.width()))
                        .filter(part -> part.low(!across).isShorterThan(piece.high(!across))
                                && piece.low(!across).isShorterThan(part.high(!across)))
                        .noneMatch(part ->
                                part.low(across).isShorterThan(end) && cut.at().isShorterThan(part.high(across)));
    }

    private static boolean holdsAPart(Piece piece, SheetLayout layout) {
        return layout.placements().stream()
                .anyMatch(placed -> placed.x().isShorterThan(piece.high(true))
                        && piece.x().isShorterThan(placed.x().plus(placed.length()))
                        && placed.y().isShorterThan(piece.high(false))
                        && piece.y().isShorterThan(placed.y().plus(placed.width())));
    }

    private static List<SheetCut> inOrder(List<SheetCut> made) {
        boolean further = made.size() == 2
                && made.get(0).across() == made.get(1).across()
                && made.get(0).at().isShorterThan(made.get(1).at());
        return further ? List.of(made.get(1), made.get(0)) : made;
    }

    private static List<Piece> halves(SheetCut cut, Piece piece, Length kerf) {
        Length beyond = cut.at().plus(kerf);
        List<Piece> halves = new ArrayList<>();
        if (cut.across()) {
            halves.add(new Piece(piece.x(), piece.y(), cut.at().minus(piece.x()), piece.width()));
            halves.add(new Piece(beyond, piece.y(), piece.high(true).minus(beyond), piece.width()));
        } else {
            halves.add(new Piece(piece.x(), piece.y(), piece.length(), cut.at().minus(piece.y())));
            halves.add(new Piece(
                    piece.x(), beyond, piece.length(), piece.high(false).minus(beyond)));
        }
        halves.removeIf(half -> !half.length().isPositive() || !half.width().isPositive());
        return halves;
    }

    private static List<Piece> largestFirst(List<Piece> pieces) {
        return pieces.stream()
                .sorted(Comparator.comparing((Piece piece) -> piece.length().by(piece.width()))
                        .reversed())
                .toList();
    }

    // ---- boards ----------------------------------------------------------------------------------------------------

    /**
     * Where a board is cut between two of its parts, from its untrimmed left end, the furthest first, and the lengths that go home.
     *
     * @param leavesTooLong whether what is left over is too long: it may be cut as one likes
     */
    public record BoardResult(List<BoardCut> cuts, List<Length> pieces, boolean leavesTooLong) {}

    /** A cut between two parts. @param after the part it ends; @param before the part beyond it, empty for the offcut */
    public record BoardCut(Length at, String after, Optional<String> before) {}

    /** The fewest cuts between parts, at most so many, after which no piece is longer than that; empty where none do. */
    public static Optional<BoardResult> of(BoardLayout layout, int most, Length longest) {
        BoardSize board = layout.board();
        List<BoardCut> cuts = new ArrayList<>();
        List<Length> pieces = new ArrayList<>();
        Length from = Length.ZERO;
        while (board.length().minus(from).isLongerThan(longest) && holdsAPart(layout, from)) {
            Length begin = from;
            Optional<BoardCut> furthest = ends(layout).stream()
                    .filter(cut -> cut.at().isLongerThan(begin)
                            && !cut.at().minus(begin).isLongerThan(longest)
                            && cut.at().plus(board.kerf()).isShorterThan(board.length()))
                    .reduce((one, other) -> other);
            if (furthest.isEmpty() || cuts.size() == most) {
                return Optional.empty();
            }
            cuts.add(furthest.get());
            pieces.add(furthest.get().at().minus(from));
            from = furthest.get().at().plus(board.kerf());
        }
        Length rest = board.length().minus(from);
        pieces.add(rest);
        pieces.sort(Comparator.reverseOrder());
        Collections.reverse(cuts);
        return Optional.of(new BoardResult(cuts, pieces, rest.isLongerThan(longest)));
    }

    private static boolean holdsAPart(BoardLayout layout, Length from) {
        return layout.placements().stream().anyMatch(placed -> !placed.at().isShorterThan(from));
    }

    /** The end of every part, from the left. */
    private static List<BoardCut> ends(BoardLayout layout) {
        List<BoardCut> ends = new ArrayList<>();
        List<BoardLayout.BoardPlacement> parts = layout.placements();
        for (int i = 0; i < parts.size(); i++) {
            Optional<String> next =
                    i + 1 < parts.size() ? Optional.of(parts.get(i + 1).part()) : Optional.empty();
            ends.add(new BoardCut(
                    parts.get(i).at().plus(parts.get(i).length()), parts.get(i).part(), next));
        }
        return ends;
    }
}
