package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An angle or a slope, counted in billionths of a degree; a slope is the angle it makes with the level.
 *
 * @param nanodegrees the count; 30 degrees are 30 000 000 000
 * @group measures
 */
public record Angle(long nanodegrees) implements Quantity, Comparable<Angle> {
    /** Flat, or square. */
    public static final Angle ZERO = new Angle(0);

    /** A right angle. */
    public static final Angle RIGHT = new Angle(90_000_000_000L);

    private static final double PER_DEGREE = 1e9;
    private static final Exact EXACT = new Exact(Angle::new);

    /**
     * Degrees as a decimal number, rounded to a billionth of a degree.
     *
     * @throws ArithmeticException if that is beyond what can be counted (about 9e9 degrees), or no number
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Exact.of(degrees, PER_DEGREE, "deg"));
    }

    static Angle ofRadians(double radians) {
        return ofDegrees(StrictMath.toDegrees(radians));
    }

    /**
     * Reads an angle or slope as people write it: {@code 30 deg}, {@code 30°}, {@code 6 in 12},
     * {@code 6/12}, {@code 1:2} (rise:run), {@code 50 %}. A bare number is refused, and so is a run of zero.
     *
     * @throws MeasureTextException if the text is none of these
     */
    public static Angle parse(String text) {
        return AngleText.parse(text);
    }

    /** Whether it is flat, or square. */
    public boolean isZero() {
        return nanodegrees == 0;
    }

    /** This and another. @example Angle steeper = slope.plus(Angle.parse("5 deg")) */
    public Angle plus(Angle other) {
        return new Angle(EXACT.plus(nanodegrees, other.nanodegrees));
    }

    /** This less another. @example Angle flatter = slope.minus(Angle.parse("5 deg")) */
    public Angle minus(Angle other) {
        return new Angle(EXACT.minus(nanodegrees, other.nanodegrees));
    }

    /** So many times this. */
    public Angle times(long count) {
        return new Angle(EXACT.times(nanodegrees, count));
    }

    /** Half of this: each piece's share where two are mitred. @example Angle mitre = slope.half() */
    public Angle half() {
        return dividedBy(2);
    }

    /** One of so many equal parts. @throws ArithmeticException if there are no parts */
    public Angle dividedBy(long parts) {
        return new Angle(EXACT.dividedBy(nanodegrees, parts));
    }

    /** What is left to a right angle: a mitre saw reads from square. @example Angle fromSquare = slope.complement() */
    public Angle complement() {
        return RIGHT.minus(this);
    }

    /**
     * What a slope rises over a level run: run · tan.
     *
     * @throws ArithmeticException if this stands upright
     * @example Length higher = slope.rise(depth)
     */
    public Length rise(Length run) {
        return run.times(notUpright().tan());
    }

    /**
     * How long a slope is over a level run: run / cos.
     *
     * @throws ArithmeticException if this stands upright
     * @example Length alongTheSlope = slope.lengthOver(depth)
     */
    public Length lengthOver(Length run) {
        return run.times(1 / notUpright().cos());
    }

    /** What a slope drops along its own length: length · sin. @example Length lower = slope.drop(length("2 in")) */
    public Length drop(Length alongSlope) {
        return alongSlope.times(sin());
    }

    private Angle notUpright() {
        if (Math.abs(nanodegrees % (2 * RIGHT.nanodegrees)) == RIGHT.nanodegrees) {
            throw new ArithmeticException("A slope of %s stands upright and has no run.".formatted(this));
        }
        return this;
    }

    /** Its sine. */
    public double sin() {
        return StrictMath.sin(inRadians());
    }

    /** Its cosine. */
    public double cos() {
        return StrictMath.cos(inRadians());
    }

    /** Its tangent: rise by run. */
    public double tan() {
        return StrictMath.tan(inRadians());
    }

    /** In degrees, as a decimal number. */
    public double inDegrees() {
        return nanodegrees / PER_DEGREE;
    }

    /** In radians, as a decimal number. */
    public double inRadians() {
        return StrictMath.toRadians(inDegrees());
    }

    /** To the nearest hundredth of a degree, without trailing zeros: {@code 30°}, {@code 14.93°}. */
    @Override
    public String in(MeasureStyle style) {
        BigDecimal shown = BigDecimal.valueOf(nanodegrees, 9)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return shown.toPlainString() + "°";
    }

    @Override
    public int compareTo(Angle other) {
        return Long.compare(nanodegrees, other.nanodegrees);
    }

    /** The canonical text, {@code 30 deg}, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(nanodegrees, 9).stripTrailingZeros().toPlainString() + " deg";
    }
}
