package org.kerfleaf.export.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Optional;

/**
 * Letters of one size on one baseline, or one sign that is drawn because the faces lack it.
 *
 * @param text what a reader copies; empty for a drawn sign
 * @param size in millimetres; smaller than the style's in fractions
 * @param x from the start of the word
 * @param rise of the baseline, upwards
 * @param advance how far the pen moves on
 * @param sign the drawn sign, in shares of the size, y down from the baseline
 */
record Piece(String text, Style style, double size, double x, double rise, double advance, Optional<Sign> sign) {
    private static final double BOLDNESS = 0.08;

    /** A sign's lines or outline. */
    record Sign(Shape shape, boolean filled) {}

    static Piece letters(String text, Style style, double size, double x, double rise) {
        return new Piece(text, style, size, x, rise, style.face().advance(text) * size, Optional.empty());
    }

    static Piece sign(Sign sign, double advance, Style style, double x) {
        return new Piece("", style, style.size(), x, 0, advance * style.size(), Optional.of(sign));
    }

    boolean joins(Piece next) {
        return sign.isEmpty()
                && next.sign.isEmpty()
                && style.equals(next.style)
                && size == next.size
                && rise == next.rise;
    }

    Piece movedBy(double dx) {
        return new Piece(text, style, size, x + dx, rise, advance, sign);
    }

    Piece joined(String gap, Piece next) {
        return letters(text + gap + next.text, style, size, x, rise);
    }

    void paint(Ink ink, double left, double baseline) {
        if (sign.isEmpty()) {
            ink.letters(text, style, size, left + x, baseline - rise);
            return;
        }
        AffineTransform place = AffineTransform.getTranslateInstance(left + x, baseline - rise);
        place.scale(size, size);
        Shape shape = place.createTransformedShape(sign.get().shape());
        if (sign.get().filled()) {
            ink.fill(shape, style.colour());
        } else {
            ink.stroke(shape, style.colour(), size * BOLDNESS);
        }
    }
}
