package org.kerfleaf.export.booklet;

/** The paper a booklet is printed on, upright. Margins are the same on all. */
public enum Paper {
    /** 210 x 297 mm (ISO 216). */
    A4(210, 297),
    /** 8 1/2 x 11 in. */
    LETTER(215.9, 279.4);

    static final double SIDE = 15;
    static final double HEAD = 12;
    static final double FOOT = 10;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** In millimetres. */
    public double width() {
        return width;
    }

    /** In millimetres. */
    public double height() {
        return height;
    }

    /** What lies between the side margins, in millimetres. */
    public double measure() {
        return width - 2 * SIDE;
    }

    /** What lies between the upper and the lower margin, in millimetres. */
    public double usable() {
        return height - HEAD - FOOT;
    }

    /** Where content ends, above the title block. */
    double bottom() {
        return height - FOOT - TitleBlock.HEIGHT - 3.5;
    }
}
