package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.LongUnaryOperator;

/**
 * A dual feasible function: whatever sizes share one stock length, their values add up to one at most. So the values of
 * all pieces, added up, never exceed the number of stock lengths. Values are exact fractions with one denominator.
 *
 * <p>Source: Fekete and Schepers, Mathematical Programming 91 (2001) 11-31, and Mathematical Methods of Operations
 * Research 60 (2004) 311-329, who show that a product of two of them, one along each side, bounds sheets too; Lueker
 * (1983).
 *
 * @param numerator the value's numerator for a size from 0 to the capacity
 * @param denominator the common denominator, positive
 */
record DualFeasible(LongUnaryOperator numerator, long denominator) {
    /** Beyond this k the functions come so close to the plain share that they no longer gain anything. */
    private static final int LARGEST_K = 40;

    /** How many sizes serve as thresholds; with more of them, every so many is left out and the bound stays true. */
    private static final int MOST_THRESHOLDS = 80;

    static DualFeasible share(long capacity) {
        return new DualFeasible(x -> x, capacity);
    }

    /** u_k(x) = x if (k+1)x is whole, else floor((k+1)x)/k, for x as a share of the capacity. */
    static DualFeasible steps(int k, long capacity) {
        return new DualFeasible(
                x -> {
                    long scaled = Math.multiplyExact(x, k + 1L);
                    return scaled % capacity == 0 ? x * k : scaled / capacity * capacity;
                },
                Math.multiplyExact(capacity, (long) k));
    }

    /** U_e(x) = 1 above capacity - e, x from e up to there, 0 below e; e at most half the capacity. */
    static DualFeasible ignoringBelow(long e, long capacity) {
        return new DualFeasible(x -> x > capacity - e ? capacity : x < e ? 0 : x, capacity);
    }

    /** The plain share, u_1 to u_40, and U_e for sizes present (and their complements) up to half the capacity. */
    static List<DualFeasible> family(long capacity, Collection<Long> sizes) {
        List<DualFeasible> family = new ArrayList<>();
        family.add(share(capacity));
        for (int k = 1; k <= LARGEST_K; k++) {
            family.add(steps(k, capacity));
        }
        TreeSet<Long> thresholds = new TreeSet<>();
        for (long size : sizes) {
            thresholds.add(Math.min(size, capacity - size + 1));
        }
        List<Long> below =
                thresholds.stream().filter(e -> e > 0 && e <= capacity / 2).toList();
        int stride = below.size() / MOST_THRESHOLDS + 1;
        for (int i = 0; i < below.size(); i += stride) {
            family.add(ignoringBelow(below.get(i), capacity));
        }
        return family;
    }

    long of(long size) {
        return numerator.applyAsLong(size);
    }
}
