package org.kerfleaf.measure;

/** Something measured or counted that can be printed the way a workbook prints. */
public interface Quantity {
    /** Prints this quantity with its unit, rounded as the style says; for a person, never to be read back. */
    String in(MeasureStyle style);
}
