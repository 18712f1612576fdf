package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * So many boards of each length on sale.
 *
 * @param counts by length on sale, shortest first
 * @param cost in the smallest coin, or the number of boards where a price is not known
 * @param boards how many in all
 * @param capacity their lengths together
 * @param last the highest index counted up, so that every mix is made once only
 */
record BoardMix(int[] counts, long cost, int boards, long capacity, int last) {
    /** Cheapest first, then fewest boards, then shortest in all, then the shorter boards. */
    static final Comparator<BoardMix> ORDER = Comparator.comparingLong(BoardMix::cost)
            .thenComparingInt(BoardMix::boards)
            .thenComparingLong(BoardMix::capacity)
            .thenComparing(BoardMix::counts, (a, b) -> Arrays.compare(b, a));

    private BoardMix plus(int index, long price, long length) {
        int[] more = counts.clone();
        more[index]++;
        return new BoardMix(more, cost + price, boards + 1, capacity + length, index);
    }

    /** Every mix once, in {@link #ORDER}, without end. */
    static final class Enumeration {
        private final long[] capacities;
        private final long[] prices;
        private final PriorityQueue<BoardMix> queue = new PriorityQueue<>(ORDER);

        Enumeration(long[] capacities, long[] prices) {
            this.capacities = capacities;
            this.prices = prices;
            queue.add(new BoardMix(new int[capacities.length], 0, 0, 0, 0));
        }

        BoardMix next() {
            BoardMix mix = queue.remove();
            for (int i = mix.last(); i < capacities.length; i++) {
                queue.add(mix.plus(i, prices[i], capacities[i]));
            }
            return mix;
        }
    }

    /** The capacity of each of its boards, longest first. */
    long[] each(long[] capacities) {
        List<Long> each = new ArrayList<>();
        for (int i = counts.length - 1; i >= 0; i--) {
            for (int n = 0; n < counts[i]; n++) {
                each.add(capacities[i]);
            }
        }
        return each.stream().mapToLong(Long::longValue).toArray();
    }
}
