package org.kerfleaf.measure;

/** The two units a workbook is measured in. Both are exact in nanometres (NIST SP 811: 1 in = 25.4 mm by definition). */
public enum LengthUnit {
    /** Inches and their fractions. @group sizes @example measureIn(INCHES) */
    INCHES(25_400_000L, "in"),
    /** Millimetres. @group sizes @example measureIn(MILLIMETRES) */
    MILLIMETRES(1_000_000L, "mm");

    private final long nanometres;
    private final String symbol;

    LengthUnit(long nanometres, String symbol) {
        this.nanometres = nanometres;
        this.symbol = symbol;
    }

    /** How many nanometres one of this unit has. */
    public long nanometres() {
        return nanometres;
    }

    /** The unit's symbol as printed after a number: {@code in} or {@code mm}. */
    public String symbol() {
        return symbol;
    }
}
