package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, counted in whole nanometres.
 *
 * <p>One inch is 25 400 000 nm and 1/64 in is 396 875 nm (NIST SP 811: 1 in = 25.4 mm by definition), so inch fractions
 * and millimetres are both exact and equality is equality. Results of roots and trigonometry are rounded to 1 nm.
 *
 * @param nanometres the count, from about -9.2 to 9.2 million kilometres; may be negative
 */
public record Length(long nanometres) implements Quantity, Comparable<Length> {
    /** No length at all. */
    public static final Length ZERO = new Length(0);

    private static final long SIXTY_FOURTH = 396_875L;

    /** Whole inches. @throws ArithmeticException if the length is beyond the range */
    public static Length ofInches(long inches) {
        return new Length(Math.multiplyExact(inches, LengthUnit.INCHES.nanometres()));
    }

    /** Inches as a decimal number, rounded to 1 nm. */
    public static Length ofInches(double inches) {
        return ofNanometres(inches * LengthUnit.INCHES.nanometres());
    }

    /** Sixty-fourths of an inch, exact. @throws ArithmeticException if the length is beyond the range */
    public static Length ofSixtyFourths(long count) {
        return new Length(Math.multiplyExact(count, SIXTY_FOURTH));
    }

    /** Whole millimetres, exact. @throws ArithmeticException if the length is beyond the range */
    public static Length ofMillimetres(long millimetres) {
        return new Length(Math.multiplyExact(millimetres, LengthUnit.MILLIMETRES.nanometres()));
    }

    /** Millimetres as a decimal number, rounded to 1 nm. */
    public static Length ofMillimetres(double millimetres) {
        return ofNanometres(millimetres * LengthUnit.MILLIMETRES.nanometres());
    }

    /**
     * Reads a length as people write it, with its unit: {@code 12 3/16 in}, {@code 5' 3 1/2"}, {@code 309.6 mm}.
     *
     * @throws MeasureTextException if the text is not a length or names no unit
     */
    public static Length parse(String text) {
        return LengthText.parse(text, null);
    }

    /**
     * Reads a length as people write it; a number without a unit is in the given one.
     *
     * @throws MeasureTextException if the text is not a length
     */
    public static Length parse(String text, LengthUnit whenNoneIsSaid) {
        return LengthText.parse(text, whenNoneIsSaid);
    }

    private static Length ofNanometres(double nanometres) {
        if (!(Math.abs(nanometres) < 9.2e18)) {
            throw new ArithmeticException("A length of %s nm is beyond what can be counted.".formatted(nanometres));
        }
        return new Length(Math.round(nanometres));
    }

    public boolean isZero() {
        return nanometres == 0;
    }

    public boolean isPositive() {
        return nanometres > 0;
    }

    public boolean isNegative() {
        return nanometres < 0;
    }

    public boolean isLongerThan(Length other) {
        return nanometres > other.nanometres;
    }

    public boolean isShorterThan(Length other) {
        return nanometres < other.nanometres;
    }

    /** Whether the two differ by no more than the tolerance. */
    public boolean isWithin(Length other, Length tolerance) {
        return minus(other).absolute().nanometres <= tolerance.nanometres;
    }

    /** This and all the others, end to end. @throws ArithmeticException on overflow */
    public Length plus(Length... others) {
        long sum = nanometres;
        for (Length other : others) {
            sum = Math.addExact(sum, other.nanometres);
        }
        return new Length(sum);
    }

    /** This and a length said in words: {@code width.plus("3 in")}. */
    public Length plus(String text) {
        return plus(parse(text));
    }

    /** This less all the others. @throws ArithmeticException on overflow */
    public Length minus(Length... others) {
        long rest = nanometres;
        for (Length other : others) {
            rest = Math.subtractExact(rest, other.nanometres);
        }
        return new Length(rest);
    }

    /** This less a length said in words: {@code width.minus("3 in")}. */
    public Length minus(String text) {
        return minus(parse(text));
    }

    /** So many of this, end to end. @throws ArithmeticException on overflow */
    public Length times(long count) {
        return new Length(Math.multiplyExact(nanometres, count));
    }

    /** This scaled by a number, rounded to 1 nm. */
    public Length times(double factor) {
        return ofNanometres(nanometres * factor);
    }

    /** One of so many equal pieces, rounded to 1 nm. @throws ArithmeticException if there are no pieces */
    public Length dividedBy(long pieces) {
        BigDecimal whole = BigDecimal.valueOf(nanometres);
        return new Length(whole.divide(BigDecimal.valueOf(pieces), 0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }

    /** How many times the other goes into this, as a number. @throws ArithmeticException if the other is zero */
    public double dividedBy(Length other) {
        if (other.isZero()) {
            throw new ArithmeticException("%s divided by a length of zero.".formatted(this));
        }
        return (double) nanometres / other.nanometres;
    }

    /** Half of this, rounded to 1 nm. */
    public Length half() {
        return dividedBy(2);
    }

    /** The slope that climbs this much over that run. @throws ArithmeticException if the run is zero */
    public Angle over(Length run) {
        if (run.isZero()) {
            throw new ArithmeticException("A rise of %s over no run has no slope.".formatted(this));
        }
        return Angle.ofRadians(StrictMath.atan2(nanometres, run.nanometres));
    }

    /** The area of a rectangle of this by that. */
    public Area by(Length other) {
        return Area.ofSquareMillimetres(inMillimetres() * other.inMillimetres());
    }

    public Length absolute() {
        return nanometres < 0 ? negated() : this;
    }

    public Length negated() {
        return new Length(Math.negateExact(nanometres));
    }

    public Length max(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public Length min(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** This rounded to a whole number of steps: {@code DOWN} for what must fit into something, {@code UP} for blanks. */
    public Length roundedTo(Length step, RoundingMode mode) {
        BigDecimal steps = BigDecimal.valueOf(nanometres).divide(BigDecimal.valueOf(step.nanometres), 0, mode);
        return new Length(Math.multiplyExact(steps.longValueExact(), step.nanometres));
    }

    /** Millimetres as a decimal number, for trigonometry and drawing. */
    public double inMillimetres() {
        return nanometres / 1e6;
    }

    /** Inches as a decimal number, for trigonometry and printing. */
    public double inInches() {
        return nanometres / 25.4e6;
    }

    /** Millimetres, exact to the nanometre. */
    public BigDecimal exactMillimetres() {
        return BigDecimal.valueOf(nanometres, 6);
    }

    /** This as it stands on a tape: whole, fraction and heavy or light. */
    public TapeReading read(MeasureStyle style) {
        return TapeReading.of(this, style, RoundingMode.HALF_UP);
    }

    @Override
    public String in(MeasureStyle style) {
        return read(style).text() + " " + style.unit().symbol();
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /** The canonical text, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return LengthText.canonical(this);
    }
}
