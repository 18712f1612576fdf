package org.kerfleaf.measure;

import static org.kerfleaf.measure.UnitTable.cube;
import static org.kerfleaf.measure.UnitTable.square;
import static org.kerfleaf.measure.UnitTable.unit;

import java.math.BigInteger;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Reads a number with a unit: areas in mm², volumes in mm³, masses in grams, temperature differences in kelvin.
 *
 * <p>Sizes of units: NIST Handbook 44, appendix C (1 in = 25.4 mm, 1 US gal = 231 cubic inches = 4 qt = 8 pt = 128 fl oz,
 * 1 lb = 453.59237 g = 16 oz, all exact).
 */
enum UnitText {
    AREA(new UnitTable(
            "area",
            "350 sq ft or 12 m2",
            square("1", "mm", "millimetres", "millimeters"),
            square("100", "cm", "centimetres", "centimeters"),
            square("1000000", "m", "metre", "metres", "meter", "meters"),
            square("645.16", "in", "inch", "inches"),
            square("92903.04", "ft", "foot", "feet"),
            square("836127.36", "yd", "yard", "yards"))),
    VOLUME(new UnitTable(
            "volume",
            "8 fl oz, 1 qt, 310 ml or 2.5 l",
            unit("29573.5295625", "fl oz", "fluid ounce", "fluid ounces"),
            unit("473176.473", "pt", "pint", "pints"),
            unit("946352.946", "qt", "quart", "quarts"),
            unit("3785411.784", "gal", "gallon", "gallons"),
            unit("1000", "ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc"),
            unit("10000", "cl", "centilitre", "centilitres", "centiliter", "centiliters"),
            unit("1000000", "l", "litre", "litres", "liter", "liters"),
            cube("1", "mm", "millimetres", "millimeters"),
            cube("1000", "cm", "centimetres", "centimeters"),
            cube("1000000", "dm"),
            cube("1000000000", "m", "metre", "metres", "meter", "meters"),
            cube("16387.064", "in", "inch", "inches"),
            cube("28316846.592", "ft", "foot", "feet"),
            cube("764554857.984", "yd", "yard", "yards"))),
    MASS(new UnitTable(
            "mass",
            "11.2 lb, 4 kg or 350 g",
            unit("28.349523125", "oz", "ounce", "ounces"),
            unit("453.59237", "lb", "lbs", "pound", "pounds"),
            unit("1", "g", "gram", "grams", "gramme", "grammes"),
            unit("1000", "kg", "kilo", "kilos", "kilogram", "kilograms"))),
    TEMPERATURE_CHANGE(new UnitTable(
            "temperature difference",
            "60 F or 33 C",
            new UnitTable.Unit(
                    new Rational(BigInteger.valueOf(5), BigInteger.valueOf(9)),
                    List.of("f", "°f", "deg f", "degrees f", "fahrenheit", "degrees fahrenheit")),
            unit("1", "c", "°c", "deg c", "degrees c", "celsius", "degrees celsius", "k", "kelvin")));

    private final UnitTable units;

    UnitText(UnitTable units) {
        this.units = units;
    }

    <T> T read(String text, DoubleFunction<T> make) {
        TextCursor cursor = new TextCursor(text, units.wanted());
        double amount = units.read(cursor, last -> null).toDouble();
        if (!Double.isFinite(amount)) {
            throw cursor.stopAt(0, "this is more than can be counted");
        }
        return make.apply(amount);
    }
}
