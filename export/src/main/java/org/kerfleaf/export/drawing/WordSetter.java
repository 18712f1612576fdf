package org.kerfleaf.export.drawing;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.TapeReading;

/**
 * Turns text into words of measured pieces. With a size s, a numerator is set at 0.64 s raised 0.30 s, the stroke at 0.8 s,
 * the denominator at 0.64 s lowered 0.06 s, and 0.16 s stand before the numerator so that 1 5/8 is not read as 15/8.
 */
final class WordSetter {
    private static final double SMALL = 0.64;
    private static final double STROKE = 0.8;
    private static final double LIFT = 0.30;
    private static final double DROP = 0.06;
    private static final double BEFORE = 0.16;

    private static final Pattern FRACTION =
            Pattern.compile("(?<![\\w/.,])(?:(\\d+)[ \\u00a0-])?(\\d{1,2})/(2|3|4|5|8|16|32|64)(?!\\d|/|\\.\\d)");
    private static final Pattern UNIT = Pattern.compile(
            "(?<=\\d) (?=(?:in|mm|cm|m|ft|lb|kg|g|h|min|deg|sq|fl|qt|gal|oz|l|ml|mph|F|C|%)(?![\\w]))|(?<=No\\.) (?=\\d)");
    private static final Pattern VULGAR = Pattern.compile("(\\d?)([¼½¾⅐-⅞])");
    private static final Pattern AFTER_HYPHEN = Pattern.compile("(?<=\\p{L}[-–/])(?=\\p{L})");

    private final List<Word> words;
    private final List<Piece> held = new ArrayList<>();
    private double x;
    private double gap;

    /** Goes on after that text; its last word stays open unless a space ended it. */
    WordSetter(Rich before) {
        words = new ArrayList<>(before.words());
        gap = before.gapAfter();
        if (!words.isEmpty() && gap == 0) {
            Word last = words.remove(words.size() - 1);
            held.addAll(last.pieces());
            x = last.width();
            gap = last.gap();
        }
    }

    Rich done() {
        boolean open = !held.isEmpty();
        close(0);
        return new Rich(words, open ? 0 : gap);
    }

    void text(String raw, Style style) {
        String text = UNIT.matcher(spelled(raw)).replaceAll("\u00a0");
        Matcher fraction = FRACTION.matcher(text);
        int from = 0;
        while (fraction.find()) {
            plain(text.substring(from, fraction.start()), style);
            String whole = fraction.group(1) == null ? "" : fraction.group(1);
            fraction(whole, fraction.group(2), fraction.group(3), style);
            from = fraction.end();
        }
        plain(text.substring(from), style);
    }

    void reading(TapeReading reading, Style style) {
        if (reading.numerator() == 0 || reading.unit() == LengthUnit.MILLIMETRES) {
            letters(reading.digits(), style);
        } else {
            letters(reading.negative() ? "-" : "", style);
            fraction(
                    reading.whole() == 0 ? "" : Long.toString(reading.whole()),
                    Integer.toString(reading.numerator()),
                    Integer.toString(reading.denominator()),
                    style);
        }
        if (reading.hair() != TapeReading.Hair.EXACT) {
            plain(" " + reading.hair().word(), style);
        }
    }

    private static String spelled(String raw) {
        String text = Normalizer.normalize(raw, Normalizer.Form.NFC).replace('⌀', 'Ø');
        Matcher vulgar = VULGAR.matcher(text);
        return vulgar.replaceAll(found -> {
                    String fraction = Normalizer.normalize(found.group(2), Normalizer.Form.NFKC)
                            .replace('⁄', '/');
                    return found.group(1).isEmpty() ? fraction : found.group(1) + " " + fraction;
                })
                .replaceAll("[\\t\\r\\n ]+", " ");
    }

    private void plain(String text, Style style) {
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || text.charAt(i) == ' ') {
                hyphenated(text.substring(start, i), style);
                if (i < text.length()) {
                    close(style.face().advance(" ") * style.size());
                }
                start = i + 1;
            }
        }
    }

    private void hyphenated(String word, Style style) {
        String[] parts = AFTER_HYPHEN.split(word);
        for (int i = 0; i < parts.length; i++) {
            if (i > 0) {
                close(0);
            }
            letters(parts[i], style);
        }
    }

    /** Ends the word in hand; the next one stands that far after it. */
    private void close(double gapToNext) {
        if (!held.isEmpty()) {
            words.add(new Word(held, x, gap));
            held.clear();
            x = 0;
            gap = gapToNext;
        } else {
            gap = Math.max(gap, words.isEmpty() ? 0 : gapToNext);
        }
    }

    private void letters(String text, Style style) {
        StringBuilder run = new StringBuilder();
        text.replace('\u00a0', ' ').codePoints().forEach(c -> {
            if (style.face().shows(c)) {
                run.appendCodePoint(c);
            } else {
                add(run, style);
                Glyphs.Drawn drawn = Glyphs.of(c);
                put(Piece.sign(drawn.sign(), drawn.advance(), style, x));
            }
        });
        add(run, style);
    }

    private void add(StringBuilder run, Style style) {
        if (!run.isEmpty()) {
            put(Piece.letters(run.toString(), style, style.size(), x, 0));
            run.setLength(0);
        }
    }

    private void fraction(String whole, String numerator, String denominator, Style style) {
        double size = style.size();
        if (!whole.isEmpty()) {
            // The space is really there, so that a copied size reads 1 5/8; only the pen moves on by less.
            Piece digits = Piece.letters(whole + " ", style, size, x, 0);
            double pen = style.face().advance(whole) * size + BEFORE * size;
            held.add(new Piece(digits.text(), style, size, x, 0, pen, digits.sign()));
            x += pen;
        }
        put(Piece.letters(numerator, style, size * SMALL, x, size * LIFT));
        put(Piece.letters("⁄", style, size * STROKE, x, 0));
        put(Piece.letters(denominator, style, size * SMALL, x, -size * DROP));
    }

    private void put(Piece piece) {
        held.add(piece);
        x += piece.advance();
    }
}
