package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.OutlineEdge;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pocket;
import org.kerfleaf.shape.Vector;

/**
 * One part with everything that is marked on it, at a standard scale: its edges, openings and rabbets, holes with a cross, guide
 * lines, pilots, and running dimensions from one corner along two edges. What a sloping cut takes off its blank is hatched.
 */
public final class PartDrawing implements Drawing {
    private static final Style TITLE = new Style(Face.LABEL_BOLD, 10.5, Ink.BLACK);
    private static final double TITLE_ROOM = 7;
    private static final double WORDS_LINE = 4;
    private static final double MARGIN = 0.5;

    /** Words are set as wide as the drawing, but no narrower than this. */
    private static final double WORDS = 84;

    private static final double PILOT = 0.8;
    private static final double CROSS = 1.6;

    /** Stations nearer than this are one, in millimetres of the part. */
    private static final double SAME = 0.1;

    private final Marking marking;
    private final Scale scale;
    private final Bounds bounds;
    private final List<DrawnLine> lines;
    private final RunningDimensions below;
    private final RunningDimensions beside;
    private final OnPaper paper;
    private final GuideWords guides;
    private final List<Line> words;
    private final double left;
    private final double wide;
    private final double high;

    private PartDrawing(Marking marking, List<DrawnLine> lines, Lettering lettering, double maxWidth, Scale scale) {
        this.marking = marking;
        this.lines = lines;
        this.scale = scale;
        bounds = marking.outline().bounds();
        wide = bounds.sizes().x() / scale.times();
        high = bounds.sizes().y() / scale.times();
        below = new RunningDimensions(stations(Vector::x), scale, lettering);
        beside = new RunningDimensions(stations(Vector::y), scale, lettering);
        left = MARGIN + Math.max(beside.depth(), 1);
        paper = new OnPaper(
                scale.times(),
                left - bounds.low().x() / scale.times(),
                originY() + bounds.low().y() / scale.times());
        guides = new GuideWords(marking, paper);
        words = PartWords.of(marking, guides.unsaid(), lettering)
                .wrap(Math.min(maxWidth, Math.max(drawn(), WORDS)) - 2 * MARGIN);
    }

    /** How far the part and its dimensions reach to the right. */
    private double drawn() {
        return left + Math.max(wide + 1, below.end());
    }

    /** The part's marking drawing, at the largest standard scale at which it fits with its dimensions and words. */
    public static PartDrawing of(Marking marking, Lettering lettering, double maxWidth, double maxHeight) {
        Body body = Body.of(Shown.plain(new PlacedSolid(marking.title(), 1, marking.solid(), marking.lying()), ""));
        List<DrawnLine> lines = HiddenLines.of(new Projection(List.of(body), View.TOP));
        PartDrawing drawing = null;
        for (Scale scale : Scale.standard()) {
            drawing = new PartDrawing(marking, lines, lettering, maxWidth, scale);
            if (drawing.width() <= maxWidth && drawing.height() <= maxHeight) {
                return drawing;
            }
        }
        return drawing;
    }

    /** Everything there is to measure to along one edge, from the lower left corner of the blank. */
    private List<Double> stations(ToDoubleFunction<Vector> along) {
        TreeSet<Double> places = new TreeSet<>();
        double low = along.applyAsDouble(bounds.low());
        Outline outline = marking.outline();
        places.add(along.applyAsDouble(bounds.high()) - low);
        for (OutlineEdge edge : outline.edges()) {
            if (!edge.isArc()) {
                places.add(along.applyAsDouble(point(edge.from())) - low);
                places.add(along.applyAsDouble(point(edge.to())) - low);
            }
        }
        for (String name : outline.openings()) {
            Bounds opening = outline.opening(name).bounds();
            List<Vector> at = PartWords.isHole(outline.opening(name))
                    ? List.of(opening.middle())
                    : List.of(opening.low(), opening.high());
            at.forEach(p -> places.add(along.applyAsDouble(p) - low));
        }
        for (Pocket pocket : marking.solid().pockets()) {
            for (Vector corner : List.of(
                    pocket.shape().bounds().low(), pocket.shape().bounds().high())) {
                places.add(along.applyAsDouble(marking.lying().toWorld(corner)) - low);
            }
        }
        marking.holes().forEach(p -> places.add(along.applyAsDouble(p) - low));
        for (GuideLine guide : marking.guides()) {
            double from = along.applyAsDouble(guide.from());
            // A line along the other edge is where it is; of a sloping one both ends are needed.
            if (Math.abs(from - along.applyAsDouble(guide.to())) < SAME || !isLevel(guide.from(), guide.to())) {
                places.add(from - low);
                places.add(along.applyAsDouble(guide.to()) - low);
            }
        }
        List<Double> stations = new ArrayList<>();
        double end = along.applyAsDouble(bounds.high()) - low + SAME;
        for (double place : places) {
            // A pocket may reach past the part.
            if (place < end && place > (stations.isEmpty() ? 0 : stations.get(stations.size() - 1)) + SAME) {
                stations.add(place);
            }
        }
        return stations;
    }

    private static boolean isLevel(Vector from, Vector to) {
        return Math.abs(from.x() - to.x()) < SAME || Math.abs(from.y() - to.y()) < SAME;
    }

    private static Vector point(OutlineEdge.Point at) {
        return new Vector(at.u().inMillimetres(), at.v().inMillimetres(), 0);
    }

    @Override
    public Scale scale() {
        return scale;
    }

    /** On paper, in millimetres. */
    @Override
    public double width() {
        double text = words.stream().mapToDouble(Line::width).max().orElse(0);
        double title = Rich.of(marking.title(), TITLE).width();
        return Math.max(drawn(), MARGIN + Math.max(text, title)) + MARGIN;
    }

    /** On paper, in millimetres. */
    @Override
    public double height() {
        return partTop() + high + Math.max(below.depth(), 1) + 2 + WORDS_LINE * words.size();
    }

    /** Values along the left edge may stand a little higher than the part. */
    private double partTop() {
        return TITLE_ROOM + Math.max(0.5, beside.end() - high);
    }

    /** Where the tape is hooked, from the drawing's upper left corner. */
    double originX() {
        return left;
    }

    /** Where the tape is hooked, from the drawing's upper left corner. */
    double originY() {
        return partTop() + high;
    }

    /** Paints the drawing from its upper left corner. */
    @Override
    public void paint(Ink ink, double x, double y) {
        ink.text(Rich.of(marking.title(), TITLE).line(), x + MARGIN, y + TITLE.size());
        ink.within(x, y, 1, () -> part(ink));
        double baseline = y + height() - WORDS_LINE * words.size() + 3;
        for (Line line : words) {
            ink.text(line, x + MARGIN, baseline);
            baseline += WORDS_LINE;
        }
    }

    private void part(Ink ink) {
        Path2D waste = Waste.hatch(marking.outline(), paper);
        if (waste.getCurrentPoint() != null) {
            ink.stroke(waste, Ink.BLACK, Ink.FINE);
            ink.stroke(Ink.box(left, originY() - high, wide, high), Ink.BLACK, Ink.FINE);
        }
        HiddenDashes.worthDrawing(lines, scale.times()).forEach(line -> HiddenDashes.paint(ink, line, paper));
        openings(ink);
        lines.stream()
                .filter(line -> !line.hidden())
                .forEach(line -> ink.strokeRound(Ink.open(line.on(paper)), Ink.BLACK, Ink.WIDE));
        guides.paint(ink);
        marking.holes().forEach(p -> pilot(ink, paper.x(p.x()), paper.y(p.y())));
        below.paintBelow(ink, left, originY());
        beside.paintBeside(ink, left, originY());
    }

    /** A cross through the middle of a hole; the joiner's X in what is cut out. */
    private void openings(Ink ink) {
        Outline outline = marking.outline();
        for (String name : outline.openings()) {
            Bounds box = outline.opening(name).bounds();
            double x1 = paper.x(box.low().x());
            double y1 = paper.y(box.low().y());
            double x2 = paper.x(box.high().x());
            double y2 = paper.y(box.high().y());
            if (PartWords.isHole(outline.opening(name))) {
                cross(ink, (x1 + x2) / 2, (y1 + y2) / 2, (x2 - x1) / 2 + CROSS, Ink.FINE);
            } else {
                ink.line(x1, y1, x2, y2, Ink.FINE);
                ink.line(x1, y2, x2, y1, Ink.FINE);
            }
        }
    }

    private static void cross(Ink ink, double x, double y, double half, double width) {
        ink.line(x - half, y, x + half, y, width);
        ink.line(x, y - half, x, y + half, width);
    }

    private static void pilot(Ink ink, double x, double y) {
        ink.stroke(Ink.circle(x, y, PILOT), Ink.BLACK, Ink.MIDDLE);
        cross(ink, x, y, PILOT + 0.9, Ink.FINE);
    }
}
