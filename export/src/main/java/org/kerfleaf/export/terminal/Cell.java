package org.kerfleaf.export.terminal;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.TapeReading;

/**
 * What stands in one place of a table. A length has its whole units in front and the rest behind, so that a column can
 * line up between the two.
 */
record Cell(String front, String rest) {
    static final Cell EMPTY = new Cell("", "");

    static Cell of(String words) {
        return new Cell(words, "");
    }

    static Cell of(long number) {
        return of(Long.toString(number));
    }

    static Cell of(Length length, MeasureStyle style) {
        TapeReading reading = length.read(style);
        String digits = reading.digits();
        int split = style.unit() == LengthUnit.MILLIMETRES ? digits.indexOf('.') : digits.indexOf(' ');
        boolean onlyFraction = split < 0 && digits.indexOf('/') >= 0;
        String front = onlyFraction ? "" : split < 0 ? digits : digits.substring(0, split);
        String rest = onlyFraction ? " " + digits : split < 0 ? "" : digits.substring(split);
        String hair = reading.hair().word();
        return new Cell(front, hair.isEmpty() ? rest : rest + " " + hair);
    }
}
