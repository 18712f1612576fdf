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
 * @group measures
 */
public record Length(long nanometres) implements Quantity, Comparable<Length> {
    /** No length at all. */
    public static final Length ZERO = new Length(0);

    private static final long SIXTY_FOURTH = 396_875L;
    private static final Exact EXACT = new Exact(Length::new);

    /** Whole inches. @throws ArithmeticException if the length is beyond the range */
    public static Length ofInches(long inches) {
        return new Length(Exact.of(inches, LengthUnit.INCHES.nanometres(), "in"));
    }

    /** Inches as a decimal number, rounded to 1 nm. @throws ArithmeticException if that is beyond the range, or no number */
    public static Length ofInches(double inches) {
        return new Length(Exact.of(inches, (double) LengthUnit.INCHES.nanometres(), "in"));
    }

    /** Sixty-fourths of an inch, exact. @throws ArithmeticException if the length is beyond the range */
    public static Length ofSixtyFourths(long count) {
        return new Length(Exact.of(count, SIXTY_FOURTH, "sixty-fourths of an inch"));
    }

    /** Whole millimetres, exact. @throws ArithmeticException if the length is beyond the range */
    public static Length ofMillimetres(long millimetres) {
        return new Length(Exact.of(millimetres, LengthUnit.MILLIMETRES.nanometres(), "mm"));
    }

    /** Millimetres as a decimal number, rounded to 1 nm. @throws ArithmeticException if that is beyond the range, or no number */
    public static Length ofMillimetres(double millimetres) {
        return new Length(Exact.of(millimetres, (double) LengthUnit.MILLIMETRES.nanometres(), "mm"));
    }

    /**
     * Reads a length as people write it, with its unit: {@code 12 3/16 in}, {@code 12-3/16"}, {@code 5' 3 1/2"},
     * {@code 309.6 mm}, {@code 1 m 20 cm}. What is no whole number of nanometres is rounded to the nearest.
     *
     * <p>A comma is a decimal comma where it can be nothing else ({@code 12,5 mm}); {@code 1,200 mm} is refused.
     *
     * @throws MeasureTextException if the text is not a length, names no unit or is beyond the range
     */
    public static Length parse(String text) {
        return LengthText.parse(text, null);
    }

    /**
     * Reads a length as people write it; a number without a unit is in the given one. Where inches are given, so is a
     * number after feet: {@code 5' 3 1/2}.
     *
     * @param whenNoneIsSaid null if a unit must be said
     * @throws MeasureTextException if the text is not a length or is beyond the range
     */
    public static Length parse(String text, LengthUnit whenNoneIsSaid) {
        return LengthText.parse(text, whenNoneIsSaid);
    }

    /** Whether it is nothing. */
    public boolean isZero() {
        return nanometres == 0;
    }

    /** Whether it is more than nothing. */
    public boolean isPositive() {
        return nanometres > 0;
    }

    /** Whether it is less than nothing. */
    public boolean isNegative() {
        return nanometres < 0;
    }

    /** Whether it is longer than the other. @example Length shelfDeep = depth.isLongerThan(length("10 in")) ? length("8 in") : depth.minus("2 in") */
    public boolean isLongerThan(Length other) {
        return nanometres > other.nanometres;
    }

    /**
     * Whether it is shorter than the other.
     *
     * @example Length shelfDeep = depth.isShorterThan(length("10 in")) ? depth.minus("2 in") : length("8 in")
     */
    public boolean isShorterThan(Length other) {
        return nanometres < other.nanometres;
    }

    /** Whether the two differ by no more than the tolerance. */
    public boolean isWithin(Length other, Length tolerance) {
        return minus(other).absolute().nanometres <= tolerance.nanometres;
    }

    /** This and all the others, end to end. @throws ArithmeticException on overflow @example Length outside = width.plus(t, t) */
    public Length plus(Length... others) {
        long sum = nanometres;
        for (Length other : others) {
            sum = EXACT.plus(sum, other.nanometres);
        }
        return new Length(sum);
    }

    /** This and a length said with its unit. @throws MeasureTextException if it is no length */
    public Length plus(String text) {
        return plus(parse(text));
    }

    /** This less all the others. @throws ArithmeticException on overflow @example Length between = depth.minus(t, t) */
    public Length minus(Length... others) {
        long rest = nanometres;
        for (Length other : others) {
            rest = EXACT.minus(rest, other.nanometres);
        }
        return new Length(rest);
    }

    /** This less a length said with its unit. @throws MeasureTextException if it is no length */
    public Length minus(String text) {
        return minus(parse(text));
    }

    /** So many of this, end to end. @throws ArithmeticException on overflow @example Length run = depth.times(4) */
    public Length times(long count) {
        return new Length(EXACT.times(nanometres, count));
    }

    /** This scaled by a number, rounded to 1 nm. @throws ArithmeticException on overflow, or if the factor is no number */
    public Length times(double factor) {
        return new Length(EXACT.times(nanometres, factor));
    }

    /** One of so many equal pieces, rounded to 1 nm. @throws ArithmeticException if there are no pieces @example Length bay = width.dividedBy(3) */
    public Length dividedBy(long pieces) {
        return new Length(EXACT.dividedBy(nanometres, pieces));
    }

    /** How many times the other goes into this, as a number. @throws ArithmeticException if the other is zero */
    public double dividedBy(Length other) {
        if (other.isZero()) {
            throw new ArithmeticException("%s divided by a length of zero.".formatted(this));
        }
        return (double) nanometres / other.nanometres;
    }

    /** Half of this, rounded to 1 nm. @example Length middle = width.half() */
    public Length half() {
        return dividedBy(2);
    }

    /**
     * The slope that climbs this much over that run.
     *
     * @throws ArithmeticException if the run is zero
     * @example Angle lean = length("8 in").over(depth)
     */
    public Angle over(Length run) {
        if (run.isZero()) {
            throw new ArithmeticException("A rise of %s over no run has no slope.".formatted(this));
        }
        return Angle.ofRadians(StrictMath.atan2(nanometres, run.nanometres));
    }

    /** The area of a rectangle of this by that. @example Area floorArea = width.by(depth) */
    public Area by(Length other) {
        return Area.ofSquareMillimetres(inMillimetres() * other.inMillimetres());
    }

    /** This without its sign. @throws ArithmeticException on overflow */
    public Length absolute() {
        return nanometres < 0 ? negated() : this;
    }

    /** This with the other sign. */
    public Length negated() {
        return new Length(EXACT.minus(0, nanometres));
    }

    /** The longer of the two. @example Length longer = width.max(depth) */
    public Length max(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The shorter of the two. @example Length shorter = width.min(depth) */
    public Length min(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /**
     * This rounded to a whole number of steps: {@code DOWN} for what must fit into something, {@code UP} for blanks.
     *
     * @throws IllegalArgumentException if the step is not longer than zero
     * @throws ArithmeticException on overflow
     */
    public Length roundedTo(Length step, RoundingMode mode) {
        if (!step.isPositive()) {
            throw new IllegalArgumentException("Step (%s) to round to: it must be longer than zero.".formatted(step));
        }
        BigDecimal steps = BigDecimal.valueOf(nanometres).divide(BigDecimal.valueOf(step.nanometres), 0, mode);
        return step.times(steps.longValueExact());
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

    /** This as it stands on a tape: whole, fraction and heavy or light, to the nearest step. */
    public TapeReading read(MeasureStyle style) {
        return read(style, RoundingMode.HALF_UP);
    }

    /**
     * This as it is marked on a tape, rounded as asked: {@code DOWN} for what must fit into something, {@code UP} for
     * blanks. A whole number of 1/64 in is read as it is.
     */
    public TapeReading read(MeasureStyle style, RoundingMode mode) {
        return TapeReading.of(this, style, mode);
    }

    /** As read off a tape, with the unit: {@code 24 13/32 in heavy}, {@code 309.5 mm}. */
    @Override
    public String in(MeasureStyle style) {
        return read(style).toString();
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /**
     * The canonical text, read back exactly by {@link #parse(String)}: inches with a fraction where the length is a whole
     * number of 1/64 in ({@code 12 3/16 in}; so 127 mm, both being exact, is {@code 5 in}), else millimetres
     * ({@code 100 mm}, {@code 309.6 mm}).
     */
    @Override
    public String toString() {
        return LengthText.canonical(this);
    }
}
