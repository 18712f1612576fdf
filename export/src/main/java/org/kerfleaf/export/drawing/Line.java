package org.kerfleaf.export.drawing;

import java.util.List;

/** One measured line of text, ready to be painted. */
public final class Line {
    private final List<Piece> pieces;
    private final double width;

    Line(List<Piece> pieces, double width) {
        this.pieces = List.copyOf(pieces);
        this.width = width;
    }

    /** In millimetres. */
    public double width() {
        return width;
    }

    void paint(Ink ink, double x, double baseline) {
        pieces.forEach(piece -> piece.paint(ink, x, baseline));
    }

    /** The text as a reader would copy it. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        double pen = 0;
        for (Piece piece : pieces) {
            boolean gap = piece.x() > pen + piece.size() * 0.1;
            text.append(gap && !text.isEmpty() ? " " : "").append(piece.text());
            pen = piece.x() + piece.advance();
        }
        return text.toString();
    }
}
