package org.kerfleaf.measure;

import static org.kerfleaf.measure.UnitTable.unit;

import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * Reads and writes lengths.
 *
 * <p>Sizes of units: NIST Handbook 44, appendix C (1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 3 ft, all exact).
 */
final class LengthText {
    private static final UnitTable UNITS = new UnitTable(
            "length",
            "12 3/16 in, 5' 3 1/2\" or 309.6 mm",
            unit("25400000", "in", "inch", "inches", "\"", "''"),
            unit("304800000", "ft", "foot", "feet", "'"),
            unit("914400000", "yd", "yds", "yard", "yards"),
            unit("1000000", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
            unit("10000000", "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
            unit("1000000000", "m", "metre", "metres", "meter", "meters"));

    private static final long SIXTY_FOURTH = Length.ofSixtyFourths(1).nanometres();

    private LengthText() {}

    static Length parse(String text, LengthUnit whenNoneIsSaid) {
        TextCursor cursor = new TextCursor(text, UNITS.wanted());
        BigInteger nanometres =
                UNITS.read(cursor, last -> bareUnit(last, whenNoneIsSaid)).rounded();
        if (nanometres.bitLength() > 63) {
            throw cursor.stopAt(0, "this is more than can be counted, about 9 million kilometres");
        }
        return new Length(nanometres.longValueExact());
    }

    /** After feet the trade leaves out the inch sign, after other units nothing. */
    private static UnitTable.Unit bareUnit(UnitTable.Unit last, LengthUnit whenNoneIsSaid) {
        boolean clear = last == null || last.symbol().equals("ft") && whenNoneIsSaid == LengthUnit.INCHES;
        return whenNoneIsSaid != null && clear ? UNITS.named(whenNoneIsSaid.symbol()) : null;
    }

    /** Inches with a fraction where the length is a whole number of 1/64 in, else millimetres. */
    static String canonical(Length length) {
        return length.nanometres() % SIXTY_FOURTH == 0
                ? TapeReading.of(length, MeasureStyle.INCHES, RoundingMode.UNNECESSARY)
                                .digits() + " in"
                : length.exactMillimetres().stripTrailingZeros().toPlainString() + " mm";
    }
}
