package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.PartDrawing;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.joint.Marking;

/**
 * What is marked on the parts: one drawing for each different piece and face, several to a page, those that are narrow side by
 * side. Room that is left is ruled for notes.
 */
final class PartPages {
    private static final double GAP = 8;

    private static final double RULE = 8;

    /** Of a page's height, what a drawing may take; one with many holes needs more. */
    private static final double HALF = 0.5;

    private static final double LARGE = 0.66;
    private static final int MANY = 12;

    private final Book book;

    PartPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        List<Marking> markings = book.plan().markings();
        if (markings.isEmpty()) {
            return;
        }
        flow.page(
                "Marking out",
                "Marking",
                "hook the tape once, at the circle · " + Book.counted(markings.size(), "drawing"));
        flow.add(Paragraph.of(
                "Every size is measured from one corner, so no error adds up. A chain line is drawn on the part; at every"
                        + " crossed circle a hole is drilled; what an X runs through is cut out.",
                Style.LABEL.in(Ink.GRAPHITE),
                1.4,
                3));
        double page = flow.left();
        List<PartDrawing> left = new ArrayList<>();
        for (Marking marking : markings) {
            boolean large = markings.size() == 1 || marking.holes().size() > MANY;
            double high = page * (large ? LARGE : HALF) - GAP;
            left.add(PartDrawing.of(marking, book.lettering(), flow.width(), high));
        }
        while (!left.isEmpty()) {
            List<PartDrawing> row = nextRow(left, flow);
            if (row.isEmpty()) {
                notes(flow);
                flow.next();
            } else {
                left.removeAll(row);
                flow.add(row(row));
            }
        }
        notes(flow);
    }

    /** The next drawing that this page has room for, and those after it that fit beside it. */
    private static List<PartDrawing> nextRow(List<PartDrawing> left, Flow flow) {
        List<PartDrawing> row = new ArrayList<>();
        for (PartDrawing drawing : left) {
            boolean fits = row.isEmpty()
                    ? flow.isFresh() || drawing.height() + GAP <= flow.left()
                    : wide(row) + GAP + drawing.width() <= flow.width() && drawing.height() <= high(row);
            if (fits) {
                row.add(drawing);
            }
        }
        return row;
    }

    private static double wide(List<PartDrawing> row) {
        return row.stream().mapToDouble(PartDrawing::width).sum() + GAP * (row.size() - 1);
    }

    private static double high(List<PartDrawing> row) {
        return row.stream().mapToDouble(PartDrawing::height).max().orElse(0);
    }

    private static Block row(List<PartDrawing> drawings) {
        List<PartDrawing> row = List.copyOf(drawings);
        return Block.picture(high(row) + GAP, (ink, x, y, width) -> {
            double between = GAP + (width - wide(row)) / row.size();
            double left = x;
            for (PartDrawing drawing : row) {
                drawing.paint(ink, left, y);
                left += drawing.width() + between;
            }
        });
    }

    private static void notes(Flow flow) {
        int lines = (int) Math.floor((flow.left() - 6) / RULE);
        if (lines >= 2) {
            flow.add(Block.picture(
                    4,
                    (ink, x, y, width) -> ink.text(
                            Rich.of("Notes at the bench", Style.CAPTION).line(), x, y + 3.5)));
            flow.add(Marks.ruled(lines));
        }
    }
}
