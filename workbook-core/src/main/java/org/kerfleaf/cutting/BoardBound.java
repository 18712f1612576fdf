package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How few boards of one capacity can do, whatever the layout. Sizes and capacity have one kerf added each, which makes
 * the kerf exact: n pieces need n - 1 cuts, or n if the board is not used up.
 */
final class BoardBound {
    private BoardBound() {}

    /** A number of boards below which it is impossible, and why. */
    record Least(int boards, String because) {}

    static Least of(long[] sizes, long capacity) {
        if (sizes.length == 0) {
            return new Least(0, "There is nothing to cut.");
        }
        Least least = new Least(1, "Fewer is impossible: there is something to cut.");
        int byLength = byLength(sizes, capacity);
        if (byLength > least.boards()) {
            least = new Least(
                    byLength,
                    "Fewer is impossible: the pieces with their kerfs are longer together than %s."
                            .formatted(boards(byLength - 1)));
        }
        int halves = (int)
                Arrays.stream(sizes).filter(size -> size > capacity - size).count();
        if (halves > least.boards()) {
            least = new Least(
                    halves,
                    "Fewer is impossible: no two of the %d longest pieces fit on one board with a kerf between."
                            .formatted(halves));
        }
        int best = Math.max(byHalves(sizes, capacity), bySteps(sizes, capacity));
        if (best > least.boards()) {
            least = new Least(
                    best,
                    "Fewer is impossible: going by how often each length goes into a board, the pieces fill more than %s."
                            .formatted(boards(best - 1)));
        }
        return least;
    }

    /** L1: all sizes end to end, rounded up. */
    static int byLength(long[] sizes, long capacity) {
        return ceilDiv(Arrays.stream(sizes).sum(), capacity);
    }

    /**
     * L2: leave out all sizes below a; those above half a board need one each, those above capacity - a cannot share.
     *
     * <p>Source: Martello and Toth, Knapsack Problems (1990), chapter 8.
     */
    static int byHalves(long[] sizes, long capacity) {
        List<Long> thresholds = new ArrayList<>(List.of(0L));
        Arrays.stream(sizes).filter(size -> 2 * size <= capacity).distinct().forEach(thresholds::add);
        int best = 0;
        for (long a : thresholds) {
            int alone = 0;
            int halves = 0;
            long room = 0;
            long small = 0;
            for (long size : sizes) {
                if (size > capacity - a) {
                    alone++;
                } else if (2 * size > capacity) {
                    halves++;
                    room += capacity - size;
                } else if (size >= a) {
                    small += size;
                }
            }
            best = Math.max(best, alone + halves + Math.max(0, ceilDiv(small - room, capacity)));
        }
        return best;
    }

    /** The best of the dual feasible functions. */
    static int bySteps(long[] sizes, long capacity) {
        List<Long> distinct = Arrays.stream(sizes).distinct().boxed().toList();
        int best = 0;
        for (DualFeasible function : DualFeasible.family(capacity, distinct)) {
            long sum = Arrays.stream(sizes).map(function::of).reduce(0, Math::addExact);
            best = Math.max(best, ceilDiv(sum, function.denominator()));
        }
        return best;
    }

    static String boards(int count) {
        return count == 1 ? "one board" : count + " boards";
    }

    private static int ceilDiv(long a, long b) {
        return Math.toIntExact(-Math.floorDiv(-a, b));
    }
}
