package org.kerfleaf.site;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/**
 * A force on an area.
 *
 * @param pascals the number, zero or more
 */
public record Pressure(double pascals) implements Quantity {
    /** One pound-force on a square foot (NIST SP 811). */
    private static final double PER_PSF = 4.4482216152605 / 0.09290304;

    public static Pressure ofPoundsPerSquareFoot(double psf) {
        return new Pressure(psf * PER_PSF);
    }

    public Pressure times(double factor) {
        return new Pressure(pascals * factor);
    }

    /** The push on an area. */
    public Force on(Area area) {
        return Force.ofNewtons(pascals * area.inSquareMetres());
    }

    public double inPoundsPerSquareFoot() {
        return pascals / PER_PSF;
    }

    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        return BigDecimal.valueOf(inches ? inPoundsPerSquareFoot() : pascals)
                        .setScale(inches ? 1 : 0, RoundingMode.HALF_UP)
                        .toPlainString()
                + (inches ? " lb/ft²" : " Pa");
    }
}
