package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints decimal numbers the same way everywhere, whatever the machine's language. */
final class Decimals {
    private Decimals() {}

    static String of(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** The text of a double that reads back as the same double, plain up to a thousand million million. */
    static String exact(double value) {
        String text = Double.toString(value);
        boolean plain = value == 0 || Math.abs(value) >= 1e-6 && Math.abs(value) < 1e15;
        BigDecimal decimal = new BigDecimal(text);
        return plain
                ? (decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString())
                : text;
    }

    /** The number itself. @throws ArithmeticException if it is not a number or beyond what can be counted */
    static double counted(double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("%s %s is no amount that can be counted.".formatted(value, unit));
        }
        return value + 0.0;
    }

    /** One amount divided by another. @throws ArithmeticException if the other is zero, with both in the message */
    static double ratio(double value, double other, Object shown, Object shownOther) {
        if (other == 0) {
            throw new ArithmeticException("%s divided by %s has no result.".formatted(shown, shownOther));
        }
        return value / other;
    }

    /** To so many places, without trailing zeros: one quart is {@code 1}, not {@code 1.00}. */
    static String upTo(double value, int places) {
        BigDecimal shown = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    static String significant(double value, int digits) {
        BigDecimal shown = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }
}
