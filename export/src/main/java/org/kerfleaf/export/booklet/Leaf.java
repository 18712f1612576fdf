package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;

/** One page before it is painted: its head, and blocks at their places. */
final class Leaf {
    private static final Style TITLE = new Style(Face.LABEL_BOLD, 22, Ink.BLACK);
    private static final double TITLE_LEADING = TITLE.size() * 1.1;
    private static final double KERF = 1.4;

    private final Paper paper;
    private final String title;
    private final String sheet;
    private final Rich fact;
    private final boolean headed;
    private final List<Placed> blocks = new ArrayList<>();

    private record Placed(Block block, double x, double y, double width) {}

    /**
     * A page.
     *
     * @param title at its head and in the bookmarks
     * @param sheet what the title block calls it
     * @param fact at the right of the head
     * @param headed whether the title is printed at the head; the cover sets its own
     */
    Leaf(Paper paper, String title, String sheet, Rich fact, boolean headed) {
        this.paper = paper;
        this.title = title;
        this.sheet = sheet;
        this.fact = fact;
        this.headed = headed;
    }

    String title() {
        return title;
    }

    String sheet() {
        return sheet;
    }

    /** Where content begins. */
    double top() {
        double kerf = Paper.HEAD + KERF;
        if (!headed) {
            return kerf + 8;
        }
        double lines = Math.max(titleLines().size() * TITLE_LEADING, factLines().size() * 5.2);
        return kerf + 2.5 + lines + 5;
    }

    private List<Line> titleLines() {
        return Rich.of(title, TITLE).wrap(paper.measure() * (fact.isEmpty() ? 1 : 0.64));
    }

    private List<Line> factLines() {
        double left = titleLines().stream().mapToDouble(Line::width).max().orElse(0);
        return fact.wrap(Math.max(paper.measure() - left - 8, paper.measure() * 0.3));
    }

    void place(Block block, double x, double y, double width) {
        blocks.add(new Placed(block, x, y, width));
    }

    void paint(Ink ink, TitleBlock foot, int number, int of) {
        Signs.kerfRule(ink, Paper.SIDE, Paper.HEAD, paper.measure(), (number - 0.5) / of);
        if (headed) {
            head(ink);
        }
        for (Placed placed : blocks) {
            placed.block.paint(ink, placed.x, placed.y, placed.width);
        }
        foot.paint(ink, sheet, number, of);
    }

    private void head(Ink ink) {
        double baseline = Paper.HEAD + KERF + 2.5 + TITLE.size() * 0.86;
        double y = baseline;
        for (Line line : titleLines()) {
            ink.text(line, Paper.SIDE, y);
            y += TITLE_LEADING;
        }
        y = baseline;
        for (Line line : factLines()) {
            ink.flushRight(line, paper.width() - Paper.SIDE, y);
            y += 5.2;
        }
    }
}
