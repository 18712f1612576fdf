package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;

/**
 * Front, top and right side on one sheet at one scale, in line with each other (ISO 5456-2): third angle for inches, so what is
 * seen from the right stands at the right and what is seen from above stands above; first angle for millimetres, so each stands on
 * the far side. No size twice.
 */
final class ThreeViews implements Drawing {
    private static final double APART = 9;

    private record Part(ViewDrawing view, double x, double y) {}

    private final List<Part> parts = new ArrayList<>();
    private final double width;
    private final double height;
    private final Scale scale;

    private ThreeViews(ViewDrawing front, ViewDrawing side, ViewDrawing top, boolean third) {
        scale = front.scale();
        double x = third ? 0 : side.width() + APART;
        double left = Math.max(front.left(), top.left());
        double above = Math.max(front.above(), side.above());
        double upper = third ? top.height() + APART : 0;
        double right = Math.max(front.width() - front.left(), top.width() - top.left());
        double lower = Math.max(front.height() - front.above(), side.height() - side.above());
        double frontHigh = upper + above + lower;
        parts.add(new Part(front, x + left - front.left(), upper + above - front.above()));
        parts.add(new Part(side, third ? left + right + APART : 0, upper + above - side.above()));
        parts.add(new Part(top, x + left - top.left(), third ? 0 : frontHigh + APART));
        width = x + left + right + (third ? APART + side.width() : 0);
        height = third ? frontHigh : frontHigh + APART + top.height();
    }

    /** The largest standard scale at which all three fit. */
    static ThreeViews of(Plan plan, List<PlacedPart> placed, Scene scene, Lettering words, double wide, double high) {
        Prepared front = Prepared.of(plan, placed, scene, View.FRONT, List.of());
        List<Measure> given = new ArrayList<>(front.sizes);
        Prepared side = Prepared.of(plan, placed, scene, View.SIDE, given);
        given.addAll(side.sizes);
        Prepared top = Prepared.of(plan, placed, scene, View.TOP, given);
        boolean third = plan.style().unit() == LengthUnit.INCHES;
        ThreeViews views = null;
        for (Scale scale : Scale.standard()) {
            views = new ThreeViews(front.at(scale, words), side.at(scale, words), top.at(scale, words), third);
            if (views.width <= wide && views.height <= high) {
                return views;
            }
        }
        return views;
    }

    private record Prepared(ViewDrawing.Prepared view, List<Measure> sizes) {
        static Prepared of(Plan plan, List<PlacedPart> placed, Scene scene, View view, List<Measure> given) {
            return new Prepared(
                    ViewDrawing.Prepared.of(scene, view), ViewSizes.of(plan, placed, scene.broken(), view, given));
        }

        ViewDrawing at(Scale scale, Lettering words) {
            return view.at(scale, sizes, words);
        }
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double height() {
        return height;
    }

    @Override
    public Scale scale() {
        return scale;
    }

    /** The room of each value, from the upper left corner. */
    List<Rectangle2D> values() {
        List<Rectangle2D> values = new ArrayList<>();
        for (Part part : parts) {
            part.view()
                    .values()
                    .forEach(v ->
                            values.add(Ink.box(part.x() + v.getX(), part.y() + v.getY(), v.getWidth(), v.getHeight())));
        }
        return values;
    }

    @Override
    public void paint(Ink ink, double x, double y) {
        parts.forEach(part -> part.view().paint(ink, x + part.x(), y + part.y()));
    }
}
