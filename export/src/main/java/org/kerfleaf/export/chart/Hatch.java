package org.kerfleaf.export.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.kerfleaf.export.drawing.Ink;

/** Fills that survive a photocopy, strongest first. Lines are cut to the rectangle, so that nothing needs a clip. */
enum Hatch {
    BLACK,
    WIDE_DIAGONAL,
    FINE_DIAGONAL,
    DOTS,
    LEVEL_LINES,
    EMPTY;

    /** Fills and outlines a rectangle. */
    void fill(Ink ink, Rectangle2D box) {
        switch (this) {
            case BLACK -> ink.fill(box, Ink.BLACK);
            case WIDE_DIAGONAL -> diagonals(ink, box, 1.5, 0.6, 1);
            case FINE_DIAGONAL -> diagonals(ink, box, 1.3, 0.22, -1);
            case DOTS -> dots(ink, box);
            case LEVEL_LINES -> level(ink, box);
            case EMPTY -> {}
        }
        ink.stroke(box, Ink.BLACK, Ink.NARROW);
    }

    /** Lines at 45 degrees: rising to the right for sense 1, falling for -1. */
    private static void diagonals(Ink ink, Rectangle2D box, double step, double width, int sense) {
        double high = box.getHeight();
        for (double foot = -high + step / 2; foot < box.getWidth(); foot += step) {
            double from = Math.max(0, -foot);
            double to = Math.min(high, box.getWidth() - foot);
            if (to > from) {
                ink.stroke(diagonal(box, foot, from, to, sense), Ink.BLACK, width);
            }
        }
    }

    private static Line2D diagonal(Rectangle2D box, double foot, double from, double to, int sense) {
        double y0 = sense > 0 ? box.getMaxY() : box.getMinY();
        return new Line2D.Double(box.getX() + foot + from, y0 - sense * from, box.getX() + foot + to, y0 - sense * to);
    }

    private static void dots(Ink ink, Rectangle2D box) {
        double step = 1.3;
        int row = 0;
        for (double y = box.getMinY() + 0.8; y < box.getMaxY() - 0.4; y += step, row++) {
            for (double x = box.getMinX() + 0.8 + row % 2 * step / 2; x < box.getMaxX() - 0.4; x += step) {
                ink.fill(Ink.circle(x, y, 0.26), Ink.BLACK);
            }
        }
    }

    private static void level(Ink ink, Rectangle2D box) {
        for (double y = box.getMinY() + 0.9; y < box.getMaxY() - 0.2; y += 0.9) {
            ink.line(box.getMinX(), y, box.getMaxX(), y, 0.2);
        }
    }
}
