package org.kerfleaf.export.chart;

import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.export.drawing.Ink;

/**
 * What becomes of a sheet, as shares of its area: parts, offcuts worth keeping, waste, and kerfs with the trimmed edges.
 *
 * @param parts share of the parts' rectangles, 0 to 1
 * @param keep share of the offcuts to keep
 * @param waste share of the other offcuts
 */
public record SheetUse(double parts, double keep, double waste) {
    /** The shares of one layout. */
    public static SheetUse of(SheetLayout layout) {
        double whole = area(
                layout.sheet().length().inMillimetres(), layout.sheet().width().inMillimetres());
        double parts = 0;
        for (SheetPlacement part : layout.placements()) {
            parts += area(part.length().inMillimetres(), part.width().inMillimetres());
        }
        double keep = 0;
        double waste = 0;
        for (Offcut offcut : layout.offcuts()) {
            double area = area(offcut.length().inMillimetres(), offcut.width().inMillimetres());
            keep += offcut.keep() ? area : 0;
            waste += offcut.keep() ? 0 : area;
        }
        return new SheetUse(parts / whole, keep / whole, waste / whole);
    }

    private static double area(double length, double width) {
        return length * width;
    }

    /** What kerfs and trimmed edges take. */
    public double sawn() {
        return Math.max(0, 1 - parts - keep - waste);
    }

    /** {@code 75 % parts, 12 % to keep, 9 % waste, 4 % kerf and trim}. */
    public String words() {
        return percent(parts) + " parts, " + percent(keep) + " to keep, " + percent(waste) + " waste, "
                + percent(sawn()) + " kerf and trim";
    }

    /** {@code 75 %}. */
    public static String percent(double share) {
        return BigDecimal.valueOf(share * 100).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    /** Paints one bar from its upper left corner: black parts, hatched keep, crossed waste, white kerf and trim. */
    public void paint(Ink ink, double x, double y, double length, double high) {
        double at = x;
        Hatch.BLACK.fill(ink, Ink.box(at, y, length * parts, high));
        at += length * parts;
        if (keep > 0) {
            Hatch.WIDE_DIAGONAL.fill(ink, Ink.box(at, y, length * keep, high));
        }
        at += length * keep;
        if (waste > 0) {
            Rectangle2D crossed = Ink.box(at, y, length * waste, high);
            ink.stroke(crossed, Ink.BLACK, Ink.NARROW);
            ink.line(at, y, crossed.getMaxX(), y + high, Ink.FINE);
            ink.line(at, y + high, crossed.getMaxX(), y, Ink.FINE);
        }
        ink.stroke(Ink.box(x, y, length, high), Ink.BLACK, Ink.NARROW);
    }
}
