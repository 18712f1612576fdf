package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * A checked question in the solver's measures: nanometres with one kerf added to each piece and each board, which makes
 * the kerf exact.
 *
 * @param pieces one by one, longest first
 * @param sizes shortest first
 * @param byPrice whether every price is known, in one currency
 */
record BoardQuestion(List<Piece> pieces, List<BoardSize> sizes, boolean byPrice) {
    /** How many pieces are cut in one go; beyond it the search would no longer be quick. */
    private static final int MOST_PIECES = 2_000;

    /** One piece. */
    record Piece(String part, Length length) {}

    static BoardQuestion of(List<BoardPiece> pieces, List<BoardSize> sizes) {
        List<BoardSize> usable = checked(sizes);
        BoardSize longest = usable.get(usable.size() - 1);
        List<Piece> each = new ArrayList<>();
        for (BoardPiece piece : pieces) {
            if (!piece.length().isPositive() || piece.count() < 1) {
                throw new IllegalArgumentException(
                        "%s: %d of %s cannot be cut.".formatted(piece.part(), piece.count(), piece.length()));
            }
            if (piece.length().isLongerThan(longest.usable())) {
                throw PieceTooLargeException.of(piece, longest);
            }
            if (piece.count() > MOST_PIECES - each.size()) {
                throw new IllegalArgumentException("More than %d pieces in one cut list.".formatted(MOST_PIECES));
            }
            for (int n = 0; n < piece.count(); n++) {
                each.add(new Piece(piece.part(), piece.length()));
            }
        }
        each.sort(Comparator.comparing(Piece::length).reversed());
        return new BoardQuestion(List.copyOf(each), usable, BoardCutting.comparable(usable));
    }

    private static List<BoardSize> checked(List<BoardSize> sizes) {
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("No length on sale to cut boards from.");
        }
        Length kerf = sizes.get(0).kerf();
        for (BoardSize size : sizes) {
            if (!size.usable().isPositive()
                    || size.trim().isNegative()
                    || size.kerf().isNegative()) {
                throw new IllegalArgumentException("%s of %s, trim %s, kerf %s: nothing is left to cut."
                        .formatted(size.stock(), size.length(), size.trim(), size.kerf()));
            }
            if (!size.kerf().equals(kerf)) {
                throw new IllegalArgumentException("%s is cut with a kerf of %s and of %s: one saw cuts them all."
                        .formatted(size.stock(), kerf, size.kerf()));
            }
            if (size.price().filter(price -> price.isNegative()).isPresent()) {
                throw new IllegalArgumentException("%s of %s has a price below nothing: %s."
                        .formatted(size.stock(), size.length(), size.price().get()));
            }
        }
        return sizes.stream().sorted(Comparator.comparing(BoardSize::usable)).toList();
    }

    private long kerf() {
        return sizes.get(0).kerf().nanometres();
    }

    /** What each piece takes of a board, longest first. */
    long[] needs() {
        return pieces.stream()
                .mapToLong(piece -> piece.length().nanometres() + kerf())
                .toArray();
    }

    /** What each size offers, shortest first. */
    long[] capacities() {
        return sizes.stream()
                .mapToLong(size -> size.usable().nanometres() + kerf())
                .toArray();
    }

    /** What each size costs in the smallest coin; one each where prices are not known. */
    long[] prices() {
        return sizes.stream()
                .mapToLong(size -> byPrice ? size.price().orElseThrow().getAmountMinorLong() : 1)
                .toArray();
    }
}
