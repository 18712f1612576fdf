package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Sizes along one axis in lanes: short ones inside, longer ones outside, neighbours in one chain. A value stands in the middle of
 * its size; where that is too narrow, outside at the end that is nearer to the rim of the drawing, then at the other end; and if
 * a lane has no room for it, in the next lane. Places are millimetres of paper along the lane, in reading direction.
 */
final class DimensionLanes {
    /** What a value in the middle leaves to the strokes at each side. */
    private static final double BESIDE = 1.2;

    /** From a stroke to a value outside. */
    private static final double OUTSIDE = 1.6;

    /** A size to be placed. */
    record Wish(double from, double to, Line value) {
        double length() {
            return to - from;
        }
    }

    /**
     * A size in its lane.
     *
     * @param lane 0 is next to the drawing
     * @param valueAt where its value begins
     */
    record Placed(Wish wish, int lane, double valueAt) {
        double valueEnd() {
            return valueAt + wish.value().width();
        }

        /** Where its line begins: under a value outside it runs on. */
        double lineFrom() {
            return Math.min(wish.from(), valueAt);
        }

        double lineTo() {
            return Math.max(wish.to(), valueEnd());
        }
    }

    private final double least;
    private final double middle;
    private final List<List<Placed>> lanes = new ArrayList<>();

    private DimensionLanes(double least, double middle) {
        this.least = least;
        this.middle = middle;
    }

    /**
     * @param least no value may begin before this
     * @param middle of the drawing along the lanes
     */
    static List<Placed> of(List<Wish> wishes, double least, double middle) {
        DimensionLanes lanes = new DimensionLanes(least, middle);
        wishes.stream()
                .sorted(Comparator.comparingDouble(Wish::length).thenComparingDouble(Wish::from))
                .forEach(lanes::place);
        return lanes.lanes.stream().flatMap(List::stream).toList();
    }

    private void place(Wish wish) {
        // A longer size never stands within a shorter one that it spans.
        int lane = 0;
        for (int i = 0; i < lanes.size(); i++) {
            if (lanes.get(i).stream().anyMatch(p -> overlaps(wish, p.wish()))) {
                lane = i + 1;
            }
        }
        while (true) {
            if (lane == lanes.size()) {
                lanes.add(new ArrayList<>());
            }
            for (double at : places(wish)) {
                Placed placed = new Placed(wish, lane, at);
                if (at >= least && isFree(placed)) {
                    lanes.get(lane).add(placed);
                    return;
                }
            }
            lane++;
        }
    }

    private static boolean overlaps(Wish a, Wish b) {
        return Math.min(a.to(), b.to()) - Math.max(a.from(), b.from()) > 1e-6;
    }

    private double[] places(Wish wish) {
        double width = wish.value().width();
        double centred = (wish.from() + wish.to() - width) / 2;
        if (width + 2 * BESIDE <= wish.length()) {
            return new double[] {centred};
        }
        double before = wish.from() - OUTSIDE - width;
        double after = wish.to() + OUTSIDE;
        boolean low = (wish.from() + wish.to()) / 2 < middle;
        return low ? new double[] {before, after} : new double[] {after, before};
    }

    private boolean isFree(Placed placed) {
        for (Placed other : lanes.get(placed.lane())) {
            boolean linesMeet = Math.min(placed.wish().to(), other.wish().to())
                            - Math.max(placed.wish().from(), other.wish().from())
                    > 1e-6;
            if (linesMeet || valueMeets(placed, other) || valueMeets(other, placed)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the value of one comes too near to the size or the value of the other. */
    private static boolean valueMeets(Placed one, Placed other) {
        double from = one.valueAt() - BESIDE;
        double to = one.valueEnd() + BESIDE;
        return to > other.wish().from() + 1e-6 && from < other.wish().to() - 1e-6 && isOutside(one)
                || to > other.valueAt() && from < other.valueEnd();
    }

    private static boolean isOutside(Placed placed) {
        return placed.valueAt() < placed.wish().from()
                || placed.valueEnd() > placed.wish().to();
    }
}
