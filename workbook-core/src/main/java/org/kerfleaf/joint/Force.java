package org.kerfleaf.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/**
 * A push or a pull.
 *
 * @param newtons the number, zero or more
 */
public record Force(double newtons) implements Quantity, Comparable<Force> {
    /** One pound-force: 0.45359237 kg under standard gravity of 9.80665 m/s² (NIST SP 811). */
    private static final double PER_POUND = 4.4482216152605;

    private static final double GRAVITY = 9.80665;

    public static Force ofNewtons(double newtons) {
        return new Force(newtons);
    }

    public static Force ofPounds(double pounds) {
        return new Force(pounds * PER_POUND);
    }

    /** What a mass weighs. */
    public static Force weightOf(Mass mass) {
        return new Force(mass.inKilograms() * GRAVITY);
    }

    public Force times(double factor) {
        return new Force(newtons * factor);
    }

    public double inPounds() {
        return newtons / PER_POUND;
    }

    /** Pounds or newtons, to one decimal or whole. */
    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        BigDecimal shown =
                BigDecimal.valueOf(inches ? inPounds() : newtons).setScale(inches ? 1 : 0, RoundingMode.HALF_UP);
        return shown.toPlainString() + (inches ? " lb" : " N");
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
