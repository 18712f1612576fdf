package org.kerfleaf.cutting;

import java.util.Arrays;

/**
 * Quick ways to spread pieces over given boards. Each takes the sizes longest first and the boards' capacities, a kerf
 * added to all, and gives the board of each piece, or null if a piece found no place. Boards are filled in their order.
 *
 * <p>Sources of the ideas: first and best fit by falling size, Johnson (1973); filling one board after the other as
 * full as can be, Gupta and Ho (1999).
 */
final class BoardFill {
    /** How many sets of pieces are looked at for one board. */
    private static final int SETS = 4_000;

    private BoardFill() {}

    static int[] firstFit(long[] sizes, long[] boards) {
        long[] room = boards.clone();
        int[] boardOf = new int[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            int board = 0;
            while (board < room.length && room[board] < sizes[i]) {
                board++;
            }
            if (board == room.length) {
                return null;
            }
            room[board] -= sizes[i];
            boardOf[i] = board;
        }
        return boardOf;
    }

    static int[] bestFit(long[] sizes, long[] boards) {
        long[] room = boards.clone();
        int[] boardOf = new int[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            int best = -1;
            for (int board = 0; board < room.length; board++) {
                if (room[board] >= sizes[i] && (best < 0 || room[board] < room[best])) {
                    best = board;
                }
            }
            if (best < 0) {
                return null;
            }
            room[best] -= sizes[i];
            boardOf[i] = best;
        }
        return boardOf;
    }

    /** Fills one board after the other as full as can be; with {@code longestFirst} the longest piece left goes in. */
    static int[] fullest(long[] sizes, long[] boards, boolean longestFirst) {
        int[] boardOf = new int[sizes.length];
        Arrays.fill(boardOf, -1);
        int placed = 0;
        for (int board = 0; board < boards.length && placed < sizes.length; board++) {
            for (int piece : one(sizes, boardOf, boards[board], longestFirst)) {
                boardOf[piece] = board;
                placed++;
            }
        }
        return placed == sizes.length ? boardOf : null;
    }

    /** The pieces that fill one board best, of those whose board is still below zero. */
    static int[] one(long[] sizes, int[] boardOf, long capacity, boolean longestFirst) {
        return new OneBoard(sizes, boardOf, capacity, longestFirst).best();
    }

    /** The search for the fullest set of pieces for one board. */
    private static final class OneBoard {
        private final long[] sizes;
        private final int[] left;
        private final long capacity;
        private final int[] chosen;
        private int[] best = {};
        private long bestSum;
        private int looks;

        OneBoard(long[] sizes, int[] boardOf, long capacity, boolean longestFirst) {
            this.sizes = sizes;
            this.capacity = capacity;
            this.left = free(boardOf);
            this.chosen = new int[left.length];
            if (longestFirst) {
                for (int i = 0; i < left.length; i++) {
                    if (sizes[left[i]] <= capacity) {
                        chosen[0] = left[i];
                        search(i + 1, 1, sizes[left[i]]);
                        return;
                    }
                }
            } else {
                search(0, 0, 0);
            }
        }

        int[] best() {
            return best;
        }

        private static int[] free(int[] boardOf) {
            int[] free = new int[boardOf.length];
            int count = 0;
            for (int i = 0; i < boardOf.length; i++) {
                if (boardOf[i] < 0) {
                    free[count++] = i;
                }
            }
            return Arrays.copyOf(free, count);
        }

        private void search(int from, int count, long sum) {
            if (sum > bestSum) {
                bestSum = sum;
                best = Arrays.copyOf(chosen, count);
            }
            long passed = -1;
            for (int i = from; i < left.length && bestSum < capacity && looks < SETS; i++) {
                long size = sizes[left[i]];
                if (size != passed && sum + size <= capacity) {
                    looks++;
                    passed = size;
                    chosen[count] = left[i];
                    search(i + 1, count + 1, sum + size);
                }
            }
        }
    }
}
