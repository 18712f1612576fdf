package org.kerfleaf.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.TemperatureChange;

/**
 * How much longer a material gets when it gets warmer.
 *
 * @param perKelvin length gained for each unit of length and each kelvin
 */
public record Expansion(double perKelvin) implements Quantity {
    public static Expansion ofPerKelvin(double number) {
        return new Expansion(number);
    }

    public static Expansion ofPerFahrenheit(double number) {
        return new Expansion(number * 1.8);
    }

    /** What a length gains over that change of temperature, as a share of itself. */
    public Ratio over(TemperatureChange change) {
        return Ratio.of(perKelvin * change.kelvin());
    }

    /** Hundred-thousandths for each degree, of the scale that goes with the unit. */
    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        BigDecimal shown = BigDecimal.valueOf((inches ? perKelvin / 1.8 : perKelvin) * 1e5)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return shown.toPlainString() + "/100000 for each °" + (inches ? "F" : "C");
    }
}
