package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * Sizes of one axis below or left of a drawing (ISO 129-1): oblique strokes, the value above its line, readable from the bottom
 * or from the right, on a paper halo where other lines run.
 */
final class Dimensions {
    static final Style VALUE = new Style(Face.LABEL, 3.5 / Style.POINT, Ink.BLACK);

    private static final double FIRST_LANE = 9;
    private static final double LANE = 7;
    private static final double OVER_LINE = 1.1;
    private static final double PASSES = 1.6;
    private static final double CLEAR = 1;
    private static final double STROKE = 0.9;

    /** Extension lines nearer than this are one. */
    private static final double SAME = 0.02;

    /** How far figures reach over and under their baseline, as shares of the size; built fractions included. */
    private static final double ASCENT = 0.78;

    private static final double DESCENT = 0.14;

    private final List<DimensionLanes.Placed> placed;
    private final boolean upright;
    private final double edge;
    private final DoubleUnaryOperator outermost;

    /**
     * @param upright left of the drawing and read from the right; else below it
     * @param edge the drawing's left or lower edge on paper, from where lanes count
     * @param outermost where the drawing's last point is at a place along the lanes
     */
    Dimensions(
            List<DimensionLanes.Wish> wishes,
            boolean upright,
            double edge,
            double least,
            double middle,
            DoubleUnaryOperator outermost) {
        placed = DimensionLanes.of(wishes, least, middle);
        this.upright = upright;
        this.edge = edge;
        this.outermost = outermost;
    }

    /** Where a lane's line stands: x left of the drawing, y below it. */
    private double at(int lane) {
        double away = FIRST_LANE + LANE * lane;
        return upright ? edge - away : edge + away;
    }

    /** The room of each value on paper. */
    List<Rectangle2D> values() {
        List<Rectangle2D> boxes = new ArrayList<>();
        for (DimensionLanes.Placed p : placed) {
            double size = VALUE.size();
            double line = at(p.lane());
            double wide = p.wish().value().width();
            double high = (ASCENT + DESCENT) * size;
            double top = line - OVER_LINE - ASCENT * size;
            boxes.add(upright ? Ink.box(top, -p.valueEnd(), high, wide) : Ink.box(p.valueAt(), top, wide, high));
        }
        return boxes;
    }

    /** The room that all of it takes. */
    Rectangle2D box(Rectangle2D drawing) {
        Rectangle2D box = (Rectangle2D) drawing.clone();
        values().forEach(box::add);
        for (DimensionLanes.Placed p : placed) {
            double line = at(p.lane());
            double beyond = upright ? line - PASSES : line + PASSES;
            box.add(point(p.lineFrom() - STROKE, beyond));
            box.add(point(p.lineTo() + STROKE, beyond));
        }
        return box;
    }

    private java.awt.geom.Point2D point(double along, double across) {
        return upright
                ? new java.awt.geom.Point2D.Double(across, -along)
                : new java.awt.geom.Point2D.Double(along, across);
    }

    void paint(Ink ink) {
        extensions(ink);
        placed.forEach(p -> line(ink, p));
        List<Rectangle2D> values = values();
        for (Rectangle2D value : values) {
            ink.fill(
                    upright
                            ? Ink.box(value.getX(), value.getY() - 0.6, value.getWidth(), value.getHeight() + 1.2)
                            : Ink.box(value.getX() - 0.6, value.getY(), value.getWidth() + 1.2, value.getHeight()),
                    Ink.WHITE);
        }
        placed.forEach(p -> value(ink, p));
    }

    /** One extension line at each place, out to the last lane that needs it. */
    private void extensions(Ink ink) {
        NavigableMap<Double, Integer> last = new TreeMap<>();
        for (DimensionLanes.Placed p : placed) {
            for (double along : new double[] {p.wish().from(), p.wish().to()}) {
                Double near = last.floorKey(along + SAME);
                last.merge(near != null && near > along - SAME ? near : along, p.lane(), Math::max);
            }
        }
        last.forEach((along, lane) -> {
            double start = outermost.applyAsDouble(along);
            double end = at(lane);
            draw(ink, along, upright ? start - CLEAR : start + CLEAR, along, upright ? end - PASSES : end + PASSES);
        });
    }

    private void line(Ink ink, DimensionLanes.Placed p) {
        double line = at(p.lane());
        draw(ink, p.lineFrom(), line, p.lineTo(), line);
        for (double along : new double[] {p.wish().from(), p.wish().to()}) {
            if (upright) {
                ink.line(line - STROKE, -along - STROKE, line + STROKE, -along + STROKE, Ink.WIDE);
            } else {
                ink.line(along - STROKE, line + STROKE, along + STROKE, line - STROKE, Ink.WIDE);
            }
        }
    }

    private void draw(Ink ink, double along1, double across1, double along2, double across2) {
        if (upright) {
            ink.line(across1, -along1, across2, -along2, Ink.FINE);
        } else {
            ink.line(along1, across1, along2, across2, Ink.FINE);
        }
    }

    private void value(Ink ink, DimensionLanes.Placed p) {
        double baseline = at(p.lane()) - OVER_LINE;
        if (upright) {
            ink.turned(baseline, -p.valueAt(), () -> ink.text(p.wish().value(), 0, 0));
        } else {
            ink.text(p.wish().value(), p.valueAt(), baseline);
        }
    }
}
