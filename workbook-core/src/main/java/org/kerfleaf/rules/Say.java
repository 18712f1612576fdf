package org.kerfleaf.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;

/** Lengths in the sentences of checks: finer than on a cut list, since a margin is often less than a tape shows. */
final class Say {
    private static final MeasureStyle SIXTY_FOURTHS = new MeasureStyle(LengthUnit.INCHES, 64);

    private Say() {}

    /** To 1/64 in or 0.1 mm. */
    static String fine(Length length, MeasureStyle style) {
        if (style.unit() == LengthUnit.INCHES) {
            return length.roundedTo(SIXTY_FOURTHS.step(), RoundingMode.HALF_UP).in(SIXTY_FOURTHS);
        }
        BigDecimal shown = length.exactMillimetres().setScale(1, RoundingMode.HALF_UP);
        return (shown.signum() == 0 ? BigDecimal.ZERO : shown.stripTrailingZeros()).toPlainString() + " mm";
    }

    /** What is left over or lacking, without a sign: {@code 1/64 in}, {@code less than 1/64 in}. */
    static String difference(Length difference, MeasureStyle style) {
        Length size = difference.absolute();
        String shown = fine(size, style);
        if (!size.isZero() && shown.startsWith("0 ")) {
            return "less than " + (style.unit() == LengthUnit.INCHES ? "1/64 in" : "0.1 mm");
        }
        return shown;
    }

    /** A number to so many decimals, without trailing zeros. */
    static String number(double value, int places) {
        BigDecimal shown = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return (shown.signum() == 0 ? BigDecimal.ZERO : shown.stripTrailingZeros()).toPlainString();
    }

    /** A share in whole per cent: {@code 33 %}. */
    static String percent(double share) {
        return number(share * 100, 0) + " %";
    }

    /** One of two lengths by the workbook's unit, since the trade rounds its rules in each. */
    static Length rule(MeasureStyle style, Length inches, Length millimetres) {
        return style.unit() == LengthUnit.INCHES ? inches : millimetres;
    }
}
