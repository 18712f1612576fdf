package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An angle or a slope, counted in billionths of a degree; a slope is the angle it makes with the level.
 *
 * @param nanodegrees the count; 30 degrees are 30 000 000 000
 */
public record Angle(long nanodegrees) implements Quantity, Comparable<Angle> {
    /** Flat, or square. */
    public static final Angle ZERO = new Angle(0);

    /** A right angle. */
    public static final Angle RIGHT = ofDegrees(90);

    private static final double PER_DEGREE = 1e9;

    /** Degrees as a decimal number, rounded to a billionth of a degree. */
    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.round(degrees * PER_DEGREE));
    }

    static Angle ofRadians(double radians) {
        return ofDegrees(StrictMath.toDegrees(radians));
    }

    /**
     * Reads an angle or slope as people write it: {@code 30 deg}, {@code 30°}, {@code 6 in 12}, {@code 1:2}, {@code 50 %}.
     *
     * @throws MeasureTextException if the text is none of these
     */
    public static Angle parse(String text) {
        return AngleText.parse(text);
    }

    public boolean isZero() {
        return nanodegrees == 0;
    }

    public Angle plus(Angle other) {
        return new Angle(Math.addExact(nanodegrees, other.nanodegrees));
    }

    public Angle minus(Angle other) {
        return new Angle(Math.subtractExact(nanodegrees, other.nanodegrees));
    }

    public Angle times(long count) {
        return new Angle(Math.multiplyExact(nanodegrees, count));
    }

    public Angle half() {
        return new Angle(BigDecimal.valueOf(nanodegrees)
                .divide(BigDecimal.valueOf(2), 0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }

    /** What a slope rises over a level run: run · tan. */
    public Length rise(Length run) {
        return run.times(tan());
    }

    /** How long a slope is over a level run: run / cos. */
    public Length lengthOver(Length run) {
        return run.times(1 / cos());
    }

    /** What a slope drops along its own length: length · sin. */
    public Length drop(Length alongSlope) {
        return alongSlope.times(sin());
    }

    public double sin() {
        return StrictMath.sin(inRadians());
    }

    public double cos() {
        return StrictMath.cos(inRadians());
    }

    public double tan() {
        return StrictMath.tan(inRadians());
    }

    public double inDegrees() {
        return nanodegrees / PER_DEGREE;
    }

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

    /** The canonical text, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(nanodegrees, 9).stripTrailingZeros().toPlainString() + " deg";
    }
}
