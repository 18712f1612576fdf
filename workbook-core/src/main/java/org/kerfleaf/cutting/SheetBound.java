package org.kerfleaf.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How few sheets can do, whatever the layout, edge to edge or not. Lengths and widths carry a kerf each.
 *
 * <p>Three reasons are tried: area; parts no two of which share a sheet; and products of a dual feasible function along
 * the sheet with one across it (Fekete and Schepers 2004). A part that may turn counts the smaller of its two products,
 * which keeps the bound true however it lies.
 */
final class SheetBound {
    /** A number of sheets below which it is impossible, and why. */
    record Least(int sheets, String because) {}

    /** From how many parts, the largest first, a set of parts that keep apart is grown. */
    private static final int SEEDS = 100;

    private static final int MOST_NAMES = 6;

    private final List<Blank> parts;
    private final Map<Blank, Integer> counts = new LinkedHashMap<>();
    private final long length;
    private final long width;

    SheetBound(List<Blank> parts, long length, long width) {
        this.parts = parts;
        this.length = length;
        this.width = width;
        parts.forEach(part -> counts.merge(part, 1, Integer::sum));
    }

    Least least() {
        if (parts.isEmpty()) {
            return new Least(0, "There is nothing to cut.");
        }
        Least least = new Least(1, "Fewer is impossible: there is something to cut.");
        int area = byArea();
        if (area > least.sheets()) {
            least = new Least(
                    area,
                    "Fewer is impossible: the parts with their kerfs cover more than %s.".formatted(sheets(area - 1)));
        }
        List<Blank> apart = apart();
        if (apart.size() > least.sheets()) {
            least = new Least(
                    apart.size(), "Fewer is impossible: no two of these fit on one sheet: %s.".formatted(names(apart)));
        }
        int steps = bySteps();
        if (steps > least.sheets()) {
            least = new Least(
                    steps,
                    "Fewer is impossible: going by how often each length and width goes into the sheet, the parts fill more than %s."
                            .formatted(sheets(steps - 1)));
        }
        return least;
    }

    int byArea() {
        return weighed(
                weights(List.of(DualFeasible.share(length)), Blank::alongSheet).get(0),
                weights(List.of(DualFeasible.share(width)), Blank::acrossSheet).get(0),
                0);
    }

    /** The best product of two dual feasible functions. */
    int bySteps() {
        Set<Long> along = new TreeSet<>();
        Set<Long> across = new TreeSet<>();
        for (Blank part : counts.keySet()) {
            for (int turn = 0; turn < 2; turn++) {
                if (part.allows(turn == 1)) {
                    along.add(part.alongSheet(turn == 1));
                    across.add(part.acrossSheet(turn == 1));
                }
            }
        }
        List<Weights> alongSheet = weights(DualFeasible.family(length, along), Blank::alongSheet);
        List<Weights> acrossSheet = weights(DualFeasible.family(width, across), Blank::acrossSheet);
        int best = 0;
        for (Weights one : alongSheet) {
            for (Weights other : acrossSheet) {
                best = Math.max(best, weighed(one, other, best));
            }
        }
        return best;
    }

    /** A function's value for every kind of part, as it lies upright and turned. */
    private record Weights(long[][] values, long denominator) {}

    private interface Side {
        long of(Blank part, boolean turned);
    }

    private List<Weights> weights(List<DualFeasible> family, Side side) {
        List<Weights> weights = new ArrayList<>();
        for (DualFeasible function : family) {
            long[][] values = new long[counts.size()][2];
            int i = 0;
            for (Blank part : counts.keySet()) {
                for (int turn = 0; turn < 2; turn++) {
                    // A way the part may not lie never counts: the other way's value stands for both.
                    boolean turned = part.allows(turn == 1) ? turn == 1 : turn == 0;
                    values[i][turn] = function.of(side.of(part, turned));
                }
                i++;
            }
            weights.add(new Weights(values, function.denominator()));
        }
        return weights;
    }

    /** The sum of the products, rounded up; 0 if it clearly does not exceed the best so far. */
    private int weighed(Weights along, Weights across, int best) {
        double about = 0;
        int i = 0;
        for (int count : counts.values()) {
            double upright = (double) along.values[i][0] * across.values[i][0];
            double turned = (double) along.values[i][1] * across.values[i][1];
            about += count * Math.min(upright, turned);
            i++;
        }
        // The double only skips what is far from gaining; the value itself is exact.
        if (about / along.denominator / across.denominator < best - 1e-6) {
            return 0;
        }
        BigInteger sum = BigInteger.ZERO;
        i = 0;
        for (int count : counts.values()) {
            BigInteger upright = product(along.values[i][0], across.values[i][0]);
            BigInteger turned = product(along.values[i][1], across.values[i][1]);
            sum = sum.add(upright.min(turned).multiply(BigInteger.valueOf(count)));
            i++;
        }
        BigInteger one = product(along.denominator, across.denominator);
        return sum.add(one).subtract(BigInteger.ONE).divide(one).intValueExact();
    }

    private static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }

    /** A large set of parts no two of which share a sheet, grown from each of the larger parts in turn. */
    private List<Blank> apart() {
        List<Blank> largestFirst = parts.stream()
                .sorted(Comparator.comparingDouble((Blank part) -> OffcutRule.area(part.length(), part.width()))
                        .reversed()
                        .thenComparingInt(Blank::kind))
                .toList();
        List<Blank> best = List.of();
        for (Blank seed : largestFirst.stream().distinct().limit(SEEDS).toList()) {
            List<Blank> set = new ArrayList<>(List.of(seed));
            boolean seedPassed = false;
            for (Blank part : largestFirst) {
                if (!seedPassed && part.equals(seed)) {
                    seedPassed = true;
                } else if (set.stream().noneMatch(other -> share(part, other))) {
                    set.add(part);
                }
            }
            if (set.size() > best.size()) {
                best = set;
            }
        }
        return best;
    }

    private boolean share(Blank one, Blank other) {
        for (int turns = 0; turns < 4; turns++) {
            boolean oneTurned = turns % 2 == 1;
            boolean otherTurned = turns / 2 == 1;
            if (one.allows(oneTurned)
                    && other.allows(otherTurned)
                    && (one.alongSheet(oneTurned) + other.alongSheet(otherTurned) <= length
                            || one.acrossSheet(oneTurned) + other.acrossSheet(otherTurned) <= width)) {
                return true;
            }
        }
        return false;
    }

    private static String names(List<Blank> parts) {
        List<String> words =
                PartNames.counted(parts.stream().map(Blank::part).sorted().toList());
        return words.size() > MOST_NAMES ? parts.size() + " of the larger parts" : PartNames.list(words);
    }

    static String sheets(int count) {
        return count == 1 ? "one sheet" : count + " sheets";
    }
}
