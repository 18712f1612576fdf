package org.kerfleaf.measure;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A force on an area, or a load spread over one.
 *
 * @param pascals the number, zero or more
 */
public record Pressure(double pascals) implements Quantity {
    /** One pound-force on a square foot (NIST SP 811). */
    private static final double PER_PSF = 4.4482216152605 / 0.09290304;

    /** One kilogram under standard gravity, on a square metre. */
    private static final double PER_KILOGRAM = 9.80665;

    private static final Map<String, Double> UNITS = Map.of(
            "psf",
            PER_PSF,
            "lb/ft2",
            PER_PSF,
            "lb/sqft",
            PER_PSF,
            "kg/m2",
            PER_KILOGRAM,
            "kn/m2",
            1000.0,
            "n/m2",
            1.0,
            "pa",
            1.0,
            "kpa",
            1000.0);

    private static final Pattern TEXT = Pattern.compile("(\\d+(?:\\.\\d+)?)([a-z/]+2?)");

    /** Pounds on a square foot. */
    public static Pressure ofPoundsPerSquareFoot(double psf) {
        return new Pressure(psf * PER_PSF);
    }

    /** Newtons on a square metre. */
    public static Pressure ofPascals(double pascals) {
        return new Pressure(pascals);
    }

    /** Reads {@code 40 lb/sq ft}, {@code 30 psf}, {@code 1.5 kN/m2}, {@code 150 kg/m2}. @throws MeasureTextException if it is none */
    public static Pressure parse(String text) {
        Matcher load =
                TEXT.matcher(text.toLowerCase(Locale.ROOT).replace('²', '2').replaceAll("[\\s.](?!\\d)", ""));
        if (!load.matches() || !UNITS.containsKey(load.group(2))) {
            throw new MeasureTextException(
                    text,
                    1,
                    "this is no load on an area",
                    "A number with lb/sq ft, psf, kg/m2 or kN/m2 would be right: 40 lb/sq ft.");
        }
        return new Pressure(Double.parseDouble(load.group(1)) * UNITS.get(load.group(2)));
    }

    /** This scaled by a number. */
    public Pressure times(double factor) {
        return new Pressure(pascals * factor);
    }

    /** In pounds on a square foot, as a decimal number. */
    public double inPoundsPerSquareFoot() {
        return pascals / PER_PSF;
    }

    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        return Decimals.of(inches ? inPoundsPerSquareFoot() : pascals, inches ? 1 : 0) + (inches ? " lb/ft²" : " Pa");
    }
}
