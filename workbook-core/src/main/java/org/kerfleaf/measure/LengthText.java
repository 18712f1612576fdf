package org.kerfleaf.measure;

/** Reads and writes lengths. */
final class LengthText {
    private LengthText() {}

    static Length parse(String text, LengthUnit whenNoneIsSaid) {
        throw new MeasureTextException(text, 1, "not read yet", "");
    }

    static String canonical(Length length) {
        return length.exactMillimetres().stripTrailingZeros().toPlainString() + " mm";
    }
}
