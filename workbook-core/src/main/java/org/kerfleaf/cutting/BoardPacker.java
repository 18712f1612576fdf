package org.kerfleaf.cutting;

import java.util.Arrays;
import java.util.Optional;

/**
 * Whether given pieces can be cut from given boards: quick ways first, then every way, up to a fixed number of steps.
 * Sizes and capacities have a kerf added and come longest first.
 */
final class BoardPacker {
    /** What is known after the search. */
    enum Verdict {
        FITS,
        IMPOSSIBLE,
        NOT_KNOWN
    }

    private final long[] sizes;
    private long stepsLeft;

    BoardPacker(long[] sizesLongestFirst, long steps) {
        this.sizes = sizesLongestFirst;
        this.stepsLeft = steps;
    }

    /** The answer: a verdict, and with {@code FITS} the board of each piece. */
    record Answer(Verdict verdict, int[] boardOf) {}

    /** Tries boards longest first. Of several quick answers the one with the longest single rest is taken. */
    Answer pack(long[] boards, long stepsForThese) {
        Optional<int[]> quick = quick(boards);
        if (quick.isPresent()) {
            return new Answer(Verdict.FITS, quick.get());
        }
        long steps = Math.min(stepsForThese, stepsLeft);
        EveryWay search = new EveryWay(sizes, boards, steps);
        boolean found = search.place(0, 0);
        stepsLeft -= Math.min(steps, search.taken);
        if (found) {
            return new Answer(Verdict.FITS, search.boardOf);
        }
        return new Answer(search.taken > steps ? Verdict.NOT_KNOWN : Verdict.IMPOSSIBLE, null);
    }

    private Optional<int[]> quick(long[] boards) {
        long[] shortestFirst = reversed(boards);
        int[][] found = {
            BoardFill.firstFit(sizes, boards),
            BoardFill.bestFit(sizes, boards),
            BoardFill.fullest(sizes, boards, true),
            BoardFill.fullest(sizes, boards, false),
            mirrored(BoardFill.firstFit(sizes, shortestFirst), boards.length),
            mirrored(BoardFill.fullest(sizes, shortestFirst, true), boards.length)
        };
        int[] best = null;
        long longest = -1;
        for (int[] boardOf : found) {
            if (boardOf != null && longestRest(boardOf, boards) > longest) {
                longest = longestRest(boardOf, boards);
                best = boardOf;
            }
        }
        return Optional.ofNullable(best);
    }

    private long longestRest(int[] boardOf, long[] boards) {
        long[] room = boards.clone();
        for (int i = 0; i < boardOf.length; i++) {
            room[boardOf[i]] -= sizes[i];
        }
        return Arrays.stream(room).max().orElse(0);
    }

    private static long[] reversed(long[] values) {
        long[] reversed = new long[values.length];
        for (int i = 0; i < values.length; i++) {
            reversed[i] = values[values.length - 1 - i];
        }
        return reversed;
    }

    private static int[] mirrored(int[] boardOf, int boards) {
        return boardOf == null
                ? null
                : Arrays.stream(boardOf).map(board -> boards - 1 - board).toArray();
    }

    /**
     * Tries every board for every piece, longest piece first. Boards with equal room are one choice; equal pieces go
     * to boards in rising order; a branch ends when the room that no piece can use any more is more than there is to
     * spare. None of these loses a layout: of all that exist, the one whose list of boards is smallest is always kept.
     */
    private static final class EveryWay {
        private final long[] sizes;
        private final long[] room;
        private final long steps;
        private final long spare;
        private final int[] boardOf;
        private long taken;

        EveryWay(long[] sizes, long[] boards, long steps) {
            this.sizes = sizes;
            this.room = boards.clone();
            this.steps = steps;
            this.spare = Arrays.stream(boards).sum() - Arrays.stream(sizes).sum();
            this.boardOf = new int[sizes.length];
        }

        boolean place(int piece, int firstBoard) {
            if (piece == sizes.length) {
                return true;
            }
            if (++taken > steps || lost() > spare) {
                return false;
            }
            long size = sizes[piece];
            for (int board = firstBoard; board < room.length; board++) {
                if (room[board] >= size && !sameAsBefore(board, firstBoard)) {
                    room[board] -= size;
                    boardOf[piece] = board;
                    boolean equalFollows = piece + 1 < sizes.length && sizes[piece + 1] == size;
                    if (place(piece + 1, equalFollows ? board : 0)) {
                        return true;
                    }
                    room[board] += size;
                }
            }
            return false;
        }

        private boolean sameAsBefore(int board, int firstBoard) {
            for (int earlier = firstBoard; earlier < board; earlier++) {
                if (room[earlier] == room[board]) {
                    return true;
                }
            }
            return false;
        }

        private long lost() {
            long smallest = sizes[sizes.length - 1];
            long lost = 0;
            for (long left : room) {
                lost += left < smallest ? left : 0;
            }
            return lost;
        }
    }
}
