package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Looks for a good layout: plain orders of the parts with every fit and split, rows in both directions, then small
 * changes to the best order, kept when they are not worse. Effort is counted in parts placed, and chance comes from a
 * fixed seed, so the same question has the same answer everywhere.
 */
final class SheetSearch {
    /** How many parts are placed in the changes to the best order, all layouts together. */
    private static final int PLACEMENTS = 150_000;

    /** How many changes are tried at most; small cut lists are through their orders by then. */
    private static final int MOST_CHANGES = 3_000;

    /** Plain orders: by falling area, length, width, longer side, shorter side, and both sides together. */
    private static final List<Comparator<Blank>> ORDERS = List.of(
            falling(part -> OffcutRule.area(part.length(), part.width())),
            falling(Blank::length),
            falling(Blank::width),
            falling(part -> Math.max(part.length(), part.width())),
            falling(part -> Math.min(part.length(), part.width())),
            falling(part -> part.length() + part.width()));

    private final List<Blank> parts;
    private final SheetSize sheet;
    private final long length;
    private final long width;
    private final int fewest;
    private Found best;
    private long chance = 0x9E3779B97F4A7C15L;

    /**
     * @param parts one by one
     * @param sheet what they are cut from
     * @param fewest a number of sheets below which it is impossible: until it is reached, the search tries to empty a sheet
     */
    SheetSearch(List<Blank> parts, SheetSize sheet, int fewest) {
        this.parts = parts;
        this.sheet = sheet;
        this.fewest = fewest;
        this.length = sheet.usableLength().nanometres() + sheet.kerf().nanometres();
        this.width = sheet.usableWidth().nanometres() + sheet.kerf().nanometres();
    }

    /** How a layout was come by, so that it can be changed a little. */
    private record Recipe(List<Blank> order, GreedyLayout.Fit fit, GreedyLayout.Split split) {}

    /** A layout and what it is worth: fewest sheets, largest offcut, fewest settings, fewest cuts. */
    private record Found(int sheets, double emptiest, double offcut, int settings, int cuts, List<Sawing> sawings) {
        boolean betterThan(Found other) {
            return other == null || compare(other) < 0;
        }

        /** While a sheet too many is used, the layout with the emptiest sheet comes closest to saving it. */
        boolean closerThan(Found other, int fewest) {
            return sheets == other.sheets && sheets > fewest ? emptiest <= other.emptiest : compare(other) <= 0;
        }

        private int compare(Found other) {
            if (sheets != other.sheets) {
                return Integer.compare(sheets, other.sheets);
            }
            if (offcut != other.offcut) {
                return Double.compare(other.offcut, offcut);
            }
            return settings != other.settings
                    ? Integer.compare(settings, other.settings)
                    : Integer.compare(cuts, other.cuts);
        }
    }

    /** The best layout found, a sawing for each sheet. */
    List<Sawing> run() {
        Recipe recipe = plainOrders();
        for (int variant = 0; variant < 4; variant++) {
            consider(RowLayout.of(parts, length, width, variant % 2 == 0, variant < 2));
        }
        change(recipe);
        return best.sawings();
    }

    private Recipe plainOrders() {
        Recipe recipe = null;
        Found bestPlain = null;
        for (Comparator<Blank> order : ORDERS) {
            List<Blank> sorted = parts.stream().sorted(order).toList();
            for (GreedyLayout.Fit fit : GreedyLayout.Fit.values()) {
                for (GreedyLayout.Split split : GreedyLayout.Split.values()) {
                    Recipe plain = new Recipe(sorted, fit, split);
                    Found found = consider(slices(plain));
                    if (found.betterThan(bestPlain)) {
                        bestPlain = found;
                        recipe = plain;
                    }
                }
            }
        }
        return recipe;
    }

    private void change(Recipe start) {
        int changes = Math.min(MOST_CHANGES, PLACEMENTS / parts.size());
        Recipe current = start;
        Found value = weigh(slices(current));
        for (int i = 0; i < changes; i++) {
            Recipe changed = changed(current);
            Found found = consider(slices(changed));
            if (found.closerThan(value, fewest)) {
                value = found;
                current = changed;
            }
        }
    }

    private Recipe changed(Recipe recipe) {
        GreedyLayout.Fit fit = recipe.fit();
        GreedyLayout.Split split = recipe.split();
        List<Blank> order = new ArrayList<>(recipe.order());
        int what = below(8);
        if (what == 0) {
            fit = GreedyLayout.Fit.values()[below(GreedyLayout.Fit.values().length)];
        }
        if (what <= 1) {
            split = GreedyLayout.Split.values()[below(GreedyLayout.Split.values().length)];
        }
        int moves = 1 + below(3);
        for (int move = 0; move < moves; move++) {
            order.add(below(order.size()), order.remove(below(order.size())));
        }
        return new Recipe(order, fit, split);
    }

    private List<Slice> slices(Recipe recipe) {
        return GreedyLayout.of(recipe.order(), length, width, recipe.fit(), recipe.split());
    }

    private Found consider(List<Slice> slices) {
        Found found = weigh(slices);
        if (found.betterThan(best)) {
            best = found;
        }
        return found;
    }

    private Found weigh(List<Slice> slices) {
        if (best != null && slices.size() > best.sheets()) {
            return new Found(slices.size(), emptiest(slices), 0, Integer.MAX_VALUE, Integer.MAX_VALUE, List.of());
        }
        List<Sawing> sawings = slices.stream().map(this::saw).toList();
        double offcut = 0;
        int cuts = 0;
        Set<Long> settings = new HashSet<>();
        for (Sawing sawing : sawings) {
            offcut = Math.max(offcut, sawing.largestOffcut());
            cuts += sawing.cuts();
            sawing.settings(settings);
        }
        return new Found(sawings.size(), emptiest(slices), offcut, settings.size(), cuts, sawings);
    }

    /** The area of the parts on the emptiest sheet. */
    private static double emptiest(List<Slice> slices) {
        return slices.stream().mapToDouble(Slice::partsArea).min().orElse(0);
    }

    /** Opens the sheet in the way that leaves the largest offcut, then by the fewest cuts. */
    private Sawing saw(Slice slice) {
        Sawing chosen = null;
        for (Sawing.FirstCut first : Sawing.FirstCut.values()) {
            Sawing sawing = Sawing.of(slice, sheet, first);
            if (chosen == null
                    || sawing.largestOffcut() > chosen.largestOffcut()
                    || sawing.largestOffcut() == chosen.largestOffcut() && sawing.cuts() < chosen.cuts()) {
                chosen = sawing;
            }
        }
        return chosen;
    }

    /** The next number of a fixed series (xorshift, Marsaglia 2003). */
    private int below(int bound) {
        chance ^= chance << 13;
        chance ^= chance >>> 7;
        chance ^= chance << 17;
        return (int) Math.floorMod(chance >>> 16, (long) bound);
    }

    private static Comparator<Blank> falling(ToDoubleFunction<Blank> size) {
        return Comparator.comparingDouble(size)
                .thenComparingDouble(part -> OffcutRule.area(part.length(), part.width()))
                .reversed()
                .thenComparingInt(Blank::kind);
    }
}
