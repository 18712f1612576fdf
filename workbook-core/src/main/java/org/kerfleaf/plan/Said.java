package org.kerfleaf.plan;

import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/** A value that is words and no number. */
record Said(String text) implements Quantity {
    @Override
    public String in(MeasureStyle style) {
        return text;
    }
}
