package org.kerfleaf.measure;

/** Reads angles and slopes. */
final class AngleText {
    private AngleText() {}

    static Angle parse(String text) {
        throw new MeasureTextException(text, 1, "not read yet", "");
    }
}
