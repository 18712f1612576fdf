package org.kerfleaf.cutting;

import java.util.Arrays;

/**
 * What any mix of boards must offer: for every length on sale, the pieces too long for all shorter boards need enough
 * boards of that length or more, in length and in number. Passing these is necessary, not sufficient.
 */
final class BoardNeeds {
    private final long[] capacities;
    private final long[] lengthFrom;
    private final int[] boardsFrom;
    private final BoardBound.Least least;

    /**
     * @param sizes of the pieces, longest first, with a kerf each
     * @param capacities of the boards, shortest first, with a kerf each
     */
    BoardNeeds(long[] sizes, long[] capacities) {
        this.capacities = capacities;
        this.lengthFrom = new long[capacities.length];
        this.boardsFrom = new int[capacities.length];
        long longest = capacities[capacities.length - 1];
        for (int i = 0; i < capacities.length; i++) {
            long tooShort = i == 0 ? 0 : capacities[i - 1];
            long[] only = Arrays.stream(sizes).filter(size -> size > tooShort).toArray();
            lengthFrom[i] = Arrays.stream(only).sum();
            boardsFrom[i] = BoardBound.of(only, longest).boards();
        }
        this.least = BoardBound.of(sizes, longest);
    }

    /** How few boards could do if all were the longest. */
    BoardBound.Least least() {
        return least;
    }

    boolean tooShort(BoardMix mix) {
        long length = 0;
        int boards = 0;
        for (int i = capacities.length - 1; i >= 0; i--) {
            length += mix.counts()[i] * capacities[i];
            boards += mix.counts()[i];
            if (length < lengthFrom[i] || boards < boardsFrom[i]) {
                return true;
            }
        }
        return false;
    }
}
