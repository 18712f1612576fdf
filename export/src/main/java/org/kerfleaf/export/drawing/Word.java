package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Pieces that stay on one line, with the gap that stands before them unless they begin a line.
 *
 * @param gap the width of the space before, zero after a hyphen or at the very start
 */
record Word(List<Piece> pieces, double width, double gap) {
    Word {
        pieces = List.copyOf(pieces);
    }

    /** This word if it is narrow enough, else its letters in stretches that are. */
    List<Word> noWiderThan(double limit) {
        if (width <= limit) {
            return List.of(this);
        }
        List<Word> parts = new ArrayList<>();
        List<Piece> held = new ArrayList<>();
        double x = 0;
        for (Piece piece : pieces) {
            for (Piece letter : lettersOf(piece)) {
                if (x + letter.advance() > limit && !held.isEmpty()) {
                    parts.add(new Word(held, x, parts.isEmpty() ? gap : 0));
                    held.clear();
                    x = 0;
                }
                held.add(letter.movedBy(x - letter.x()));
                x += letter.advance();
            }
        }
        parts.add(new Word(held, x, parts.isEmpty() ? gap : 0));
        return parts;
    }

    private static List<Piece> lettersOf(Piece piece) {
        if (piece.sign().isPresent()) {
            return List.of(piece);
        }
        return piece.text()
                .codePoints()
                .mapToObj(c -> Piece.letters(Character.toString(c), piece.style(), piece.size(), 0, piece.rise()))
                .toList();
    }
}
