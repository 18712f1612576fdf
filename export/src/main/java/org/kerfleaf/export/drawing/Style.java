package org.kerfleaf.export.drawing;

import java.awt.Color;

/**
 * How a stretch of text is set.
 *
 * @param face the typeface
 * @param points its size
 * @param colour its colour
 */
public record Style(Face face, double points, Color colour) {
    /** Labels, tables, drawings. */
    public static final Style LABEL = new Style(Face.LABEL, 10.5, Ink.BLACK);

    /** The one bold column of a table. */
    public static final Style LABEL_SEMI = new Style(Face.LABEL_SEMI, 10.5, Ink.BLACK);

    /** Captions, heads of columns, sources. */
    public static final Style CAPTION = new Style(Face.LABEL, 8.5, Ink.GRAPHITE);

    /** Headings within a page. */
    public static final Style HEADING = new Style(Face.LABEL_BOLD, 14, Ink.BLACK);

    /** Instructions, read at arm's length. */
    public static final Style INSTRUCTION = new Style(Face.TEXT, 12, Ink.BLACK);

    /** Millimetres in a printer's point. */
    public static final double POINT = 25.4 / 72;

    /** The size in millimetres. */
    public double size() {
        return points * POINT;
    }

    /** The height of a capital, in millimetres. */
    public double capital() {
        return size() * Face.CAPITAL;
    }

    public Style at(double otherPoints) {
        return new Style(face, otherPoints, colour);
    }

    public Style in(Face other) {
        return new Style(other, points, colour);
    }

    public Style in(Color other) {
        return new Style(face, points, other);
    }
}
