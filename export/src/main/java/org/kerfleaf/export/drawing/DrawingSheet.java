package org.kerfleaf.export.drawing;

import java.io.OutputStream;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;

/**
 * One drawing as a file of its own: the drawing, and under it a line with the workbook, what is drawn, the scale (ISO 5455), the unit
 * and, for views, the symbol of the projection (ISO 5456-2). As large as it needs to be, and no larger than the room on paper.
 */
public final class DrawingSheet {
    private static final double MARGIN = 4;
    private static final double FOOT = 9;
    private static final double LEADING = 4.2;
    private static final double SYMBOL = 11;
    private static final Style TITLE = Style.LABEL_SEMI.at(9.5);

    private final Plan plan;
    private final Drawings.Named named;
    private final Drawing drawing;
    private final Rich foot;
    private final double footWidth;

    private DrawingSheet(Plan plan, Drawings.Named named, double width, double height) {
        this.plan = plan;
        this.named = named;
        double footRoom = width - 2 * MARGIN - (isProjected() ? SYMBOL : 0);
        // The scale is known only once it is drawn: leave room for the longest words that a scale has.
        int most = Scale.standard().stream()
                .mapToInt(scale -> lines(foot(plan, named, scale), footRoom))
                .max()
                .orElse(1);
        drawing = named.within(width - 2 * MARGIN, height - 2 * MARGIN - FOOT - (most - 1) * LEADING);
        foot = foot(plan, named, drawing.scale());
        footWidth = Math.min(foot.width(), footRoom);
    }

    private static Rich foot(Plan plan, Drawings.Named named, Scale scale) {
        String more = named.isSized()
                ? ", " + scale.words(plan.style().unit()) + ", sizes in " + unit(plan.style()) + "."
                : ". " + named.says();
        return Rich.of(named.title() + ". ", TITLE).plus(plan.title() + more, Style.CAPTION);
    }

    private static int lines(Rich words, double width) {
        return words.wrap(width + 1e-6).size();
    }

    /** @param width @param height the room on paper, in millimetres */
    public static DrawingSheet of(Plan plan, Drawings.Named named, double width, double height) {
        return new DrawingSheet(plan, named, width, height);
    }

    private static String unit(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES ? "inches" : "millimetres";
    }

    private boolean isProjected() {
        return named.name().equals(Drawings.VIEWS);
    }

    private double footHigh() {
        return FOOT + (lines(foot, footWidth) - 1) * LEADING;
    }

    public double width() {
        return Math.max(drawing.width(), footWidth + (isProjected() ? SYMBOL : 0)) + 2 * MARGIN;
    }

    public double height() {
        return drawing.height() + footHigh() + 2 * MARGIN;
    }

    private void paint(Ink ink) {
        drawing.paint(ink, (width() - drawing.width()) / 2, MARGIN);
        double y = MARGIN + drawing.height() + 6.5;
        for (Line line : foot.wrap(footWidth + 1e-6)) {
            ink.text(line, MARGIN, y);
            y += LEADING;
        }
        if (isProjected()) {
            Signs.projection(ink, plan.style().unit(), width() - MARGIN - 9, MARGIN + drawing.height() + 3.5);
        }
    }

    /** As SVG; letters are outlines, so it looks the same anywhere, and title and description say what it shows. */
    public String svg() {
        return SvgSheet.of(
                named.title() + ". " + plan.title(),
                named.says(),
                width(),
                height(),
                SvgSheet.Letters.OUTLINES,
                this::paint);
    }

    /** As PNG. Leaves {@code out} open. */
    public void png(double dotsPerInch, OutputStream out) {
        PngSheet.write(width(), height(), dotsPerInch / 25.4, this::paint, out);
    }
}
