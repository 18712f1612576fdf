package org.kerfleaf.export.drawing;

import java.util.List;
import java.util.stream.Collectors;

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

    @Override
    public String toString() {
        return pieces.stream().map(Piece::text).collect(Collectors.joining());
    }
}
