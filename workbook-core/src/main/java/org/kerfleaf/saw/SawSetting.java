package org.kerfleaf.saw;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;

/**
 * One set-up of one saw, and the cuts that are made with it before it is changed.
 *
 * @param saw which tool, in words: {@code circular saw}, {@code mitre saw}, {@code jigsaw}, {@code router}
 * @param parts letters of the parts it cuts
 * @param cut which cut, in words: {@code top edge, long point inside}
 * @param faceUp which face is up: {@code good face down}
 * @param tilt of the blade from square; of a router zero
 * @param scale the mitre scale's number, which reads from square; empty for other saws
 * @param bladeDepth below the base, along the tilt; empty for a mitre saw
 * @param straightedge how far the straightedge stands from the line; empty if not clamped or not known
 * @param set further numbers: what a half-degree scale is set to, stop blocks, a router's passes
 * @param guides where the straightedge lies for each numbered cut of the sheets
 * @param notes what to watch, in whole sentences
 */
public record SawSetting(
        String saw,
        List<String> parts,
        String cut,
        String faceUp,
        Figure<Angle> tilt,
        Optional<Figure<Angle>> scale,
        Optional<Figure<Length>> bladeDepth,
        List<Straightedge> straightedge,
        List<Reading> set,
        List<Guide> guides,
        String notes) {
    public SawSetting {
        parts = List.copyOf(parts);
        straightedge = List.copyOf(straightedge);
        set = List.copyOf(set);
        guides = List.copyOf(guides);
    }

    /** A distance to the straightedge, and where it lies: {@code left of the saw, on the keep side}. */
    public record Straightedge(String where, Figure<Length> distance) {
        /** {@code left, keep}, for the head of a column. */
        public String brief() {
            return where.replace(" of the saw, on the ", ", ").replace(" side", "");
        }
    }

    /**
     * One size to which sheets are cut, with the straightedge set once for all its cuts.
     *
     * @param set from the edge of the piece in hand to the line
     * @param cuts numbered cuts of the sheets, in the order of cutting
     * @param straightedge from the same edge to the straightedge, each way it can be clamped
     */
    public record Guide(Length set, List<NumberedCut> cuts, List<Straightedge> straightedge) {
        public Guide {
            cuts = List.copyOf(cuts);
            straightedge = List.copyOf(straightedge);
        }

        /** {@code sheet 1: 7, 8, 9; sheet 2: 3}. */
        public String cutWords() {
            return cuts.stream()
                    .map(NumberedCut::sheet)
                    .distinct()
                    .map(this::ofSheet)
                    .collect(Collectors.joining("; "));
        }

        private String ofSheet(int sheet) {
            return "sheet %d: ".formatted(sheet)
                    + cuts.stream()
                            .filter(cut -> cut.sheet() == sheet)
                            .map(cut -> Integer.toString(cut.cut()))
                            .collect(Collectors.joining(", "));
        }
    }

    /** A cut by the numbers of its sheet, from 1, and of itself on that sheet. */
    public record NumberedCut(int sheet, int cut) {}
}
