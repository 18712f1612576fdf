package org.kerfleaf.export.chart;

import java.util.Comparator;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;

/** Horizontal bars, longest first, the value at the right of each and the total below a rule. No axis, no grid, no legend. */
public final class Bars {
    private static final double LABELS = 46;
    private static final double GAP = 3;
    private static final double BAR = 4.6;
    private static final double LEADING = 4.9;
    private static final double PADDING = 1.1;

    private final List<Bar> bars;
    private final String total;

    /**
     * One bar.
     *
     * @param label in words, wrapped if long
     * @param amount what its length is proportional to, zero or more
     * @param value the amount as printed
     */
    public record Bar(String label, double amount, String value) {}

    /** Bars in any order, and the total as printed. */
    public Bars(List<Bar> bars, String total) {
        this.bars = bars.stream()
                .sorted(Comparator.comparingDouble(Bar::amount).reversed())
                .toList();
        this.total = total;
    }

    public double height() {
        return bars.stream().mapToDouble(Bars::rowHeight).sum() + LEADING + 2 * PADDING + 0.5;
    }

    private static double rowHeight(Bar bar) {
        return label(bar).size() * LEADING + 2 * PADDING;
    }

    private static List<Line> label(Bar bar) {
        return Rich.of(bar.label(), Style.LABEL).wrap(LABELS);
    }

    /** Paints from the upper left corner. */
    public void paint(Ink ink, double x, double y, double width) {
        double values = Math.max(
                valueWidth(total),
                bars.stream().mapToDouble(b -> valueWidth(b.value())).max().orElse(0));
        double room = width - LABELS - values - 2 * GAP;
        double most = bars.stream().mapToDouble(Bar::amount).max().orElse(1);
        Hatch[] fills = Hatch.values();
        double top = y;
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            double baseline = top + PADDING + 3.7;
            List<Line> label = label(bar);
            for (int k = 0; k < label.size(); k++) {
                ink.text(label.get(k), x, baseline + k * LEADING);
            }
            double length = most > 0 ? room * bar.amount() / most : 0;
            if (length > 0) {
                fills[Math.min(i, fills.length - 1)].fill(
                        ink, Ink.box(x + LABELS + GAP, baseline - 3.6, Math.max(length, 0.3), BAR));
            }
            ink.flushRight(Rich.of(bar.value(), Style.LABEL).line(), x + width, baseline);
            top += rowHeight(bar);
        }
        ink.line(x, top, x + width, top, Ink.WIDE);
        ink.text(Rich.of("Together", Style.LABEL_SEMI).line(), x, top + PADDING + 4.2);
        ink.flushRight(Rich.of(total, Style.LABEL_SEMI).line(), x + width, top + PADDING + 4.2);
    }

    private static double valueWidth(String value) {
        return Rich.of(value, Style.LABEL_SEMI).width();
    }
}
