package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;

/**
 * Text broken into lines.
 *
 * @param text what to set
 * @param size of the text in millimetres
 * @param leading from one baseline to the next, in millimetres
 * @param after room below
 */
record Paragraph(Rich text, double size, double leading, double after) implements Block {
    static Paragraph of(Rich text, Style style, double lines, double after) {
        return new Paragraph(text, style.size(), style.size() * lines, after);
    }

    static Paragraph of(String text, Style style, double lines, double after) {
        return of(Rich.of(text, style), style, lines, after);
    }

    /** From the top to the first baseline. */
    double firstBaseline() {
        return (leading - size) / 2 + size * 0.8;
    }

    @Override
    public double height(double width) {
        return text.wrap(width).size() * leading + after;
    }

    @Override
    public void paint(Ink ink, double x, double y, double width) {
        double baseline = y + firstBaseline();
        for (Line line : text.wrap(width)) {
            ink.text(line, x, baseline);
            baseline += leading;
        }
    }

    @Override
    public List<Block> broken(double width) {
        List<Block> lines = new ArrayList<>();
        for (Line line : text.wrap(width)) {
            lines.add(Block.picture(leading, (ink, x, y, w) -> ink.text(line, x, y + firstBaseline())));
        }
        lines.add(Block.space(after));
        return lines;
    }
}
