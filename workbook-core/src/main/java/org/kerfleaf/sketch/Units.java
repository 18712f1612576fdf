package org.kerfleaf.sketch;

import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;

/**
 * The unit a workbook is measured and printed in.
 *
 * @param finest the print step, as in {@link MeasureStyle}
 * @group sizes
 */
public record Units(Origin origin, LengthUnit unit, int finest) implements Declaration {
    /** Measures in this unit from here on. */
    public static Units of(LengthUnit unit) {
        SketchRun.current().measuresIn(unit);
        return new Units(SketchRun.current().next(), unit, MeasureStyle.of(unit).finest());
    }

    /** Prints inches to this part of an inch (8, 16, 32 or 64). @example measureIn(INCHES).toThe(16) */
    public Units toThe(int step) {
        return new Units(origin, unit, new MeasureStyle(unit, step).finest());
    }

    /** How lengths print in this unit. */
    public MeasureStyle style() {
        return new MeasureStyle(unit, finest);
    }
}
