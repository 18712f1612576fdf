package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;

/**
 * The build in a square view at a standard scale: what is seen in full lines, what is hidden dashed (ISO 128-2), sizes in lanes
 * below and left of it (ISO 129-1). Glass is drawn and hides nothing. Of a slice what is cut is hatched and what lies beyond is thin.
 */
public final class ViewDrawing implements Drawing {
    private static final double MARGIN = 0.5;

    /** Values left of the drawing keep clear of those below it. */
    private static final double CORNER = 3;

    private final View view;
    private final Scene scene;
    private final Scale scale;
    private final OnPaper paper;
    private final double high;
    private final List<DrawnLine> seen;
    private final List<DrawnLine> hidden;
    private final List<double[]> ends;
    private final Dimensions below;
    private final Dimensions beside;
    private final Rectangle2D box;

    private ViewDrawing(Prepared of, List<Measure> sizes, Lettering words, Scale scale) {
        view = of.view();
        scene = of.scene();
        this.scale = scale;
        double times = scale.times();
        Projection projection = of.projection();
        paper = new OnPaper(times, -projection.minX() / times, projection.maxY() / times);
        seen = of.lines().stream().filter(l -> !l.hidden()).toList();
        // A slice is there to show what is hidden otherwise.
        hidden = scene.cut().isEmpty() ? HiddenDashes.worthDrawing(of.lines(), times) : List.of();
        ends = scene.broken().ends(scene.shown(), view);
        double wide = (projection.maxX() - projection.minX()) / times;
        high = (projection.maxY() - projection.minY()) / times;
        below = new Dimensions(
                wishes(sizes, words, false), false, high, Double.NEGATIVE_INFINITY, wide / 2, this::lowest);
        beside = new Dimensions(wishes(sizes, words, true), true, 0, -high - CORNER, -high / 2, this::leftmost);
        box = beside.box(below.box(Ink.box(-MARGIN, -MARGIN, wide + 2 * MARGIN, high + 2 * MARGIN)));
    }

    /** A view of which all is known but the scale. */
    record Prepared(Scene scene, View view, Projection projection, List<DrawnLine> lines) {
        /** @throws IllegalArgumentException if the view does not look along an axis */
        static Prepared of(Scene scene, View view) {
            if (!view.isSquare()) {
                throw new IllegalArgumentException(
                        "View (%s): sizes can be given in front, side and top views only.".formatted(view.name()));
            }
            Projection projection = new Projection(scene.bodies(), view);
            return new Prepared(scene, view, projection, HiddenLines.of(projection));
        }

        ViewDrawing at(Scale scale, List<Measure> sizes, Lettering words) {
            return new ViewDrawing(this, sizes, words, scale);
        }

        ViewDrawing fitting(List<Measure> sizes, Lettering words, double maxWidth, double maxHeight) {
            ViewDrawing drawing = null;
            for (Scale scale : Scale.standard()) {
                double wide = (projection.maxX() - projection.minX()) / scale.times();
                double high = (projection.maxY() - projection.minY()) / scale.times();
                if (wide <= maxWidth && high <= maxHeight || scale.equals(Scale.smallest())) {
                    drawing = at(scale, sizes, words);
                    if (drawing.width() <= maxWidth && drawing.height() <= maxHeight) {
                        return drawing;
                    }
                }
            }
            return drawing;
        }
    }

    /**
     * A drawing at the largest standard scale at which it fits with its sizes.
     *
     * @param view one that looks along an axis
     * @param sizes to be given; those along the line of sight are left out
     * @throws IllegalArgumentException if the view does not look along an axis or there are no pieces
     */
    public static ViewDrawing of(
            List<Shown> shown, View view, List<Measure> sizes, Lettering words, double maxWidth, double maxHeight) {
        return Prepared.of(Scene.of(shown), view).fitting(sizes, words, maxWidth, maxHeight);
    }

    private List<DimensionLanes.Wish> wishes(List<Measure> sizes, Lettering words, boolean upright) {
        List<DimensionLanes.Wish> wishes = new ArrayList<>();
        for (Measure size : sizes) {
            double share = Broken.of(size.axis(), upright ? view.up() : view.right());
            if (Math.abs(share) > 0.5) {
                double a = along(share * drawn(size.axis(), size.from()), upright);
                double b = along(share * drawn(size.axis(), size.to()), upright);
                Line value = words.length(size.size(), Dimensions.VALUE).line();
                wishes.add(new DimensionLanes.Wish(Math.min(a, b), Math.max(a, b), value));
            }
        }
        return wishes;
    }

    /** A place along a lane in reading direction: to the right, or up. */
    private double along(double inView, boolean upright) {
        return upright ? -paper.y(inView) : paper.x(inView);
    }

    private double drawn(Axis axis, Length place) {
        return scene.broken().drawn(axis, place.inMillimetres());
    }

    /** The lowest point seen at that x on paper; the lower edge of the drawing where nothing is seen. */
    private double lowest(double x) {
        double lowest = Double.NEGATIVE_INFINITY;
        for (DrawnLine line : seen) {
            double[] xy = line.on(paper);
            for (int i = 2; i < xy.length; i += 2) {
                lowest = Math.max(lowest, farthest(xy[i - 2], xy[i - 1], xy[i], xy[i + 1], x));
            }
        }
        return lowest == Double.NEGATIVE_INFINITY ? high : lowest;
    }

    /** The leftmost point seen at that height, said upward; the left edge of the drawing where nothing is seen. */
    private double leftmost(double up) {
        double leftmost = Double.NEGATIVE_INFINITY;
        for (DrawnLine line : seen) {
            double[] xy = line.on(paper);
            for (int i = 2; i < xy.length; i += 2) {
                leftmost = Math.max(leftmost, farthest(xy[i - 1], -xy[i - 2], xy[i + 1], -xy[i], -up));
            }
        }
        return leftmost == Double.NEGATIVE_INFINITY ? 0 : -leftmost;
    }

    /** How far a line reaches across at a place along; negative infinity where it does not pass. */
    private static double farthest(double along1, double across1, double along2, double across2, double at) {
        double near = 0.05;
        if (at < Math.min(along1, along2) - near || at > Math.max(along1, along2) + near) {
            return Double.NEGATIVE_INFINITY;
        }
        if (Math.abs(along2 - along1) < 2 * near) {
            return Math.max(across1, across2);
        }
        double t = Math.min(1, Math.max(0, (at - along1) / (along2 - along1)));
        return across1 + t * (across2 - across1);
    }

    @Override
    public Scale scale() {
        return scale;
    }

    @Override
    public double width() {
        return box.getWidth();
    }

    @Override
    public double height() {
        return box.getHeight();
    }

    /** How far the view itself is from the drawing's left edge. */
    double left() {
        return -box.getX();
    }

    /** How far the view itself is from the drawing's upper edge. */
    double above() {
        return -box.getY();
    }

    /** The room of each value, from the drawing's upper left corner. */
    List<Rectangle2D> values() {
        List<Rectangle2D> values = new ArrayList<>(below.values());
        values.addAll(beside.values());
        return values.stream()
                .map(v -> Ink.box(v.getX() - box.getX(), v.getY() - box.getY(), v.getWidth(), v.getHeight()))
                .toList();
    }

    @Override
    public void paint(Ink ink, double x, double y) {
        ink.within(x - box.getX(), y - box.getY(), 1, () -> {
            hidden.forEach(line -> HiddenDashes.paint(ink, line, paper));
            seen.forEach(line -> seen(ink, line));
            scene.cut().paint(ink, paper, ends, scale.times() > 8 ? Ink.MIDDLE : Ink.WIDE);
            below.paint(ink);
            beside.paint(ink);
        });
    }

    private void seen(Ink ink, DrawnLine line) {
        if (Broken.isEnd(ends, line)) {
            ink.strokeRound(Broken.zigzag(line.on(paper), true), Ink.BLACK, Ink.NARROW);
        } else {
            ink.strokeRound(Ink.open(line.on(paper)), Ink.BLACK, width(line.state()));
        }
    }

    private double width(Shown.State state) {
        if (!scene.cut().isEmpty()) {
            return Ink.NARROW;
        }
        return switch (state) {
            case NEW -> 0.6;
            case EARLIER -> 0.2;
            case PLAIN -> scale.times() > 8 ? Ink.MIDDLE : Ink.WIDE;
        };
    }
}
