package org.kerfleaf.export.drawing;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.Path2D;
import java.util.Map;

/** Signs that the product's faces lack, drawn; and, for all other writing, the outlines of whatever font the machine has. */
final class Glyphs {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final Font ANY = new Font(Font.DIALOG, Font.PLAIN, 1);

    private static final Path2D LESS = Ink.open(0.52, -0.62, 0.08, -0.40, 0.52, -0.18);
    private static final Path2D GREATER = Ink.open(0.08, -0.62, 0.52, -0.40, 0.08, -0.18);
    private static final Path2D UNDER = Ink.open(0.08, -0.03, 0.52, -0.03);

    private static final Map<Integer, Drawn> SIGNS = Map.of(
            (int) '≤', new Drawn(both(LESS, UNDER), 0.60),
            (int) '≥', new Drawn(both(GREATER, UNDER), 0.60),
            (int) '≠',
                    new Drawn(
                            both(
                                    Ink.open(0.08, -0.46, 0.52, -0.46),
                                    both(Ink.open(0.08, -0.22, 0.52, -0.22), Ink.open(0.18, -0.06, 0.42, -0.62))),
                            0.60),
            (int) '≈', new Drawn(both(wave(-0.44), wave(-0.20)), 0.60),
            (int) '→',
                    new Drawn(
                            both(Ink.open(0.06, -0.33, 0.80, -0.33), Ink.open(0.56, -0.53, 0.80, -0.33, 0.56, -0.13)),
                            0.88),
            (int) '√', new Drawn(Ink.open(0.04, -0.30, 0.14, -0.36, 0.30, 0.02, 0.52, -0.74, 0.66, -0.74), 0.66),
            (int) '✓', new Drawn(Ink.open(0.08, -0.30, 0.26, -0.04, 0.62, -0.66), 0.70),
            (int) '☐', new Drawn(Ink.polygon(0.08, -0.64, 0.70, -0.64, 0.70, -0.02, 0.08, -0.02), 0.78));

    private Glyphs() {}

    /** A drawn sign and how far the pen moves on, both in shares of the size. */
    record Drawn(Shape shape, double advance, boolean filled) {
        Drawn(Shape shape, double advance) {
            this(shape, advance, false);
        }

        Piece.Sign sign() {
            return new Piece.Sign(shape, filled);
        }
    }

    /** What stands for a code point that a face lacks: a drawn sign, another font's outline, or an empty box. */
    static Drawn of(int codePoint) {
        Drawn sign = SIGNS.get(codePoint);
        if (sign != null) {
            return sign;
        }
        if (!ANY.canDisplay(codePoint)) {
            return SIGNS.get((int) '☐');
        }
        var outline = ANY.deriveFont(1000f).createGlyphVector(EXACT, Character.toString(codePoint));
        Path2D small =
                new Path2D.Double(outline.getOutline(), java.awt.geom.AffineTransform.getScaleInstance(0.001, 0.001));
        return new Drawn(small, outline.getLogicalBounds().getWidth() / 1000, true);
    }

    private static Path2D both(Path2D one, Path2D other) {
        Path2D path = new Path2D.Double(one);
        path.append(other, false);
        return path;
    }

    private static Path2D wave(double y) {
        Path2D path = new Path2D.Double();
        path.moveTo(0.08, y + 0.04);
        path.curveTo(0.22, y - 0.14, 0.38, y + 0.14, 0.52, y - 0.04);
        return path;
    }
}
