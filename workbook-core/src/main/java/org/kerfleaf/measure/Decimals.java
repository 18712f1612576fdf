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

    static String significant(double value, int digits) {
        BigDecimal shown = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }
}
