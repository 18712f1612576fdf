package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Rain;
import org.kerfleaf.plan.RainMark;
import org.kerfleaf.rain.Way;
import org.kerfleaf.shape.Vector;

/**
 * The finished build from one corner with the ways of the water on it: arrows where it runs over a face, dotted lines where it falls,
 * double lines where it is dammed, and the numbers of what it finds; a number in an outline is on the far side.
 */
final class RainPicture {
    /** Arrows stand about so far apart, in millimetres of paper. */
    private static final double APART = 8;

    private static final double MARGIN = 7;
    private static final double LONGEST_FALL = 9;

    /** Marks nearer than this cover each other. */
    private static final double CLEAR = 6.4;

    private final Scale scale;
    private final OnPaper paper;
    private final Scene scene;
    private final View view;
    private final Projection projection;
    private final List<ViewFace> fills;
    private final List<DrawnLine> lines;
    private final List<double[]> ends;
    private final List<Drawn> ways = new ArrayList<>();
    private final List<Number> numbers = new ArrayList<>();
    private final double width;
    private final double height;

    private record Drawn(Way.Kind kind, double x1, double y1, double x2, double y2, boolean whole) {}

    /** @param x and y where the number stands; @param dotX and dotY what it points at */
    private record Number(int number, boolean seen, boolean open, double x, double y, double dotX, double dotY) {}

    RainPicture(Scene scene, View view, Rain rain, double maxWidth, double maxHeight) {
        this.scene = scene;
        this.view = view;
        projection = new Projection(scene.bodies(), view);
        double wide = projection.maxX() - projection.minX();
        double high = projection.maxY() - projection.minY();
        scale = Scale.filling(
                Length.ofMillimetres(wide), Length.ofMillimetres(high), maxWidth - 2 * MARGIN, maxHeight - 2 * MARGIN);
        width = wide / scale.times() + 2 * MARGIN;
        height = high / scale.times() + 2 * MARGIN;
        paper = new OnPaper(
                scale.times(), MARGIN - projection.minX() / scale.times(), MARGIN + projection.maxY() / scale.times());
        fills = Fills.inOrder(projection);
        lines = HiddenLines.seen(projection);
        ends = scene.broken().ends(scene.shown(), view);
        rain.ways().stream()
                .sorted(Comparator.comparingDouble(
                        (Way way) -> -way.length() * (1 + way.across().length())))
                .forEach(this::way);
        rain.marks().forEach(this::number);
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    Scale scale() {
        return scale;
    }

    /** Whether some place of a mark is in sight. */
    boolean sees(int number) {
        return numbers.stream().anyMatch(n -> n.number() == number && n.seen());
    }

    private double x(Vector point) {
        return paper.x(view.x(point));
    }

    private double y(Vector point) {
        return paper.y(view.y(point));
    }

    // ---- ways ----------------------------------------------------------------------------------------------------

    private void way(Way way) {
        double across = way.across().length() / scale.times();
        int arrows = (int) Math.max(1, Math.round(across / APART));
        for (int i = 0; i < arrows; i++) {
            Vector aside = way.across().times((i + 0.5) / arrows - 0.5);
            arrow(way.kind(), moved(way.from().plus(aside)), moved(way.to().plus(aside)));
        }
    }

    private Vector moved(Vector point) {
        return scene.broken().moved(point);
    }

    private void arrow(Way.Kind kind, Vector from, Vector to) {
        Vector before = view.toEye().times(0.5);
        for (DrawnLine line :
                BuildPicture.seen(projection, view, new Scene.Chain(from.plus(before), to.plus(before)))) {
            double[] xy = line.on(paper);
            double long0 = StrictMath.hypot(xy[2] - xy[0], xy[3] - xy[1]);
            boolean cut = kind == Way.Kind.FALLS && long0 > LONGEST_FALL;
            double share = cut ? LONGEST_FALL / long0 : 1;
            Drawn drawn = new Drawn(
                    kind, xy[0], xy[1], xy[0] + share * (xy[2] - xy[0]), xy[1] + share * (xy[3] - xy[1]), !cut);
            boolean worth = long0 > (kind == Way.Kind.ALONG_DAM ? 0.5 : 2);
            if (worth && ways.stream().noneMatch(other -> isNear(other, drawn))) {
                ways.add(drawn);
            }
        }
    }

    private static boolean isNear(Drawn a, Drawn b) {
        double x = (a.x1 + a.x2 - b.x1 - b.x2) / 2;
        double y = (a.y1 + a.y2 - b.y1 - b.y2) / 2;
        double near = a.kind == Way.Kind.ALONG_DAM || b.kind == Way.Kind.ALONG_DAM ? 0.5 : APART / 2;
        return StrictMath.hypot(x, y) < near;
    }

    // ---- numbers -------------------------------------------------------------------------------------------------

    /** One of its places in sight if there is one, else one on the far side. */
    private void number(RainMark mark) {
        List<Vector> seen =
                mark.at().stream().map(this::moved).filter(this::isSeen).toList();
        boolean sight = !seen.isEmpty();
        Vector at = sight ? seen.get(0) : moved(mark.at().get(0));
        double dotX = x(at);
        double dotY = y(at);
        double x = dotX;
        double y = dotY;
        // Round and round, farther out, until it covers no other number.
        for (int step = 0; step < 72 && !isFree(x, y); step++) {
            double angle = StrictMath.toRadians(step * 40);
            double far = CLEAR * (1 + step / 9 * 0.5);
            x = dotX + far * StrictMath.cos(angle);
            y = dotY - far * StrictMath.sin(angle);
        }
        numbers.add(new Number(mark.number(), sight, mark.isOpen(), x, y, dotX, dotY));
    }

    private boolean isFree(double x, double y) {
        return x > 3
                && y > 3
                && x < width - 3
                && y < height - 3
                && numbers.stream().noneMatch(n -> StrictMath.hypot(n.x() - x, n.y() - y) < CLEAR);
    }

    private boolean isSeen(Vector at) {
        Vector before = at.plus(view.toEye().times(1.5));
        Vector aside = before.plus(Vector.Z.times(1));
        return !BuildPicture.seen(projection, view, new Scene.Chain(before, aside))
                .isEmpty();
    }

    // ---- painting ------------------------------------------------------------------------------------------------

    /** @param elsewhere whether another picture beside this one shows a number that is on the far side here */
    void paint(Ink ink, double left, double top, IntPredicate elsewhere) {
        ink.within(left, top, 1, () -> {
            for (ViewFace face : fills) {
                if (!scene.bodies().get(face.body()).glass()) {
                    ink.fill(face.path(paper), Math.abs(face.normal().z()) > 0.2 ? Ink.WHITE : Ink.TINT);
                }
            }
            lines.forEach(line -> ink.strokeRound(
                    Broken.isEnd(ends, line) ? Broken.zigzag(line.on(paper), false) : Ink.open(line.on(paper)),
                    Ink.BLACK,
                    Ink.FINE));
            ways.forEach(way -> way(ink, way));
            numbers.stream()
                    .filter(number -> number.seen() || !elsewhere.test(number.number()))
                    .forEach(number -> number(ink, number));
        });
    }

    private static void way(Ink ink, Drawn way) {
        double length = StrictMath.hypot(way.x2 - way.x1, way.y2 - way.y1);
        double dx = (way.x2 - way.x1) / length;
        double dy = (way.y2 - way.y1) / length;
        switch (way.kind) {
            case OVER_FACE -> {
                ink.line(way.x1 + 0.6 * dx, way.y1 + 0.6 * dy, way.x2 - 1.2 * dx, way.y2 - 1.2 * dy, Ink.MIDDLE);
                head(ink, way.x2, way.y2, dx, dy);
            }
            case FALLS -> {
                ink.dashed(Ink.open(way.x1, way.y1, way.x2, way.y2), Ink.MIDDLE, 0.4f, 1.0f);
                ink.fill(Ink.circle(way.x2, way.y2, 0.65), way.whole ? Ink.BLACK : Ink.WHITE);
                ink.stroke(Ink.circle(way.x2, way.y2, 0.65), Ink.BLACK, Ink.FINE);
            }
            case ALONG_DAM -> {
                ink.line(way.x1 - 0.5 * dy, way.y1 + 0.5 * dx, way.x2 - 0.5 * dy, way.y2 + 0.5 * dx, Ink.MIDDLE);
                ink.line(way.x1 + 0.5 * dy, way.y1 - 0.5 * dx, way.x2 + 0.5 * dy, way.y2 - 0.5 * dx, Ink.MIDDLE);
            }
        }
    }

    private static void head(Ink ink, double x, double y, double dx, double dy) {
        double bx = x - 1.9 * dx;
        double by = y - 1.9 * dy;
        ink.fill(Ink.polygon(x, y, bx - 0.8 * dy, by + 0.8 * dx, bx + 0.8 * dy, by - 0.8 * dx), Ink.BLACK);
    }

    private static void number(Ink ink, Number number) {
        ink.line(number.dotX, number.dotY, number.x, number.y, Ink.NARROW);
        ink.fill(Ink.circle(number.dotX, number.dotY, 0.6), Ink.BLACK);
        RainDrawing.sign(ink, number.number, number.seen && number.open, number.x, number.y);
    }
}
