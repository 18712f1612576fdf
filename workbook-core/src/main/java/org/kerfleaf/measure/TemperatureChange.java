package org.kerfleaf.measure;

/**
 * How much warmer or colder something gets.
 *
 * @param kelvin the difference, zero or more
 */
public record TemperatureChange(double kelvin) implements Quantity {
    /** Reads {@code 60 F}, {@code 33 C}. @throws MeasureTextException if it is no temperature difference */
    public static TemperatureChange parse(String text) {
        return UnitText.TEMPERATURE_CHANGE.read(text, TemperatureChange::new);
    }

    public double inFahrenheit() {
        return kelvin * 1.8;
    }

    @Override
    public String in(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Decimals.of(inFahrenheit(), 0) + " °F"
                : Decimals.of(kelvin, 0) + " °C";
    }
}
