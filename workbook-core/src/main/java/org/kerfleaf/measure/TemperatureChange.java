package org.kerfleaf.measure;

/**
 * How much warmer or colder something gets.
 *
 * @param kelvin the difference in kelvin, which are degrees Celsius here; below zero is colder
 */
public record TemperatureChange(double kelvin) implements Quantity, Comparable<TemperatureChange> {
    /** No change at all. */
    public static final TemperatureChange ZERO = new TemperatureChange(0);

    /** @throws ArithmeticException if the number is infinite or none */
    public TemperatureChange {
        kelvin = Decimals.counted(kelvin, "K");
    }

    /** Kelvin, which are degrees Celsius of difference. */
    public static TemperatureChange ofKelvin(double kelvin) {
        return new TemperatureChange(kelvin);
    }

    /** Degrees Fahrenheit of difference. */
    public static TemperatureChange ofFahrenheit(double degrees) {
        return new TemperatureChange(degrees * 5 / 9);
    }

    /** Reads {@code 60 F}, {@code 33 C}. @throws MeasureTextException if it is no temperature difference */
    public static TemperatureChange parse(String text) {
        return UnitText.TEMPERATURE_CHANGE.read(text, TemperatureChange::new);
    }

    /** In degrees Fahrenheit, as a decimal number. */
    public double inFahrenheit() {
        return kelvin * 9 / 5;
    }

    /** Whole degrees, Fahrenheit or Celsius. */
    @Override
    public String in(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Decimals.of(inFahrenheit(), 0) + " °F"
                : Decimals.of(kelvin, 0) + " °C";
    }

    @Override
    public int compareTo(TemperatureChange other) {
        return Double.compare(kelvin, other.kelvin);
    }

    /** The canonical text, {@code 33 K}, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return Decimals.exact(kelvin) + " K";
    }
}
