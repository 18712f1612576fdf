package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.TapeReading;

/**
 * Text in one or more styles, measured when it is made. Fractions are built: a numerator raised, a denominator lowered,
 * whether they come from a length or stand in a sentence as {@code 15/32}.
 */
public final class Rich {
    /** No text. */
    public static final Rich NOTHING = new Rich(List.of(), 0);

    private final List<Word> words;
    private final double gapAfter;

    /** Words, and the gap that a space at the very end leaves before what is added. */
    Rich(List<Word> words, double gapAfter) {
        this.words = List.copyOf(words);
        this.gapAfter = gapAfter;
    }

    List<Word> words() {
        return words;
    }

    double gapAfter() {
        return gapAfter;
    }

    /** Plain text, its fractions built. */
    public static Rich of(String text, Style style) {
        return NOTHING.plus(text, style);
    }

    /** A length as it stands on a tape, without its unit. */
    public static Rich of(Length length, MeasureStyle measures, Style style) {
        return NOTHING.plus(length.read(measures), style);
    }

    /** This and more text. A space between the two is there if either says so. */
    public Rich plus(String text, Style style) {
        WordSetter setter = new WordSetter(this);
        setter.text(text, style);
        return setter.done();
    }

    /** This and more text, a space between them. */
    public Rich plus(Rich more) {
        if (isEmpty() || more.isEmpty()) {
            return isEmpty() ? more : this;
        }
        List<Word> all = new ArrayList<>(words);
        Word next = more.words.get(0);
        Word last = words.get(words.size() - 1);
        Piece end = last.pieces().get(last.pieces().size() - 1);
        double space = gapAfter > 0
                ? gapAfter
                : end.style().face().advance(" ") * end.style().size();
        all.add(new Word(next.pieces(), next.width(), space));
        all.addAll(more.words.subList(1, more.words.size()));
        return new Rich(all, more.gapAfter);
    }

    /** This and a reading off a tape, without its unit. */
    public Rich plus(TapeReading reading, Style style) {
        WordSetter setter = new WordSetter(this);
        setter.reading(reading, style);
        return setter.done();
    }

    /** A length to the nearest mark, without heavy or light and without its unit: for drawings and set-ups. */
    public static Rich nearest(Length length, MeasureStyle measures, Style style) {
        return NOTHING.plus(nearest(length.read(measures)), style);
    }

    /** This and a length to the nearest mark, with its unit. */
    public Rich plusNearest(Length length, MeasureStyle measures, Style style) {
        return plus(nearest(length.read(measures)), style)
                .plus("\u00a0" + measures.unit().symbol(), style);
    }

    private static TapeReading nearest(TapeReading reading) {
        return new TapeReading(
                reading.negative(),
                reading.whole(),
                reading.numerator(),
                reading.denominator(),
                TapeReading.Hair.EXACT,
                reading.unit());
    }

    /** This and a length with its unit. */
    public Rich plus(Length length, MeasureStyle measures, Style style) {
        return plus(length.read(measures), style)
                .plus("\u00a0" + measures.unit().symbol(), style);
    }

    public boolean isEmpty() {
        return words.isEmpty();
    }

    /** How wide it is on one line, in millimetres. */
    public double width() {
        return line().width();
    }

    /** The width of its widest word: narrower than this, a word breaks. */
    public double widestWord() {
        return words.stream().mapToDouble(Word::width).max().orElse(0);
    }

    /** All of it on one line. */
    public Line line() {
        return lineOf(words);
    }

    /** Broken into lines no wider than that; a word that is wider breaks within. */
    public List<Line> wrap(double width) {
        List<Line> lines = new ArrayList<>();
        List<Word> held = new ArrayList<>();
        double x = 0;
        for (Word whole : words) {
            for (Word word : whole.noWiderThan(width)) {
                double needed = (held.isEmpty() ? 0 : word.gap()) + word.width();
                if (!held.isEmpty() && x + needed > width + TOLERANCE) {
                    lines.add(lineOf(held));
                    held.clear();
                    x = 0;
                    needed = word.width();
                }
                held.add(word);
                x += needed;
            }
        }
        if (!held.isEmpty()) {
            lines.add(lineOf(held));
        }
        return lines;
    }

    /** Sums of widths differ in the last digit by the order of adding. */
    private static final double TOLERANCE = 1e-6;

    private static Line lineOf(List<Word> words) {
        List<Piece> pieces = new ArrayList<>();
        double x = 0;
        for (Word word : words) {
            double gap = pieces.isEmpty() ? 0 : word.gap();
            for (Piece piece : word.pieces()) {
                add(
                        pieces,
                        piece.movedBy(x + gap),
                        gap > 0 && piece == word.pieces().get(0));
            }
            x += gap + word.width();
        }
        return new Line(pieces, x);
    }

    private static void add(List<Piece> pieces, Piece next, boolean afterGap) {
        Piece last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
        if (last != null && last.joins(next) && meets(last, next, afterGap)) {
            pieces.set(pieces.size() - 1, last.joined(afterGap ? " " : "", next));
        } else {
            pieces.add(next);
        }
    }

    /** Whether the next piece stands just where the last one's pen would be. */
    private static boolean meets(Piece last, Piece next, boolean afterGap) {
        double pen = last.x() + last.advance() + (afterGap ? last.style().face().advance(" ") * last.size() : 0);
        return Math.abs(pen - next.x()) < 1e-3;
    }

    @Override
    public String toString() {
        return line().toString();
    }
}
