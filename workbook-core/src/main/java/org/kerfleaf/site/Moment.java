package org.kerfleaf.site;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/**
 * What a push does at the end of a lever: turns.
 *
 * @param newtonMetres the number, zero or more
 */
public record Moment(double newtonMetres) implements Quantity {
    /** One pound-foot: 4.4482216152605 N · 0.3048 m (NIST SP 811). */
    private static final double PER_POUND_FOOT = 4.4482216152605 * 0.3048;

    public static Moment of(Force push, Length lever) {
        return new Moment(push.newtons() * lever.inMillimetres() / 1000);
    }

    public double inPoundFeet() {
        return newtonMetres / PER_POUND_FOOT;
    }

    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        return BigDecimal.valueOf(inches ? inPoundFeet() : newtonMetres)
                        .setScale(0, RoundingMode.HALF_UP)
                        .toPlainString()
                + (inches ? " lb·ft" : " N·m");
    }
}
