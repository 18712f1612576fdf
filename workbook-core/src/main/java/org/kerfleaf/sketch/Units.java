package org.kerfleaf.sketch;

import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;

/**
 * The unit a workbook is measured and printed in.
 *
 * @param finest the print step, as in {@link MeasureStyle}
 */
public record Units(Origin origin, LengthUnit unit, int finest) implements Declaration {
    /** Measures in this unit from here on. */
    public static Units of(LengthUnit unit) {
        SketchRun.current().measuresIn(unit);
        return new Units(SketchRun.current().next(), unit, MeasureStyle.of(unit).finest());
    }

    /** Prints to this step: {@code toThe(16)} is 1/16 in. */
    public Units toThe(int step) {
        return new Units(origin, unit, new MeasureStyle(unit, step).finest());
    }

    public MeasureStyle style() {
        return new MeasureStyle(unit, finest);
    }
}
