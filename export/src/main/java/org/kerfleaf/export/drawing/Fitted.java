package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Lines of text placed in a rectangle so that they cross nothing. The ways to say it are tried from the fullest to the
 * shortest, each level and then upright, each in the middle first and then beside it.
 */
final class Fitted {
    private static final double LEADING = 1.22;
    private static final double AIR = 0.7;
    private static final double[] SHIFTS = {0, -0.5, 0.5, -1, 1};

    private final List<Line> lines;
    private final double size;
    private final boolean upright;
    private final Rectangle2D place;

    private Fitted(List<Line> lines, double size, boolean upright, Rectangle2D place) {
        this.lines = lines;
        this.size = size;
        this.upright = upright;
        this.place = place;
    }

    /** One way to say it: its lines at a size in points. */
    record Way(DoubleFunction<List<Rich>> lines) {}

    /** The first of the ways that fits, at the first of the sizes (in points) at which it does. */
    static Optional<Fitted> in(Rectangle2D room, List<? extends Rectangle2D> taken, List<Way> ways, double... sizes) {
        for (Way way : ways) {
            for (boolean upright : new boolean[] {false, true}) {
                for (double points : sizes) {
                    List<Line> lines =
                            way.lines().apply(points).stream().map(Rich::line).toList();
                    Optional<Rectangle2D> place = place(room, taken, lines, points * Style.POINT, upright);
                    if (place.isPresent()) {
                        return Optional.of(new Fitted(lines, points * Style.POINT, upright, place.get()));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Rectangle2D> place(
            Rectangle2D room, List<? extends Rectangle2D> taken, List<Line> lines, double size, boolean upright) {
        double along = lines.stream().mapToDouble(Line::width).max().orElse(0) + 2 * AIR;
        double over = (lines.size() - 1) * LEADING * size + size * 0.78 + (lines.size() > 1 ? AIR : 0.3);
        double wide = upright ? over : along;
        double high = upright ? along : over;
        double spareX = room.getWidth() - wide;
        double spareY = room.getHeight() - high;
        if (spareX < 0 || spareY < 0) {
            return Optional.empty();
        }
        for (double dy : SHIFTS) {
            for (double dx : SHIFTS) {
                Rectangle2D at =
                        Ink.box(room.getX() + spareX / 2 * (1 + dx), room.getY() + spareY / 2 * (1 + dy), wide, high);
                if (taken.stream().noneMatch(at::intersects)) {
                    return Optional.of(at);
                }
            }
        }
        return Optional.empty();
    }

    Rectangle2D place() {
        return place;
    }

    void paint(Ink ink) {
        if (upright) {
            ink.turned(place.getCenterX(), place.getCenterY(), () -> lines(ink, 0, 0));
        } else {
            lines(ink, place.getCenterX(), place.getCenterY());
        }
    }

    private void lines(Ink ink, double x, double y) {
        double first = y - (lines.size() - 1) * LEADING * size / 2 + size * Face.CAPITAL / 2;
        for (int i = 0; i < lines.size(); i++) {
            ink.centred(lines.get(i), x, first + i * LEADING * size);
        }
    }
}
