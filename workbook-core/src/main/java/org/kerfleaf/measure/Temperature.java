package org.kerfleaf.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How warm it is; how much warmer something gets is a {@link TemperatureChange}.
 *
 * @param celsius degrees Celsius, from absolute zero up
 */
public record Temperature(double celsius) implements Quantity, Comparable<Temperature> {
    private static final double COLDEST = -273.15;
    private static final Pattern TEXT =
            Pattern.compile("(-?\\d{1,4}(?:[.,]\\d{1,3})?) *(?:°|deg(?:rees)?)? *(f|c|fahrenheit|celsius)");

    /** @throws ArithmeticException if the number is infinite, none, or colder than anything can be */
    public Temperature {
        celsius = Decimals.counted(celsius, "°C");
        if (celsius < COLDEST) {
            throw new ArithmeticException("%s °C is colder than anything can be.".formatted(celsius));
        }
    }

    /** Degrees Celsius. */
    public static Temperature ofCelsius(double degrees) {
        return new Temperature(degrees);
    }

    /** Degrees Fahrenheit. */
    public static Temperature ofFahrenheit(double degrees) {
        return new Temperature((degrees - 32) * 5 / 9);
    }

    /** Reads {@code 70 F}, {@code 21 °C}, {@code -5 C}. @throws MeasureTextException if it is no temperature */
    public static Temperature parse(String text) {
        Matcher warm = TEXT.matcher(TextCursor.plain(text).strip());
        boolean fahrenheit = warm.matches() && warm.group(2).startsWith("f");
        double degrees = warm.matches() ? Double.parseDouble(warm.group(1).replace(',', '.')) : Double.NaN;
        double celsius = fahrenheit ? (degrees - 32) * 5 / 9 : degrees;
        if (!(celsius >= COLDEST)) {
            throw new MeasureTextException(
                    text, 1, "this is no temperature", "Degrees with F or C would be right: 70 F, 21 C.");
        }
        return new Temperature(celsius);
    }

    /** In degrees Fahrenheit, as a decimal number. */
    public double inFahrenheit() {
        return celsius * 9 / 5 + 32;
    }

    /** Whole degrees, Fahrenheit or Celsius. */
    @Override
    public String in(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Decimals.of(inFahrenheit(), 0) + " °F"
                : Decimals.of(celsius, 0) + " °C";
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }

    /** The canonical text, {@code 21 C}, read back by {@link #parse(String)} up to three places. */
    @Override
    public String toString() {
        return Decimals.exact(celsius) + " C";
    }
}
