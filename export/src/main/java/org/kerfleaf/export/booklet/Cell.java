package org.kerfleaf.export.booklet;

import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.TapeReading;

/** What stands in one field of a table. Cells of a row share the baseline of their first line. */
interface Cell {
    /** How wide it is if nothing is broken. */
    double natural();

    /** How narrow it can be before a word breaks. */
    double least();

    double height(double width);

    /** From its top to the baseline of its first line. */
    double baseline();

    /** Paints from its upper left corner; {@code axis} is where wholes end and fractions begin in this column. */
    void paint(Ink ink, double x, double y, double width, double axis);

    /** What stands left of a column's axis, in millimetres; zero for a cell without one. */
    default double leftOfAxis() {
        return 0;
    }

    /** What stands right of it. */
    default double rightOfAxis() {
        return 0;
    }

    double LINES = 1.34;

    /** Nothing. */
    static Cell empty() {
        return text("");
    }

    static Cell text(String words) {
        return text(words, Style.LABEL);
    }

    /** The one bold column. */
    static Cell bold(String words) {
        return text(words, Style.LABEL_SEMI);
    }

    static Cell text(String words, Style style) {
        return new Text(List.of(Paragraph.of(words, style, LINES, 0)), false);
    }

    static Cell text(Rich words) {
        return new Text(List.of(Paragraph.of(words, Style.LABEL, LINES, 0)), false);
    }

    /** Paragraphs one below the other. */
    static Cell paragraphs(List<Paragraph> paragraphs) {
        return new Text(paragraphs.isEmpty() ? List.of(Paragraph.of("", Style.LABEL, LINES, 0)) : paragraphs, false);
    }

    /** Text that ends at the right. */
    static Cell right(String words, Style style) {
        return new Text(List.of(Paragraph.of(words, style, LINES, 0)), true);
    }

    static Cell right(String words) {
        return right(words, Style.LABEL);
    }

    static Cell right(Rich words) {
        return new Text(List.of(Paragraph.of(words, Style.LABEL, LINES, 0)), true);
    }

    /** A box to tick. */
    static Cell tick() {
        return new Mark(Signs.TICK_BOX, Signs.TICK_BOX, 3.6, (ink, x, y, width) -> Signs.tickBox(ink, x, y));
    }

    /** A part's letter in its circle. */
    static Cell letter(String letter) {
        double r = Signs.LETTER / 2;
        return new Mark(
                Signs.LETTER, Signs.LETTER, r + 1.25, (ink, x, y, w) -> Signs.letter(ink, letter, x + r, y + r));
    }

    /** A cut's number in its diamond. */
    static Cell diamond(int number) {
        double r = Signs.DIAMOND;
        return new Mark(2 * r, 2 * r, r + 1.25, (ink, x, y, w) -> Signs.diamond(ink, number, x + r, y + r));
    }

    /** A drawn sign. */
    static Cell sign(double width, double height, double baseline, Block.Painter painter) {
        return new Mark(width, height, baseline, painter);
    }

    /** A length: wholes end and fractions begin at the column's axis, the unit stands in a caption. */
    static Cell length(Length length, MeasureStyle measures) {
        TapeReading reading = length.read(measures);
        String sign = reading.negative() ? "-" : "";
        boolean bare = reading.numerator() != 0 && reading.whole() == 0 && reading.unit() == LengthUnit.INCHES;
        Rich whole = Rich.of(bare ? sign : sign + reading.whole(), Style.LABEL);
        Rich rest = Rich.NOTHING;
        if (reading.numerator() != 0) {
            rest = reading.unit() == LengthUnit.MILLIMETRES
                    ? Rich.of(".5", Style.LABEL)
                    : Rich.of(reading.numerator() + "/" + reading.denominator(), Style.LABEL);
        }
        if (reading.hair() != TapeReading.Hair.EXACT) {
            rest = rest.plus(" " + reading.hair().word(), Style.CAPTION);
        }
        return new Aligned(whole.line(), rest.line(), reading.unit() == LengthUnit.INCHES);
    }

    /** Wrapped text. */
    record Text(List<Paragraph> paragraphs, boolean flushRight) implements Cell {
        @Override
        public double natural() {
            return paragraphs.stream().mapToDouble(p -> p.text().width()).max().orElse(0);
        }

        @Override
        public double least() {
            return paragraphs.stream()
                    .mapToDouble(p -> p.text().widestWord())
                    .max()
                    .orElse(0);
        }

        @Override
        public double height(double width) {
            return paragraphs.stream().mapToDouble(p -> p.height(width)).sum();
        }

        @Override
        public double baseline() {
            return paragraphs.get(0).firstBaseline();
        }

        @Override
        public void paint(Ink ink, double x, double y, double width, double axis) {
            double top = y;
            for (Paragraph paragraph : paragraphs) {
                if (flushRight) {
                    flushRight(ink, paragraph, x + width, top, width);
                } else {
                    paragraph.paint(ink, x, top, width);
                }
                top += paragraph.height(width);
            }
        }

        private static void flushRight(Ink ink, Paragraph paragraph, double right, double y, double width) {
            double baseline = y + paragraph.firstBaseline();
            for (Line line : paragraph.text().wrap(width)) {
                ink.flushRight(line, right, baseline);
                baseline += paragraph.leading();
            }
        }
    }

    /** Two stretches that meet at the column's axis. */
    record Aligned(Line left, Line right, boolean gap) implements Cell {
        private static final double BEFORE_FRACTION = 0.16;

        @Override
        public double leftOfAxis() {
            return left.width();
        }

        @Override
        public double rightOfAxis() {
            return right.width() > 0 ? right.width() + between() : 0;
        }

        private double between() {
            return gap ? BEFORE_FRACTION * Style.LABEL.size() : 0;
        }

        @Override
        public double natural() {
            return leftOfAxis() + rightOfAxis();
        }

        @Override
        public double least() {
            return natural();
        }

        @Override
        public double height(double width) {
            return Style.LABEL.size() * LINES;
        }

        @Override
        public double baseline() {
            return Style.LABEL.size() * ((LINES - 1) / 2 + 0.8);
        }

        @Override
        public void paint(Ink ink, double x, double y, double width, double axis) {
            ink.flushRight(left, x + axis, y + baseline());
            ink.text(right, x + axis + between(), y + baseline());
        }
    }

    /** A sign of a fixed size. */
    record Mark(double natural, double high, double baseline, Block.Painter painter) implements Cell {
        @Override
        public double least() {
            return natural;
        }

        @Override
        public double height(double width) {
            return high;
        }

        @Override
        public void paint(Ink ink, double x, double y, double width, double axis) {
            painter.paint(ink, x, y, width);
        }
    }
}
