package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A layout for cut lists too long to try mixes one by one: again and again the board that is cheapest for what can be cut
 * from it, filled as full as can be; in the end each board is changed for the cheapest that still holds its pieces.
 */
final class PlainBoards {
    private final long[] sizes;
    private final long[] capacities;
    private final long[] prices;

    private record Board(int size, int[] pieces) {}

    /** A mix and the board of each piece, boards longest first. */
    record Layout(BoardMix mix, int[] boardOf) {}

    PlainBoards(long[] sizesLongestFirst, long[] capacities, long[] prices) {
        this.sizes = sizesLongestFirst;
        this.capacities = capacities;
        this.prices = prices;
    }

    Layout layout() {
        int[] taken = new int[sizes.length];
        Arrays.fill(taken, -1);
        List<Board> boards = new ArrayList<>();
        for (int left = sizes.length; left > 0; ) {
            Board board = cheapest(taken);
            for (int piece : board.pieces()) {
                taken[piece] = 0;
            }
            left -= board.pieces().length;
            boards.add(changed(board));
        }
        boards.sort(Comparator.comparingInt(Board::size).reversed());
        return layout(boards);
    }

    /** The board with the lowest price for the length that goes into pieces. */
    private Board cheapest(int[] taken) {
        Board best = null;
        for (int size = 0; size < capacities.length; size++) {
            int[] pieces = BoardFill.one(sizes, taken, capacities[size], true);
            if (pieces.length > 0) {
                Board board = new Board(size, pieces);
                if (best == null || pricePerLength(board) < pricePerLength(best)) {
                    best = board;
                }
            }
        }
        return best;
    }

    private double pricePerLength(Board board) {
        return (double) prices[board.size()] / length(board);
    }

    private long length(Board board) {
        return Arrays.stream(board.pieces()).mapToLong(piece -> sizes[piece]).sum();
    }

    private Board changed(Board board) {
        long length = length(board);
        int best = board.size();
        for (int size = 0; size < capacities.length; size++) {
            boolean cheaper = prices[size] < prices[best];
            boolean shorter = prices[size] == prices[best] && capacities[size] < capacities[best];
            if (capacities[size] >= length && (cheaper || shorter)) {
                best = size;
            }
        }
        return new Board(best, board.pieces());
    }

    private Layout layout(List<Board> boards) {
        int[] boardOf = new int[sizes.length];
        int[] counts = new int[capacities.length];
        long cost = 0;
        long capacity = 0;
        for (int i = 0; i < boards.size(); i++) {
            Board board = boards.get(i);
            for (int piece : board.pieces()) {
                boardOf[piece] = i;
            }
            counts[board.size()]++;
            cost += prices[board.size()];
            capacity += capacities[board.size()];
        }
        return new Layout(new BoardMix(counts, cost, boards.size(), capacity, 0), boardOf);
    }
}
