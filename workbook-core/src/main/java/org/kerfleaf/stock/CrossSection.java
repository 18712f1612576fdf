package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;

/**
 * A rectangular section as it lies under its load, dressed or by caliper.
 *
 * @param width level, more than nothing
 * @param thickness upright, the way it bends; more than nothing
 */
public record CrossSection(Length width, Length thickness) {
    private static final String STATICS =
            "statics, rectangular section; NDS Supplement table 1B prints them for lumber";

    /** How much a section resists bending stress. @param cubicMillimetres more than zero */
    public record Modulus(double cubicMillimetres) implements Quantity {
        @Override
        public String in(MeasureStyle style) {
            return shown(cubicMillimetres, 3, "³", style);
        }
    }

    /** How much a section resists sagging. @param millimetresToTheFourth more than zero */
    public record Inertia(double millimetresToTheFourth) implements Quantity {
        @Override
        public String in(MeasureStyle style) {
            return shown(millimetresToTheFourth, 4, "⁴", style);
        }
    }

    /** Its area: width · thickness. */
    public Figure<Area> area() {
        return Figure.of(
                width.by(thickness),
                "width · thickness",
                STATICS,
                given("width", width),
                given("thickness", thickness));
    }

    /** Its section modulus: width · thickness² / 6. */
    public Figure<Modulus> modulus() {
        double high = thickness.inMillimetres();
        return Figure.of(
                new Modulus(width.inMillimetres() * high * high / 6),
                "width · thickness² / 6",
                STATICS,
                given("width", width),
                given("thickness", thickness));
    }

    /** Its second moment of area: width · thickness³ / 12. */
    public Figure<Inertia> inertia() {
        double high = thickness.inMillimetres();
        return Figure.of(
                new Inertia(width.inMillimetres() * high * high * high / 12),
                "width · thickness³ / 12",
                STATICS,
                given("width", width),
                given("thickness", thickness));
    }

    private static String shown(double millimetres, int power, String mark, MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        double number = inches ? millimetres / StrictMath.pow(25.4, power) : millimetres;
        BigDecimal rounded = BigDecimal.valueOf(number).round(new MathContext(4, RoundingMode.HALF_UP));
        return rounded.stripTrailingZeros().toPlainString() + (inches ? " in" : " mm") + mark;
    }
}
