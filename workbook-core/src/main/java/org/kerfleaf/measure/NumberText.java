package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * Reads one number without a sign: {@code 12}, {@code 12 3/16}, {@code 12-3/16}, {@code 12½}, {@code 5/4}, {@code 0.72},
 * {@code .5}, {@code 1.2E7}.
 *
 * <p>A comma is a decimal comma where it can be nothing else ({@code 12,5}, {@code 0,375}). {@code 1,200} is read as 1200
 * by some and as 1.2 by others and is refused; thousands are written without a sign between them.
 */
final class NumberText {
    private static final Pattern DIGITS = Pattern.compile("[0-9]*");
    private static final Pattern ONE_LETTER_FRACTION = Pattern.compile("[¼½¾⅐-⅞↉]");
    private static final Pattern STROKE = Pattern.compile(" */ *(?=[0-9])");
    private static final Pattern POWER_OF_TEN = Pattern.compile("e[+-]?[0-9]{1,3}");
    private static final Pattern FRACTION = Pattern.compile(ONE_LETTER_FRACTION + "|[0-9]+" + STROKE);
    private static final Pattern DECIMAL_SIGN = Pattern.compile("\\.|,(?=[0-9])");
    private static final Pattern SPACES_OR_DASH = Pattern.compile(" +|-|");

    private NumberText() {}

    static Rational read(TextCursor text) {
        int start = text.at();
        String whole = text.take(DIGITS);
        String sign = text.take(DECIMAL_SIGN);
        if (!sign.isEmpty()) {
            return decimal(text, start, whole, sign.charAt(0));
        }
        if (whole.isEmpty()) {
            return oneLetterFraction(text);
        }
        String power = text.take(POWER_OF_TEN);
        if (!power.isEmpty()) {
            return Rational.of(new BigDecimal(whole + power));
        }
        if (!text.take(STROKE).isEmpty()) {
            return fraction(text, new BigInteger(whole));
        }
        return Rational.of(new BigDecimal(whole)).plus(fractionAfterWhole(text));
    }

    private static Rational decimal(TextCursor text, int start, String whole, char sign) {
        int afterSign = text.at();
        String places = text.take(DIGITS);
        if (places.isEmpty()) {
            throw text.stop("a digit is wanted after the point");
        }
        if (text.next() == '.' || text.next() == ',') {
            throw text.stop("a number has one decimal sign, and none between its thousands");
        }
        boolean couldBeThousands = places.length() == 3 && whole.length() <= 3 && whole.matches("[1-9].*");
        if (sign == ',' && couldBeThousands) {
            throw text.stopAt(
                    afterSign - 1,
                    "%s is %s%s to some and %s.%s to others".formatted(text.since(start), whole, places, whole, places),
                    "Write %s%s or %s.%s, whichever is meant.".formatted(whole, places, whole, places));
        }
        return Rational.of(new BigDecimal("0" + whole + "." + places + text.take(POWER_OF_TEN)));
    }

    private static Rational fractionAfterWhole(TextCursor text) {
        int end = text.at();
        text.take(SPACES_OR_DASH);
        int start = text.at();
        if (!text.sees(FRACTION) || start == end && text.seesDigit()) {
            text.goBackTo(end);
            return Rational.ZERO;
        }
        Rational fraction = text.seesDigit() ? plainFraction(text) : oneLetterFraction(text);
        if (fraction.compareTo(Rational.of(1)) >= 0) {
            throw text.stopAt(start, "%s after a whole number is not less than one".formatted(text.since(start)));
        }
        return fraction;
    }

    private static Rational plainFraction(TextCursor text) {
        BigInteger over = new BigInteger(text.take(DIGITS));
        text.take(STROKE);
        return fraction(text, over);
    }

    private static Rational fraction(TextCursor text, BigInteger over) {
        int start = text.at();
        BigInteger under = new BigInteger(text.take(DIGITS));
        if (under.signum() == 0) {
            throw text.stopAt(start, "a fraction cannot have 0 below the line");
        }
        return new Rational(over, under);
    }

    private static Rational oneLetterFraction(TextCursor text) {
        String letter = text.take(ONE_LETTER_FRACTION);
        if (letter.isEmpty()) {
            throw text.stop("a number is wanted here, not %s".formatted(text.shown()));
        }
        String[] parts = Normalizer.normalize(letter, Normalizer.Form.NFKC).split("⁄");
        return new Rational(new BigInteger(parts[0]), new BigInteger(parts[1]));
    }
}
