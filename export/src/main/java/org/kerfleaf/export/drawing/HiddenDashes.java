package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Hidden lines as a drawing on paper can carry them (ISO 128-2, line 02): what runs so near to another line that the two would
 * fuse is left out, and so are small round holes behind the front; the rest has dashes that begin and end each line.
 */
final class HiddenDashes {
    /** Parallel lines nearer than this on paper fuse. */
    private static final double FUSES = 0.7;

    /** Round edges smaller than this on paper are noise behind a front. */
    private static final double SMALL_ROUND = 6;

    /** Shorter lines carry no dashes, on paper. */
    private static final double SHORT = 1.6;

    private static final double DASH = 2.2;
    private static final double GAP = 0.9;

    private HiddenDashes() {}

    /** The hidden ones among all lines of a view that are worth drawing at that scale. */
    static List<DrawnLine> worthDrawing(List<DrawnLine> lines, double times) {
        List<DrawnLine> kept =
                new ArrayList<>(lines.stream().filter(l -> !l.hidden()).toList());
        List<DrawnLine> hidden = lines.stream()
                .filter(l -> l.hidden() && !(l.arc() && extent(l) < SMALL_ROUND * times))
                .sorted(Comparator.comparingDouble(DrawnLine::length).reversed())
                .toList();
        List<DrawnLine> worth = new ArrayList<>();
        for (DrawnLine line : hidden) {
            for (DrawnLine rest : line.xy().length > 4 ? List.of(line) : apart(line, kept, FUSES * times)) {
                if (rest.length() >= SHORT * times) {
                    worth.add(rest);
                    kept.add(rest);
                }
            }
        }
        return worth;
    }

    private static double extent(DrawnLine line) {
        Rectangle2D box = Ink.open(line.xy()).getBounds2D();
        return Math.max(box.getWidth(), box.getHeight());
    }

    /** The stretches of a line that have no parallel line beside them. */
    private static List<DrawnLine> apart(DrawnLine line, List<DrawnLine> kept, double near) {
        double length = line.length();
        double dx = (line.x2() - line.x1()) / length;
        double dy = (line.y2() - line.y1()) / length;
        Spans beside = new Spans();
        for (DrawnLine other : kept) {
            for (int i = 2; i < other.xy().length; i += 2) {
                double ax = other.xy()[i - 2] - line.x1();
                double ay = other.xy()[i - 1] - line.y1();
                double bx = other.xy()[i] - line.x1();
                double by = other.xy()[i + 1] - line.y1();
                double offA = dx * ay - dy * ax;
                double offB = dx * by - dy * bx;
                double a = dx * ax + dy * ay;
                double b = dx * bx + dy * by;
                boolean parallel = Math.abs(offA - offB) < 0.02 * Math.abs(b - a);
                if (parallel && Math.abs(offA + offB) / 2 < near) {
                    beside.add(Math.min(a, b), Math.max(a, b));
                }
            }
        }
        List<DrawnLine> rest = new ArrayList<>();
        for (Spans.Span span : Spans.minus(List.of(new Spans.Span(0, length)), beside.joined(0))) {
            rest.add(DrawnLine.of(
                    line.x1() + dx * span.from(),
                    line.y1() + dy * span.from(),
                    line.x1() + dx * span.to(),
                    line.y1() + dy * span.to(),
                    true,
                    line.state(),
                    line.arc()));
        }
        return rest;
    }

    /** Paints a hidden line with whole dashes at both ends, two at the least. */
    static void paint(Ink ink, DrawnLine line, OnPaper paper) {
        double length = line.length() / paper.times();
        double dashes = Math.max(2, Math.rint((length + GAP) / (DASH + GAP)));
        double fit = length / (dashes * DASH + (dashes - 1) * GAP);
        ink.dashed(Ink.open(line.on(paper)), Ink.NARROW, (float) (DASH * fit), (float) (GAP * fit));
    }
}
