package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length as it is read off a tape: a whole number, a fraction in lowest terms (or decimals), and whether the true
 * length is a hair over or under what is printed.
 *
 * @param negative whether the length is below zero
 * @param whole whole inches, or whole millimetres
 * @param numerator of the fraction in lowest terms, 0 if there is none
 * @param denominator of the fraction, 1 if there is none; for millimetres 1 or 2 (the half)
 * @param hair heavy when the true length is at least 1/256 in over the printed one, light when under; metric is always exact
 * @param unit what whole and fraction count
 */
public record TapeReading(boolean negative, long whole, int numerator, int denominator, Hair hair, LengthUnit unit) {
    /** How a printed length stands to the true one. */
    public enum Hair {
        EXACT(""),
        HEAVY("heavy"),
        LIGHT("light");

        private final String word;

        Hair(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private static final long A_HAIR = LengthUnit.INCHES.nanometres() / 256;

    static TapeReading of(Length length, MeasureStyle style, RoundingMode mode) {
        Length step = style.step();
        Length finest = style.unit() == LengthUnit.INCHES ? Length.ofSixtyFourths(1) : step;
        boolean exact = length.nanometres() % finest.nanometres() == 0;
        Length printed = exact ? length : length.roundedTo(step, mode);
        long off = length.absolute().minus(printed.absolute()).nanometres();
        Hair hair = style.unit() == LengthUnit.MILLIMETRES || Math.abs(off) < A_HAIR
                ? Hair.EXACT
                : off > 0 ? Hair.HEAVY : Hair.LIGHT;
        long unit = style.unit().nanometres();
        long size = printed.absolute().nanometres();
        BigDecimal parts = BigDecimal.valueOf(size % unit)
                .divide(BigDecimal.valueOf(exact ? finest.nanometres() : step.nanometres()));
        int numerator = parts.intValueExact();
        int denominator = (int) (unit / (exact ? finest : step).nanometres());
        while (numerator % 2 == 0 && denominator > 1) {
            numerator /= 2;
            denominator /= 2;
        }
        return new TapeReading(printed.isNegative(), size / unit, numerator, denominator, hair, style.unit());
    }

    /** The digits with heavy or light, without the unit: {@code 24 13/32 heavy}, {@code 309.5}. */
    public String text() {
        return digits() + (hair == Hair.EXACT ? "" : " " + hair.word());
    }

    /** The digits alone: {@code 24 13/32}, {@code 309.5}. */
    public String digits() {
        String sign = negative ? "-" : "";
        if (numerator == 0) {
            return sign + whole;
        }
        if (unit == LengthUnit.MILLIMETRES) {
            return sign + whole + ".5";
        }
        String fraction = numerator + "/" + denominator;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }
}
