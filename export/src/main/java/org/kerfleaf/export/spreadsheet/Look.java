package org.kerfleaf.export.spreadsheet;

import org.apache.poi.ss.usermodel.HorizontalAlignment;

/**
 * How a cell looks.
 *
 * @param format the number format
 * @param side where in the cell its text stands
 * @param points size of type
 * @param strong bold
 * @param ink the colour's meaning
 * @param wraps whether long text breaks into lines
 * @param rule the line around or under the cell
 */
record Look(String format, HorizontalAlignment side, int points, boolean strong, Ink ink, boolean wraps, Rule rule) {
    /** Chalk is the reader's to change, graphite follows, ink is what is to be read. */
    enum Ink {
        INK(0x1B, 0x21, 0x1F),
        GRAPHITE(0x4D, 0x56, 0x53),
        CHALK(0x17, 0x4A, 0x8C);

        final byte[] argb;

        Ink(int red, int green, int blue) {
            argb = new byte[] {(byte) 0xFF, (byte) red, (byte) green, (byte) blue};
        }
    }

    enum Rule {
        NONE,
        ROW,
        HEAD,
        TOTAL,
        BOX
    }

    static final Look TEXT = new Look("General", HorizontalAlignment.LEFT, 10, false, Ink.INK, true, Rule.ROW);
    static final Look NUMBER = new Look("0", HorizontalAlignment.RIGHT, 10, false, Ink.INK, false, Rule.ROW);
    static final Look HEAD = TEXT.bold().ruled(Rule.HEAD);
    static final Look TITLE = new Look("General", HorizontalAlignment.LEFT, 14, true, Ink.INK, false, Rule.NONE);
    static final Look FACTS = new Look("General", HorizontalAlignment.LEFT, 9, false, Ink.GRAPHITE, false, Rule.NONE);
    static final Look CAPTION = new Look("General", HorizontalAlignment.LEFT, 11, true, Ink.INK, false, Rule.NONE);
    static final Look REMARK = new Look("General", HorizontalAlignment.LEFT, 10, false, Ink.INK, false, Rule.NONE);
    static final Look TICK_BOX = TEXT.ruled(Rule.BOX);

    Look in(String otherFormat) {
        return new Look(otherFormat, side, points, strong, ink, wraps, rule);
    }

    Look at(HorizontalAlignment otherSide) {
        return new Look(format, otherSide, points, strong, ink, wraps, rule);
    }

    Look bold() {
        return new Look(format, side, points, true, ink, wraps, rule);
    }

    Look inked(Ink other) {
        return new Look(format, side, points, strong, other, wraps, rule);
    }

    Look ruled(Rule other) {
        return new Look(format, side, points, strong, ink, wraps, other);
    }

    /** What the reader may change. */
    Look chalk() {
        return inked(Ink.CHALK);
    }

    /** On one line, without a rule. */
    Look unbroken() {
        return new Look(format, side, points, strong, ink, false, Rule.NONE);
    }

    Look total() {
        return bold().ruled(Rule.TOTAL);
    }
}
