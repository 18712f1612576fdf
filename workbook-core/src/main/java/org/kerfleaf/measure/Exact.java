package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.LongFunction;

/**
 * Arithmetic on counts that never wraps, and says what it was doing when a result is beyond what can be counted.
 *
 * @param shown how a count is shown to a person
 */
record Exact(LongFunction<?> shown) {
    long plus(long count, long other) {
        try {
            return Math.addExact(count, other);
        } catch (ArithmeticException overflow) {
            throw tooMuch("%s plus %s".formatted(shown.apply(count), shown.apply(other)));
        }
    }

    long minus(long count, long other) {
        try {
            return Math.subtractExact(count, other);
        } catch (ArithmeticException overflow) {
            throw tooMuch("%s less %s".formatted(shown.apply(count), shown.apply(other)));
        }
    }

    long times(long count, long factor) {
        try {
            return Math.multiplyExact(count, factor);
        } catch (ArithmeticException overflow) {
            throw tooMuch("%s times %d".formatted(shown.apply(count), factor));
        }
    }

    /** The nearest count. */
    long times(long count, double factor) {
        double product = count * factor;
        if (!canBeCounted(product)) {
            throw tooMuch("%s times %s".formatted(shown.apply(count), factor));
        }
        return Math.round(product);
    }

    /** The nearest count, halves to the even one. */
    long dividedBy(long count, long pieces) {
        if (pieces == 0) {
            throw new ArithmeticException("%s in 0 pieces has no size.".formatted(shown.apply(count)));
        }
        if (pieces == -1) {
            return minus(0, count);
        }
        return BigDecimal.valueOf(count)
                .divide(BigDecimal.valueOf(pieces), 0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    /** So many of a unit that has so many counts, exact. */
    static long of(long number, long countsPerUnit, String unit) {
        try {
            return Math.multiplyExact(number, countsPerUnit);
        } catch (ArithmeticException overflow) {
            throw tooMuch("%d %s".formatted(number, unit));
        }
    }

    /** So many of a unit that has so many counts, to the nearest count. */
    static long of(double number, double countsPerUnit, String unit) {
        double count = number * countsPerUnit;
        if (!canBeCounted(count)) {
            throw tooMuch("%s %s".formatted(number, unit));
        }
        return Math.round(count);
    }

    private static boolean canBeCounted(double count) {
        return Math.abs(count) < 0x1p63;
    }

    private static ArithmeticException tooMuch(String what) {
        return new ArithmeticException("%s is beyond what can be counted.".formatted(what));
    }
}
