package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts parts one after the other into the corner of the free rectangle that suits best, and splits what is left of it
 * by one edge-to-edge cut and another. Opens a new sheet when no rectangle holds the part.
 *
 * <p>Source of the idea: best-fit guillotine placement with split rules, common in the literature since Berkey and Wang
 * (1987); see also Fleszar (2013).
 */
final class GreedyLayout {
    /** Which free rectangle suits a part best; smaller is better. */
    enum Fit {
        LEAST_AREA,
        SHORT_SIDE,
        LONG_SIDE;

        double waste(long length, long width, long partLength, long partWidth) {
            return switch (this) {
                case LEAST_AREA -> (double) length * width - (double) partLength * partWidth;
                case SHORT_SIDE -> Math.min(length - partLength, width - partWidth);
                case LONG_SIDE -> Math.max(length - partLength, width - partWidth);
            };
        }
    }

    /** Which way the first cut beside a part runs. */
    enum Split {
        ACROSS,
        ALONG,
        WIDER_REST,
        NARROWER_REST,
        LARGER_REST,
        SMALLER_REST;

        boolean across(long length, long width, long partLength, long partWidth) {
            long beside = length - partLength;
            long above = width - partWidth;
            return switch (this) {
                case ACROSS -> true;
                case ALONG -> false;
                case WIDER_REST -> beside >= above;
                case NARROWER_REST -> beside < above;
                case LARGER_REST -> (double) beside * width >= (double) length * above;
                case SMALLER_REST -> (double) beside * width < (double) length * above;
            };
        }
    }

    private final long length;
    private final long width;
    private final Fit fit;
    private final Split split;
    private final List<Rest> sheets = new ArrayList<>();
    private final List<Rest> free = new ArrayList<>();

    private GreedyLayout(long length, long width, Fit fit, Split split) {
        this.length = length;
        this.width = width;
        this.fit = fit;
        this.split = split;
    }

    /** One slice for each sheet used. */
    static List<Slice> of(List<Blank> parts, long length, long width, Fit fit, Split split) {
        GreedyLayout layout = new GreedyLayout(length, width, fit, split);
        parts.forEach(layout::place);
        return layout.sheets.stream().map(Rest::slice).toList();
    }

    private void place(Blank part) {
        Rest best = null;
        boolean bestTurned = false;
        double least = Double.MAX_VALUE;
        for (Rest rest : free) {
            for (int turn = 0; turn < 2; turn++) {
                boolean turned = turn == 1;
                if (rest.holds(part, turned)) {
                    double waste =
                            fit.waste(rest.length, rest.width, part.alongSheet(turned), part.acrossSheet(turned));
                    if (waste < least) {
                        least = waste;
                        best = rest;
                        bestTurned = turned;
                    }
                }
            }
        }
        if (best == null) {
            best = new Rest(length, width);
            sheets.add(best);
            bestTurned = !part.upright() || part.turned() && wastesLessTurned(part);
        } else {
            free.remove(best);
        }
        best.fill(part, bestTurned);
    }

    private boolean wastesLessTurned(Blank part) {
        return fit.waste(length, width, part.width(), part.length())
                < fit.waste(length, width, part.length(), part.width());
    }

    /** A rectangle of a sheet: free, or with a part in its corner and two smaller ones beside and above it. */
    private final class Rest {
        private final long length;
        private final long width;
        private Blank part;
        private boolean turned;
        private boolean across;
        private Rest beside;
        private Rest above;

        Rest(long length, long width) {
            this.length = length;
            this.width = width;
        }

        boolean holds(Blank blank, boolean isTurned) {
            return blank.allows(isTurned)
                    && blank.alongSheet(isTurned) <= length
                    && blank.acrossSheet(isTurned) <= width;
        }

        void fill(Blank blank, boolean isTurned) {
            part = blank;
            turned = isTurned;
            long partLength = blank.alongSheet(isTurned);
            long partWidth = blank.acrossSheet(isTurned);
            across = split.across(length, width, partLength, partWidth);
            beside = rest(length - partLength, across ? width : partWidth);
            above = rest(across ? partLength : length, width - partWidth);
        }

        private Rest rest(long restLength, long restWidth) {
            Rest rest = new Rest(restLength, restWidth);
            if (restLength > 0 && restWidth > 0) {
                free.add(rest);
            }
            return rest;
        }

        private Slice slice() {
            if (part == null) {
                return null;
            }
            Slice corner = Slice.part(part, turned);
            return across
                    ? row(true, row(false, corner, above.slice()), beside.slice())
                    : row(false, row(true, corner, beside.slice()), above.slice());
        }

        private static Slice row(boolean across, Slice first, Slice second) {
            return second == null ? first : Slice.row(across, List.of(first, second));
        }
    }
}
