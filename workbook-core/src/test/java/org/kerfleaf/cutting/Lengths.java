package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/** Short names for lengths, so that the cases of this package read like a cut list. */
final class Lengths {
    private Lengths() {}

    static Length in(double inches) {
        return Length.ofInches(inches);
    }

    static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    /** Whole numbers as lengths of a nanometre each, for instances without a unit. */
    static Length units(long count) {
        return new Length(count);
    }
}
