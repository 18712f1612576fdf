package org.kerfleaf.export.drawing;

import java.util.List;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.shape.Vector;

/** Guide lines with their words, which stand where no hole is. */
final class GuideWords {
    private static final Style STYLE = Style.CAPTION;
    private static final double OVER_LINE = 1;

    /** From a hole's middle to the words. */
    private static final double CLEAR = 2.6;

    private static final double[] ALONG = {0.5, 0.25, 0.75, 0.35, 0.65, 0.15, 0.85};

    private GuideWords() {}

    /** @param holes what the words must not run through, in the part's (u, v) */
    static void paint(Ink ink, GuideLine guide, List<Vector> holes, OnPaper paper) {
        double x1 = paper.x(guide.from().x());
        double y1 = paper.y(guide.from().y());
        double x2 = paper.x(guide.to().x());
        double y2 = paper.y(guide.to().y());
        ink.dashed(Ink.open(x1, y1, x2, y2), Ink.MIDDLE, 5f, 0.9f, 0.3f, 0.9f);
        Line says = Rich.of(guide.words(), STYLE).line();
        double length = StrictMath.hypot(x2 - x1, y2 - y1);
        for (double t : ALONG) {
            double half = says.width() / 2;
            boolean fits = t * length >= half + 1 && (1 - t) * length >= half + 1;
            double x = x1 + t * (x2 - x1);
            double y = y1 + t * (y2 - y1);
            if (fits && holes.stream().allMatch(h -> isClear(x, y, half, paper.x(h.x()), paper.y(h.y())))) {
                write(ink, says, x, y, Math.abs(y2 - y1) > Math.abs(x2 - x1));
                return;
            }
        }
    }

    private static boolean isClear(double x, double y, double half, double holeX, double holeY) {
        return StrictMath.hypot(holeX - x, holeY - y) > half + CLEAR;
    }

    private static void write(Ink ink, Line says, double x, double y, boolean upright) {
        if (upright) {
            ink.turned(x - OVER_LINE, y, () -> ink.centred(says, 0, 0));
        } else {
            ink.centred(says, x, y - OVER_LINE);
        }
    }
}
