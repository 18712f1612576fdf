package org.kerfleaf.export.drawing;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Vector;

/**
 * A picture of placed pieces at a standard scale: what is hidden is left out, faces are tinted by where they look, letters stand
 * outside with a leader to their part. For the cover, for steps (what is new is heavy and tinted, what was there white and thin)
 * and, with pieces {@linkplain Shown#pulled pulled} out of their places, for the build taken apart.
 */
public final class BuildPicture implements Drawing {
    /** The room that a letter outside the picture takes. */
    private static final double LETTER_MARGIN = Signs.LETTER + 5.5;

    private static final double LINE_MARGIN = 0.5;
    private static final double WHITE_AROUND = 26;

    /** The line of what is new in a step. */
    private static final double NEW = 0.6;

    private static final double EARLIER = 0.2;
    private static final double DOT = 0.6;

    private final Scale scale;
    private final OnPaper paper;
    private final List<ViewFace> fills;
    private final List<DrawnLine> lines;
    private final List<Body> bodies;
    private final List<DrawnLine> covered;
    private final List<Heads.Head> heads;
    private final List<DrawnLine> chains;
    private final List<double[]> ends;
    private final List<LetterPlaces.Place> letters;
    private final Rectangle2D box;

    /** @param margin that is left round the picture, at least */
    private BuildPicture(Scene scene, View view, double maxWidth, double maxHeight, Sizer sizer, double margin) {
        bodies = scene.bodies();
        Projection projection = new Projection(bodies, view);
        ends = scene.broken().ends(scene.shown(), view);
        chains = scene.chains().stream()
                .flatMap(chain -> seen(projection, view, chain).stream())
                .toList();
        fills = Fills.inOrder(projection);
        lines = HiddenLines.seen(projection);
        boolean lettered = bodies.stream().anyMatch(b -> !b.letter().isEmpty());
        double wide = projection.maxX() - projection.minX();
        double high = projection.maxY() - projection.minY();
        scale = sizer.of(
                Length.ofMillimetres(wide), Length.ofMillimetres(high), maxWidth - 2 * margin, maxHeight - 2 * margin);
        double most = lettered ? WHITE_AROUND : LINE_MARGIN;
        double paperWide =
                Math.max(wide / scale.times() + 2 * margin, Math.min(maxWidth, wide / scale.times() + 2 * most));
        double paperHigh =
                Math.max(high / scale.times() + 2 * margin, Math.min(maxHeight, high / scale.times() + 2 * most));
        double left = (paperWide - wide / scale.times()) / 2;
        double top = (paperHigh - high / scale.times()) / 2;
        paper = new OnPaper(
                scale.times(), left - projection.minX() / scale.times(), top + projection.maxY() / scale.times());
        covered = covered(projection);
        heads = Heads.seen(scene.driven(), projection, view, paper);
        letters = lettered ? placed(paperWide, paperHigh) : List.of();
        box = used(Ink.box(left, top, wide / scale.times(), high / scale.times()));
    }

    /** The pieces where they are drawn, at the largest standard scale at which picture and letters fit. */
    public static BuildPicture of(List<Shown> shown, View view, double maxWidth, double maxHeight) {
        return of(shown, List.of(), view, maxWidth, maxHeight);
    }

    /** The same with the heads of fasteners that are driven into the pieces where they are. */
    public static BuildPicture of(
            List<Shown> shown, List<DrivenFastener> driven, View view, double maxWidth, double maxHeight) {
        return of(Scene.of(shown).driving(driven), view, maxWidth, maxHeight);
    }

    static BuildPicture of(Scene scene, View view, double maxWidth, double maxHeight) {
        return new BuildPicture(scene, view, maxWidth, maxHeight, Scale::fitting, margin(scene));
    }

    /** As large as there is room, at a standard scale or not: for pictures that nobody measures. */
    static BuildPicture filling(Scene scene, View view, double maxWidth, double maxHeight) {
        BuildPicture tight = new BuildPicture(scene, view, maxWidth, maxHeight, Scale::filling, LINE_MARGIN);
        // Letters that find no place need more white around.
        return tight.notPointedAt().isEmpty()
                ? tight
                : new BuildPicture(scene, view, maxWidth, maxHeight, Scale::filling, margin(scene));
    }

    private static double margin(Scene scene) {
        return scene.shown().stream().allMatch(s -> s.letter().isEmpty()) ? LINE_MARGIN : LETTER_MARGIN;
    }

    /** Finds the scale at which a size of the build goes into a room on paper. */
    private interface Sizer {
        Scale of(Length wide, Length high, double paperWide, double paperHigh);
    }

    /** The stretches of a chain line that nothing covers. */
    static List<DrawnLine> seen(Projection projection, View view, Scene.Chain chain) {
        Vector a = chain.from();
        Vector b = chain.to();
        Vector eye = projection.eye();
        Projection.Edge edge = new Projection.Edge(
                -1, view.x(a), view.y(a), eye.dot(a), view.x(b), view.y(b), eye.dot(b), true, false);
        return Spans.minus(List.of(new Spans.Span(0, 1)), HiddenLines.hidden(projection, edge)).stream()
                .map(span -> DrawnLine.of(
                        edge.x1() + span.from() * (edge.x2() - edge.x1()),
                        edge.y1() + span.from() * (edge.y2() - edge.y1()),
                        edge.x1() + span.to() * (edge.x2() - edge.x1()),
                        edge.y1() + span.to() * (edge.y2() - edge.y1()),
                        false,
                        Shown.State.PLAIN,
                        false))
                .toList();
    }

    /** The outline of what is new, where all of it lies behind what was there: else the picture would show nothing new. */
    private List<DrawnLine> covered(Projection projection) {
        boolean isNew = bodies.stream().anyMatch(b -> b.state() == Shown.State.NEW);
        if (!isNew || lines.stream().anyMatch(l -> l.state() == Shown.State.NEW)) {
            return List.of();
        }
        List<DrawnLine> hidden = HiddenLines.of(projection).stream()
                .filter(l -> l.hidden() && l.state() == Shown.State.NEW)
                .toList();
        return HiddenDashes.worthDrawing(hidden, scale.times());
    }

    private List<LetterPlaces.Place> placed(double paperWide, double paperHigh) {
        FaceMask mask = new FaceMask(fills, heads.stream().map(Heads.Head::line).toList(), paper, paperWide, paperHigh);
        String[] of = new String[fills.size() + 2];
        Arrays.fill(of, "");
        for (int i = 0; i < fills.size(); i++) {
            of[i + 1] = bodies.get(fills.get(i).body()).letter();
        }
        return LetterPlaces.of(mask, of);
    }

    private Rectangle2D used(Rectangle2D picture) {
        Rectangle2D used = Ink.box(
                picture.getX() - LINE_MARGIN,
                picture.getY() - LINE_MARGIN,
                picture.getWidth() + 2 * LINE_MARGIN,
                picture.getHeight() + 2 * LINE_MARGIN);
        for (Heads.Head head : heads) {
            used.add(Ink.box(head.endX() - LINE_MARGIN, head.endY() - LINE_MARGIN, 2 * LINE_MARGIN, 2 * LINE_MARGIN));
        }
        for (LetterPlaces.Place place : letters) {
            used.add(Ink.box(place.x() - Signs.LETTER / 2, place.y() - Signs.LETTER / 2, Signs.LETTER, Signs.LETTER));
        }
        return used;
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

    /** Letters of parts of which nothing can be seen; say them in the caption. */
    public Set<String> notPointedAt() {
        Set<String> missing = bodies.stream()
                .map(Body::letter)
                .filter(letter -> !letter.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        letters.forEach(place -> missing.remove(place.letter()));
        return new LinkedHashSet<>(missing);
    }

    /** The heads that are seen, in millimetres from the upper left corner of the picture. */
    List<Heads.Head> heads() {
        return heads.stream()
                .map(h -> new Heads.Head(
                        h.x() - box.getX(), h.y() - box.getY(), h.endX() - box.getX(), h.endY() - box.getY()))
                .toList();
    }

    /** Where letters stand and point, in millimetres from the upper left corner of the picture. */
    List<LetterPlaces.Place> letters() {
        List<LetterPlaces.Place> moved = new ArrayList<>();
        for (LetterPlaces.Place p : letters) {
            moved.add(new LetterPlaces.Place(
                    p.letter(), p.x() - box.getX(), p.y() - box.getY(), p.dotX() - box.getX(), p.dotY() - box.getY()));
        }
        return moved;
    }

    @Override
    public void paint(Ink ink, double x, double y) {
        ink.within(x - box.getX(), y - box.getY(), 1, () -> {
            fills.forEach(face -> fill(ink, face));
            chains.forEach(line -> ink.dashed(Ink.open(line.on(paper)), Ink.FINE, 5f, 0.9f, 0.3f, 0.9f));
            covered.forEach(line -> HiddenDashes.paint(ink, line, paper));
            lines.stream().filter(l -> l.state() != Shown.State.NEW).forEach(l -> stroke(ink, l));
            lines.stream().filter(l -> l.state() == Shown.State.NEW).forEach(l -> stroke(ink, l));
            heads.forEach(head -> Heads.paint(ink, head));
            letters.forEach(place -> leader(ink, place));
            letters.forEach(place -> Signs.letter(ink, place.letter(), place.x(), place.y()));
        });
    }

    private void fill(Ink ink, ViewFace face) {
        Body body = bodies.get(face.body());
        if (!body.glass()) {
            ink.fill(face.path(paper), body.state() == Shown.State.EARLIER ? Ink.WHITE : tint(face.normal()));
        }
    }

    /** What looks up is white, what looks to the side is the darker tint, the front the lighter one. */
    private static Color tint(Vector normal) {
        if (Math.abs(normal.z()) > 0.5) {
            return Ink.WHITE;
        }
        return Math.abs(normal.x()) > Math.abs(normal.y()) ? Ink.FAR : Ink.TINT;
    }

    private void stroke(Ink ink, DrawnLine line) {
        if (Broken.isEnd(ends, line)) {
            ink.strokeRound(Broken.zigzag(line.on(paper), false), Ink.BLACK, Ink.NARROW);
        } else {
            ink.strokeRound(Ink.open(line.on(paper)), Ink.BLACK, width(line.state()));
        }
    }

    /** Wide lines a board's thickness apart fill up at small scales. */
    private double width(Shown.State state) {
        return switch (state) {
            case NEW -> scale.times() >= 16 ? Ink.WIDE : NEW;
            case EARLIER -> EARLIER;
            case PLAIN -> scale.times() >= 16 ? Ink.NARROW : scale.times() >= 8 ? Ink.MIDDLE : Ink.WIDE;
        };
    }

    private static void leader(Ink ink, LetterPlaces.Place place) {
        ink.line(place.dotX(), place.dotY(), place.x(), place.y(), Ink.NARROW);
        ink.fill(Ink.circle(place.dotX(), place.dotY(), DOT), Ink.BLACK);
    }
}
