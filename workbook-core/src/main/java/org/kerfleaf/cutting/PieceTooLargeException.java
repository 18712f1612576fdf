package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

/** A piece that no sheet or board of the stock can hold, with what is needed to say so in the workbook's unit. */
public final class PieceTooLargeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String part;
    private final String stock;
    private final boolean tooLong;
    private final transient Length size;
    private final transient Length limit;
    private final boolean trimmed;
    private final boolean fitsTurned;

    PieceTooLargeException(
            String part,
            String stock,
            boolean tooLong,
            Length size,
            Length limit,
            boolean trimmed,
            boolean fitsTurned) {
        super(sentence(part, stock, tooLong, both(size), both(limit) + (trimmed ? " after trimming" : ""), fitsTurned));
        this.part = part;
        this.stock = stock;
        this.tooLong = tooLong;
        this.size = size;
        this.limit = limit;
        this.trimmed = trimmed;
        this.fitsTurned = fitsTurned;
    }

    static PieceTooLargeException of(SheetPiece piece, SheetSize sheet) {
        Length length = piece.length();
        Length width = piece.width();
        if (piece.mayTurn()) {
            boolean sheetRunsLong = !sheet.usableLength().isShorterThan(sheet.usableWidth());
            length = sheetRunsLong
                    ? piece.length().max(piece.width())
                    : piece.length().min(piece.width());
            width = sheetRunsLong
                    ? piece.length().min(piece.width())
                    : piece.length().max(piece.width());
        }
        boolean tooLong = length.isLongerThan(sheet.usableLength());
        boolean turnedWouldFit = !piece.width().isLongerThan(sheet.usableLength())
                && !piece.length().isLongerThan(sheet.usableWidth());
        return new PieceTooLargeException(
                piece.part(),
                sheet.stock(),
                tooLong,
                tooLong ? length : width,
                tooLong ? sheet.usableLength() : sheet.usableWidth(),
                sheet.trim().isPositive(),
                turnedWouldFit);
    }

    static PieceTooLargeException of(BoardPiece piece, BoardSize longest) {
        return new PieceTooLargeException(
                piece.part(),
                longest.stock(),
                true,
                piece.length(),
                longest.usable(),
                longest.trim().isPositive(),
                false);
    }

    /** The part's name. */
    public String part() {
        return part;
    }

    /** The name of the stock that cannot hold it. */
    public String stock() {
        return stock;
    }

    /** True if it is the length along the stock that is too much, false if it is the width across. */
    public boolean tooLong() {
        return tooLong;
    }

    /** The piece's size in that direction. */
    public Length size() {
        return size;
    }

    /** What the stock offers in that direction, after trimming. */
    public Length limit() {
        return limit;
    }

    /** Whether the piece would fit with its grain across the sheet. */
    public boolean fitsTurned() {
        return fitsTurned;
    }

    /** Says it in the workbook's unit: {@code Door is 49 1/4 in long, longer than the sheet (47 1/2 in after trimming).} */
    public String in(MeasureStyle style) {
        return sentence(
                part, stock, tooLong, size.in(style), limit.in(style) + (trimmed ? " after trimming" : ""), fitsTurned);
    }

    private static String sentence(
            String part, String stock, boolean tooLong, String size, String limit, boolean fitsTurned) {
        String sentence = "%s is %s %s, %s than the %s (%s)."
                .formatted(part, size, tooLong ? "long" : "wide", tooLong ? "longer" : "wider", stock, limit);
        return fitsTurned ? sentence + " Turned across the grain it would fit." : sentence;
    }

    private static String both(Length length) {
        return length.in(MeasureStyle.INCHES) + " / " + length.in(MeasureStyle.MILLIMETRES);
    }
}
