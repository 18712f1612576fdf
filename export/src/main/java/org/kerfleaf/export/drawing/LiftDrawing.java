package org.kerfleaf.export.drawing;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads.Grip;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.shape.Vector;

/**
 * How a build is lifted: the build as it then is, the middle of its weight, a numbered arrow for every hand, and under it what it
 * weighs and from where it balances.
 */
final class LiftDrawing implements Drawing {
    private static final Style WORDS = Style.LABEL.at(9);
    private static final Style STRONG = Style.LABEL_SEMI.at(9);
    private static final double LEADING = 1.32;

    /** Room for arrows and numbers round the build. */
    private static final double MARGIN = 13;

    private static final double ARROW = 7;
    private static final double BALANCE = 2.4;

    private final Scale scale;
    private final OnPaper paper;
    private final Scene scene;
    private final List<ViewFace> fills;
    private final List<DrawnLine> lines;
    private final List<double[]> ends;
    private final Lifted lifted;
    private final List<Line> words;
    private final double width;
    private final double high;
    private final double height;

    /** Whether its weight's middle is known. */
    static boolean canBeDrawn(Lifted lifted) {
        return lifted.balance().isPresent();
    }

    /** @throws IllegalArgumentException if nothing of it is placed by that step */
    LiftDrawing(Plan plan, Lifted lifted, double maxWidth, double maxHeight) {
        this.lifted = lifted;
        List<Shown> shown = plan.placed().stream()
                .filter(p -> p.build() == lifted.build() && p.step() <= lifted.step())
                .map(p -> Pictures.shown(p, "", Shown.State.PLAIN))
                .toList();
        scene = Scene.interrupted(shown);
        Projection projection = new Projection(scene.bodies(), View.DIMETRIC);
        words = words(plan.style()).wrap(maxWidth);
        double list = words.size() * leading() + 2;
        double wide = projection.maxX() - projection.minX();
        double tall = projection.maxY() - projection.minY();
        scale = Scale.filling(
                Length.ofMillimetres(wide),
                Length.ofMillimetres(tall),
                maxWidth - 2 * MARGIN,
                Math.max(30, maxHeight - list - 2 * MARGIN));
        width = Math.max(
                wide / scale.times() + 2 * MARGIN,
                words.stream().mapToDouble(Line::width).max().orElse(0));
        high = tall / scale.times() + 2 * MARGIN;
        height = high + list;
        double left = (width - wide / scale.times()) / 2;
        paper = new OnPaper(
                scale.times(), left - projection.minX() / scale.times(), MARGIN + projection.maxY() / scale.times());
        fills = Fills.inOrder(projection);
        lines = HiddenLines.seen(projection);
        ends = scene.broken().ends(scene.shown(), View.DIMETRIC);
    }

    private Rich words(MeasureStyle style) {
        String weight = lifted.weight().map(w -> w.value().in(style) + ". ").orElse("");
        String share = lifted.people() == 2
                ? lifted.share()
                        .map(most -> "One at either end; the one with most holds %s. "
                                .formatted(most.value().in(style)))
                        .orElse("")
                : lifted.people() == 1 ? "One person lifts it. " : lifted.people() + " people share its edges. ";
        String balance = "It balances at the black and white mark, %s from its left, %s from its front, %s up. "
                .formatted(
                        lifted.fromLeft().orElseThrow().value().in(style),
                        lifted.fromFront().orElseThrow().value().in(style),
                        lifted.up().orElseThrow().value().in(style));
        String hands = lifted.grips().isEmpty() ? "" : "Arrows: hands under the edge, by person. ";
        String go = "Before anybody lets go: 2 fixings on each side of the mark (%d are planned)."
                .formatted(lifted.holding().eachSide());
        return Rich.of(weight, STRONG).plus(share + balance + hands + go, WORDS);
    }

    private static double leading() {
        return WORDS.points() * Style.POINT * LEADING;
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

    @Override
    public void paint(Ink ink, double x, double y) {
        ink.within(x, y, 1, () -> {
            for (ViewFace face : fills) {
                if (!scene.bodies().get(face.body()).glass()) {
                    ink.fill(face.path(paper), Math.abs(face.normal().z()) > 0.5 ? Ink.WHITE : Ink.TINT);
                }
            }
            lines.forEach(line -> ink.strokeRound(
                    Broken.isEnd(ends, line) ? Broken.zigzag(line.on(paper), false) : Ink.open(line.on(paper)),
                    Ink.BLACK,
                    Ink.FINE));
            lifted.grips().forEach(grip -> grip(ink, grip));
            balance(ink, lifted.balance().orElseThrow());
        });
        double at = y + high + 1;
        for (Line line : words) {
            at += leading();
            ink.text(line, x, at);
        }
    }

    private double x(Vector point) {
        return paper.x(View.DIMETRIC.x(scene.broken().moved(point)));
    }

    private double y(Vector point) {
        return paper.y(View.DIMETRIC.y(scene.broken().moved(point)));
    }

    /** An arrow from below to the edge, the person's number at its foot. */
    private void grip(Ink ink, Grip grip) {
        double x = x(grip.at());
        double y = y(grip.at());
        ink.line(x, y + ARROW, x, y + 1.5, Ink.WIDE);
        ink.fill(Ink.polygon(x, y, x - 1.2, y + 2.4, x + 1.2, y + 2.4), Ink.BLACK);
        RainDrawing.sign(ink, grip.person(), true, x, y + ARROW + 2);
    }

    /** The usual mark of a centre of gravity: a circle in quarters, black and white. */
    private void balance(Ink ink, Vector at) {
        double x = x(at);
        double y = y(at);
        ink.fill(Ink.circle(x, y, BALANCE), Ink.WHITE);
        ink.fill(quarter(x, y, 0), Ink.BLACK);
        ink.fill(quarter(x, y, 180), Ink.BLACK);
        ink.stroke(Ink.circle(x, y, BALANCE), Ink.BLACK, Ink.NARROW);
    }

    private static Shape quarter(double x, double y, double from) {
        return new Arc2D.Double(x - BALANCE, y - BALANCE, 2 * BALANCE, 2 * BALANCE, from, 90, Arc2D.PIE);
    }
}
