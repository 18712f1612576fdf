package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number as it was written, before any rounding: 3/16 and 0.1 are both exact.
 *
 * @param over above the line
 * @param under below the line, one or more
 */
record Rational(BigInteger over, BigInteger under) implements Comparable<Rational> {
    static final Rational ZERO = of(0);

    /** More than twice the digits of a double, so that turning into one rounds as if once. */
    private static final MathContext WIDE = new MathContext(40, RoundingMode.HALF_EVEN);

    static Rational of(long whole) {
        return new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    static Rational of(BigDecimal decimal) {
        return decimal.scale() <= 0
                ? new Rational(decimal.toBigIntegerExact(), BigInteger.ONE)
                : new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    Rational plus(Rational other) {
        return new Rational(over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
    }

    Rational times(Rational other) {
        return new Rational(over.multiply(other.over), under.multiply(other.under));
    }

    Rational negated() {
        return new Rational(over.negate(), under);
    }

    boolean isZero() {
        return over.signum() == 0;
    }

    /** To the nearest whole number, halves to the even one. */
    BigInteger rounded() {
        return new BigDecimal(over)
                .divide(new BigDecimal(under), 0, RoundingMode.HALF_EVEN)
                .toBigIntegerExact();
    }

    /** The nearest double; infinite if there is none. */
    double toDouble() {
        return new BigDecimal(over).divide(new BigDecimal(under), WIDE).doubleValue();
    }

    @Override
    public int compareTo(Rational other) {
        return over.multiply(other.under).compareTo(other.over.multiply(under));
    }
}
