package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardLayout.BoardPlacement;
import org.kerfleaf.measure.Length;

/** A board as a bar true to its length: its pieces with letter, name and length, every kerf, and what is left over. */
public final class BoardDrawing {
    /** The height of the bar on paper; a board's width is not to scale. */
    public static final double BAR = 11;

    private static final double THINNEST_KERF = 0.14;
    private static final double[] SIZES = {9.6, 8.5, 7.5};

    private final BoardLayout layout;
    private final Lettering lettering;
    private final Scale scale;

    public BoardDrawing(BoardLayout layout, Lettering lettering, Scale scale) {
        this.layout = layout;
        this.lettering = lettering;
        this.scale = scale;
    }

    public double width() {
        return scale.paper(layout.board().length());
    }

    /** Paints the bar from its upper left corner. */
    public void paint(Ink ink, double x, double y) {
        Rectangle2D outline = Ink.box(x, y, width(), BAR);
        ink.fill(outline, Ink.WHITE);
        for (BoardPlacement piece : layout.placements()) {
            ink.fill(room(piece, x, y), Ink.FAR);
        }
        leftOver(ink, x, y);
        for (BoardPlacement piece : layout.placements()) {
            ink.fill(kerfAfter(piece, x, y, outline.getMaxX()), Ink.BLACK);
        }
        double trim = scale.paper(layout.board().trim());
        if (trim > 0) {
            ink.line(x + trim, y, x + trim, y + BAR, Ink.FINE);
            ink.line(outline.getMaxX() - trim, y, outline.getMaxX() - trim, y + BAR, Ink.FINE);
        }
        ink.stroke(outline, Ink.BLACK, Ink.WIDE);
        for (BoardPlacement piece : layout.placements()) {
            Fitted.in(room(piece, x, y), List.of(), ways(piece), SIZES).ifPresent(label -> label.paint(ink));
        }
    }

    private Rectangle2D room(BoardPlacement piece, double x, double y) {
        return Ink.box(x + scale.paper(piece.at()), y, scale.paper(piece.length()), BAR);
    }

    private Rectangle2D kerfAfter(BoardPlacement piece, double x, double y, double end) {
        double from = x + scale.paper(piece.at().plus(piece.length()));
        double wide = Math.max(scale.paper(layout.board().kerf()), THINNEST_KERF);
        return Ink.box(from, y, Math.max(Math.min(wide, end - from), 0), BAR);
    }

    private void leftOver(Ink ink, double x, double y) {
        Length to = layout.board().length().minus(layout.board().trim());
        double wide = scale.paper(layout.offcut());
        Rectangle2D room = Ink.box(x + scale.paper(to) - wide, y, wide, BAR);
        if (wide < 2) {
            return;
        }
        ink.dashed(Ink.box(room.getX() + 0.5, y + 0.7, wide - 1.0, BAR - 1.4), Ink.NARROW, 2f, 1f);
        List<Fitted.Way> ways = new ArrayList<>();
        ways.add(new Fitted.Way(points -> {
            Style style = new Style(Face.LABEL, points, Ink.BLACK);
            return List.of(Rich.of("left ", style).plus(lettering.length(layout.offcut(), style)));
        }));
        ways.add(new Fitted.Way(
                points -> List.of(lettering.length(layout.offcut(), new Style(Face.LABEL, points, Ink.BLACK)))));
        Fitted.in(room, List.of(), ways, SIZES).ifPresent(label -> label.paint(ink));
    }

    private List<Fitted.Way> ways(BoardPlacement piece) {
        String letter = lettering.letter(piece.part());
        return List.of(
                new Fitted.Way(
                        points -> List.of(Rich.of(lettering.title(piece.part()), bold(points)), length(piece, points))),
                new Fitted.Way(points -> List.of(Rich.of(lettering.title(piece.part()) + " ", bold(points))
                        .plus(length(piece, points)))),
                new Fitted.Way(points -> List.of(Rich.of(letter, bold(points)), length(piece, points))),
                new Fitted.Way(points -> List.of(Rich.of(letter, bold(points)))));
    }

    private Rich length(BoardPlacement piece, double points) {
        return lettering.length(piece.length(), new Style(Face.LABEL, points, Ink.BLACK));
    }

    private static Style bold(double points) {
        return new Style(Face.LABEL_BOLD, points, Ink.BLACK);
    }
}
