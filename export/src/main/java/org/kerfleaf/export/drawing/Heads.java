package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.shape.Vector;

/**
 * Heads of fasteners as a picture shows them: a circle on the face on which the driver stands, and the fastener's centre line out
 * of it. A head that something hides is left out, and its line with it.
 */
final class Heads {
    static final double RADIUS = 0.85;

    /** How long a centre line is before the view shortens it, in millimetres of paper. */
    private static final double OUT = 6.5;

    /** So far off its face a head is surely not in it, in millimetres of the build. */
    private static final double OFF = 0.1;

    private Heads() {}

    /** On paper: the head's middle and the end of its centre line. */
    record Head(double x, double y, double endX, double endY) {
        double[] line() {
            return new double[] {x, y, endX, endY};
        }
    }

    static List<Head> seen(List<DrivenFastener> driven, Projection projection, View view, OnPaper paper) {
        List<Head> heads = new ArrayList<>();
        Vector eye = view.toEye();
        for (DrivenFastener fastener : driven) {
            Vector way = fastener.way();
            Vector from = fastener.head().minus(way.times(OFF));
            Vector to = from.minus(way.times(OUT * paper.times()));
            Projection.Edge line = new Projection.Edge(
                    -1, view.x(from), view.y(from), eye.dot(from), view.x(to), view.y(to), eye.dot(to), true, false);
            List<Spans.Span> hidden = HiddenLines.hidden(projection, line);
            double end = hidden.isEmpty() ? 1 : hidden.get(0).from();
            if (end > OFF / OUT / paper.times()) {
                heads.add(new Head(
                        paper.x(line.x1()),
                        paper.y(line.y1()),
                        paper.x(line.x1() + end * (line.x2() - line.x1())),
                        paper.y(line.y1() + end * (line.y2() - line.y1()))));
            }
        }
        return heads;
    }

    static void paint(Ink ink, Head head) {
        ink.dashed(Ink.open(head.line()), Ink.FINE, 2.4f, 0.6f, 0.3f, 0.6f);
        ink.fill(Ink.circle(head.x(), head.y(), RADIUS), Ink.WHITE);
        ink.stroke(Ink.circle(head.x(), head.y(), RADIUS), Ink.BLACK, Ink.NARROW);
    }
}
