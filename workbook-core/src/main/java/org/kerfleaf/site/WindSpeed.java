package org.kerfleaf.site;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/**
 * A wind speed from a map: a 3 second gust 33 ft above open ground.
 *
 * @param metresPerSecond the number, zero or more
 */
public record WindSpeed(double metresPerSecond) implements Quantity {
    private static final double PER_MPH = 0.44704;

    public static WindSpeed ofMilesPerHour(double mph) {
        return new WindSpeed(mph * PER_MPH);
    }

    public static WindSpeed ofMetresPerSecond(double number) {
        return new WindSpeed(number);
    }

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
