package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A wind speed from a map: a 3 second gust 33 ft above open ground.
 *
 * @param metresPerSecond the number, zero or more
 */
public record WindSpeed(double metresPerSecond) implements Quantity {
    private static final double PER_MPH = 0.44704;

    private static final Pattern TEXT = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(mph|m/s|km/h)");

    /** Miles an hour. */
    public static WindSpeed ofMilesPerHour(double mph) {
        return new WindSpeed(mph * PER_MPH);
    }

    /** Metres a second. */
    public static WindSpeed ofMetresPerSecond(double number) {
        return new WindSpeed(number);
    }

    /** Reads {@code 115 mph}, {@code 51 m/s}, {@code 180 km/h}. @throws MeasureTextException if it is no wind speed */
    public static WindSpeed parse(String text) {
        Matcher speed = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!speed.matches()) {
            throw new MeasureTextException(
                    text, 1, "this is no wind speed", "A number with mph, m/s or km/h would be right: 115 mph.");
        }
        double number = Double.parseDouble(speed.group(1));
        return switch (speed.group(2)) {
            case "mph" -> ofMilesPerHour(number);
            case "km/h" -> ofMetresPerSecond(number / 3.6);
            default -> ofMetresPerSecond(number);
        };
    }

    /** In miles an hour, as a decimal number. */
    public double inMilesPerHour() {
        return metresPerSecond / PER_MPH;
    }

    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        return BigDecimal.valueOf(inches ? inMilesPerHour() : metresPerSecond)
                        .setScale(0, RoundingMode.HALF_UP)
                        .toPlainString()
                + (inches ? " mph" : " m/s");
    }
}
