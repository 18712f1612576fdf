package org.kerfleaf.export.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.Vector;

/** Guide lines with their words, which stand beside the line, on the part, and clear of holes, openings and other lines. */
final class GuideWords {
    private static final Style STYLE = Style.CAPTION;

    /** From the line to the words: next to it between two holes, or past its holes. */
    private static final double[] OFF = {1, 2.5};

    /** Half of what a hole's cross takes, and some air. */
    private static final double HOLE = 2;

    private static final double AIR = 0.4;

    /** So many places along the line are tried, from its middle out. */
    private static final int PLACES = 38;

    /** Words where they are written: the middle of their baseline. */
    private record Set(Line words, double x, double y, boolean upright) {}

    private final OnPaper paper;
    private final List<GuideLine> guides;
    private final Path2D part;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Set> set = new ArrayList<>();
    private final List<GuideLine> unsaid = new ArrayList<>();

    GuideWords(Marking marking, OnPaper paper) {
        this.paper = paper;
        guides = marking.guides();
        part = path(Waste.ring(marking.outline()));
        for (Vector hole : marking.holes()) {
            taken.add(around(paper.x(hole.x()), paper.y(hole.y()), HOLE));
        }
        Outline outline = marking.outline();
        for (String name : outline.openings()) {
            Bounds box = outline.opening(name).bounds();
            Rectangle2D opening =
                    around(paper.x(box.low().x()), paper.y(box.low().y()), HOLE);
            opening.add(around(paper.x(box.high().x()), paper.y(box.high().y()), HOLE));
            taken.add(opening);
        }
        for (GuideLine guide : guides) {
            place(guide).ifPresentOrElse(set::add, () -> unsaid.add(guide));
        }
    }

    private Path2D path(double[] ring) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < ring.length; i += 2) {
            if (i == 0) {
                path.moveTo(paper.x(ring[0]), paper.y(ring[1]));
            } else {
                path.lineTo(paper.x(ring[i]), paper.y(ring[i + 1]));
            }
        }
        path.closePath();
        return path;
    }

    private static Rectangle2D around(double x, double y, double half) {
        return Ink.box(x - half, y - half, 2 * half, 2 * half);
    }

    /** Lines beside which there is no room for their words. */
    List<GuideLine> unsaid() {
        return unsaid;
    }

    private Optional<Set> place(GuideLine guide) {
        Line2D line = line(guide);
        Line words = Rich.of(guide.words(), STYLE).line();
        boolean upright = Math.abs(line.getY2() - line.getY1()) > Math.abs(line.getX2() - line.getX1());
        for (double off : OFF) {
            for (int i = 0; i < PLACES; i++) {
                double t = 0.5 + (i % 2 == 0 ? 0.5 : -0.5) * ((i + 1) / 2) / (PLACES / 2);
                double x = line.getX1() + t * (line.getX2() - line.getX1());
                double y = line.getY1() + t * (line.getY2() - line.getY1());
                for (double before : new double[] {off, -off - AIR - STYLE.capital()}) {
                    Set here = upright ? new Set(words, x - before, y, true) : new Set(words, x, y - before, false);
                    if (isFree(box(here))) {
                        taken.add(box(here));
                        return Optional.of(here);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Rectangle2D box(Set words) {
        double wide = words.words().width() + 2 * AIR;
        double high = STYLE.capital() + 2 * AIR;
        return words.upright()
                ? Ink.box(words.x() - STYLE.capital() - AIR, words.y() - wide / 2, high, wide)
                : Ink.box(words.x() - wide / 2, words.y() - STYLE.capital() - AIR, wide, high);
    }

    private boolean isFree(Rectangle2D box) {
        return part.contains(box)
                && taken.stream().noneMatch(box::intersects)
                && guides.stream().noneMatch(other -> line(other).intersects(box));
    }

    private Line2D line(GuideLine guide) {
        return new Line2D.Double(
                paper.x(guide.from().x()), paper.y(guide.from().y()),
                paper.x(guide.to().x()), paper.y(guide.to().y()));
    }

    void paint(Ink ink) {
        for (GuideLine guide : guides) {
            ink.dashed(line(guide), Ink.MIDDLE, 5f, 0.9f, 0.3f, 0.9f);
        }
        for (Set words : set) {
            if (words.upright()) {
                ink.turned(words.x(), words.y(), () -> ink.centred(words.words(), 0, 0));
            } else {
                ink.centred(words.words(), words.x(), words.y());
            }
        }
    }
}
