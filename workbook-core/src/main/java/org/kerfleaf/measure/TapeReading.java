package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Set;

/**
 * A length as it is read off a tape: a whole number, a fraction in lowest terms (or decimals), and whether the true
 * length is a hair over or under what is printed.
 *
 * @param negative whether the length is below zero
 * @param whole whole inches, or whole millimetres
 * @param numerator of the fraction in lowest terms, 0 if there is none
 * @param denominator of the fraction, 1 if there is none; for millimetres 1 or 2 (the half)
 * @param hair heavy when the true length is at least 1/256 in more than the printed one, light when as much less, the
 *     sign left aside; always exact for millimetres, and for a reading rounded up or down on purpose, which is the mark to
 *     cut to. Printed as 0, heavy is above and light below zero
 * @param unit what whole and fraction count
 */
public record TapeReading(boolean negative, long whole, int numerator, int denominator, Hair hair, LengthUnit unit) {
    /** How a printed length stands to the true one. */
    public enum Hair {
        /** On the line. */
        EXACT(""),
        /** A hair over the line. */
        HEAVY("heavy"),
        /** A hair under the line. */
        LIGHT("light");

        private final String word;

        Hair(String word) {
            this.word = word;
        }

        /** The word behind the number, empty on the line. */
        public String word() {
            return word;
        }
    }

    private static final BigDecimal HAIRS_IN_AN_INCH = BigDecimal.valueOf(256);

    private static final BigDecimal INCH = BigDecimal.valueOf(LengthUnit.INCHES.nanometres());
    private static final Set<RoundingMode> NEAREST =
            EnumSet.of(RoundingMode.HALF_UP, RoundingMode.HALF_DOWN, RoundingMode.HALF_EVEN);

    static TapeReading of(Length length, MeasureStyle style, RoundingMode mode) {
        BigDecimal size = BigDecimal.valueOf(length.nanometres());
        BigDecimal step = BigDecimal.valueOf(stepFor(length, style).nanometres());
        BigDecimal steps = size.divide(step, 0, mode);
        BigDecimal over = size.subtract(steps.multiply(step));
        boolean negative = steps.signum() < 0;
        boolean hairCounts = style.unit() == LengthUnit.INCHES && NEAREST.contains(mode);
        Hair hair = hairCounts ? hair(negative ? over.negate() : over) : Hair.EXACT;
        return inLowestTerms(negative, steps.abs().longValueExact(), style.unit(), step.longValueExact(), hair);
    }

    /** A whole number of 1/64 in is printed as it is, whatever the style's step. */
    private static Length stepFor(Length length, MeasureStyle style) {
        Length finest = Length.ofSixtyFourths(1);
        boolean asItIs = style.unit() == LengthUnit.INCHES && length.nanometres() % finest.nanometres() == 0;
        return asItIs ? finest : style.step();
    }

    private static Hair hair(BigDecimal over) {
        if (over.abs().multiply(HAIRS_IN_AN_INCH).compareTo(INCH) < 0) {
            return Hair.EXACT;
        }
        return over.signum() > 0 ? Hair.HEAVY : Hair.LIGHT;
    }

    private static TapeReading inLowestTerms(boolean negative, long steps, LengthUnit unit, long step, Hair hair) {
        int inOne = (int) (unit.nanometres() / step);
        int left = (int) (steps % inOne);
        int common = Integer.lowestOneBit(left | inOne);
        return new TapeReading(negative, steps / inOne, left / common, inOne / common, hair, unit);
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

    /** With the unit: {@code 24 13/32 in heavy}, {@code 309.5 mm}. */
    @Override
    public String toString() {
        return digits() + " " + unit.symbol() + (hair == Hair.EXACT ? "" : " " + hair.word());
    }
}
