package org.kerfleaf.export.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.cutting.SheetSize;

/**
 * A sheet's layout at a standard scale: parts with letter, name and size, every kerf at its true width, what is worth
 * keeping dashed, waste crossed out, cuts numbered where they start. The sheet's origin is its lower left corner, the
 * grain runs to the right.
 */
public final class SheetDrawing {
    private static final double THINNEST_KERF = 0.14;
    private static final double DIMENSION_ROOM = 8.5;
    private static final double BESIDE = 9.2;
    private static final double[] SIZES = {9.6, 8.5, 7.5};

    private final SheetLayout layout;
    private final Lettering lettering;
    private final boolean marked;
    private final Scale scale;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;

    private SheetDrawing(SheetLayout layout, Lettering lettering, boolean marked, double maxWidth, double maxHeight) {
        this.layout = layout;
        this.lettering = lettering;
        this.marked = marked;
        // How many rows of numbers stand outside depends on the scale, and the scale on the room they leave.
        Scale first = scale(maxWidth - 2 * BESIDE, maxHeight - BESIDE - DIMENSION_ROOM);
        left = room(CutMarks.Edge.LEFT, first);
        right = room(CutMarks.Edge.RIGHT, first);
        top = room(CutMarks.Edge.TOP, first);
        bottom = room(CutMarks.Edge.BOTTOM, first) + (marked ? DIMENSION_ROOM : 0);
        scale = scale(maxWidth - left - right, maxHeight - top - bottom);
    }

    private Scale scale(double wide, double high) {
        SheetSize sheet = layout.sheet();
        return marked
                ? Scale.fitting(sheet.length(), sheet.width(), wide, high)
                : Scale.filling(sheet.length(), sheet.width(), wide, high);
    }

    private double room(CutMarks.Edge edge, Scale at) {
        return marked ? CutMarks.room(layout, edge, at) : 0.5;
    }

    /** The layout with its cuts numbered and its length given, at the largest scale that fits. */
    public static SheetDrawing of(SheetLayout layout, Lettering lettering, double maxWidth, double maxHeight) {
        return new SheetDrawing(layout, lettering, true, maxWidth, maxHeight);
    }

    /** The layout as a picture, without cut numbers or dimensions. */
    public static SheetDrawing plain(SheetLayout layout, Lettering lettering, double maxWidth, double maxHeight) {
        return new SheetDrawing(layout, lettering, false, maxWidth, maxHeight);
    }

    public Scale scale() {
        return scale;
    }

    /** Of the whole drawing on paper, in millimetres. */
    public double width() {
        return left + scale.paper(layout.sheet().length()) + right;
    }

    /** Of the whole drawing on paper, in millimetres. */
    public double height() {
        return top + scale.paper(layout.sheet().width()) + bottom;
    }

    /** Where the sheet's own left edge stands in the drawing. */
    double sheetLeft() {
        return left;
    }

    /** Paints the drawing from its upper left corner. */
    public void paint(Ink ink, double x, double y) {
        SheetSize sheet = layout.sheet();
        var paper = new CutMarks.OnPaper(x + left, y + top, sheet, scale);
        CutMarks marks = marked ? new CutMarks(layout, paper) : null;
        List<Rectangle2D> taken = marks == null ? List.of() : marks.taken();
        Rectangle2D outline = Ink.box(x + left, y + top, scale.paper(sheet.length()), scale.paper(sheet.width()));
        ink.fill(outline, Ink.WHITE);
        layout.placements().forEach(part -> ink.fill(room(part, paper), Ink.FAR));
        offcuts(ink, paper);
        layout.cuts().forEach(cut -> ink.fill(kerf(cut, paper), Ink.BLACK));
        trim(ink, outline);
        ink.stroke(outline, Ink.BLACK, Ink.WIDE);
        List<Rectangle2D> written = new ArrayList<>(taken);
        layout.offcuts()
                .forEach(offcut -> keep(offcut, paper, written).ifPresent(fit -> {
                    fit.paint(ink);
                    written.add(fit.place());
                }));
        layout.placements().forEach(part -> label(ink, part, room(part, paper), written));
        if (marks != null) {
            marks.paint(ink, paper);
            dimension(ink, outline, y);
        }
    }

    /** Parts too small to carry their name and size in the drawing, each once, with size and number. */
    public Map<SheetPlacement, Integer> notNamed() {
        var paper = new CutMarks.OnPaper(left, top, layout.sheet(), scale);
        List<Rectangle2D> taken = marked ? new CutMarks(layout, paper).taken() : List.of();
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, SheetPlacement> first = new LinkedHashMap<>();
        for (SheetPlacement part : layout.placements()) {
            if (Fitted.in(room(part, paper), taken, full(part), SIZES).isEmpty()) {
                first.putIfAbsent(part.part(), part);
                counts.merge(part.part(), 1, Integer::sum);
            }
        }
        Map<SheetPlacement, Integer> small = new LinkedHashMap<>();
        first.forEach((name, part) -> small.put(part, counts.get(name)));
        return small;
    }

    private void dimension(Ink ink, Rectangle2D outline, double y) {
        Style style = new Style(Face.LABEL, 9.6, Ink.BLACK);
        double line = y + height() - 1.7;
        Signs.dimension(
                ink,
                lettering.length(layout.sheet().length(), style).line(),
                outline.getMinX(),
                outline.getMaxX(),
                line,
                outline.getMaxY() + 1);
    }

    private void trim(Ink ink, Rectangle2D outline) {
        double trim = scale.paper(layout.sheet().trim());
        if (trim > 0) {
            Rectangle2D inner = Ink.box(
                    outline.getX() + trim,
                    outline.getY() + trim,
                    outline.getWidth() - 2 * trim,
                    outline.getHeight() - 2 * trim);
            ink.stroke(inner, Ink.BLACK, Ink.FINE);
        }
    }

    private Rectangle2D kerf(SheetCut cut, CutMarks.OnPaper paper) {
        double wide = Math.max(scale.paper(layout.sheet().kerf()), THINNEST_KERF);
        var low = cut.from().min(cut.to());
        var high = cut.from().max(cut.to());
        return cut.across()
                ? Ink.box(paper.x(cut.at()), paper.y(high), wide, scale.paper(high.minus(low)))
                : Ink.box(paper.x(low), paper.y(cut.at()) - wide, scale.paper(high.minus(low)), wide);
    }

    private Rectangle2D room(SheetPlacement part, CutMarks.OnPaper paper) {
        return Ink.box(
                paper.x(part.x()),
                paper.y(part.y().plus(part.width())),
                scale.paper(part.length()),
                scale.paper(part.width()));
    }

    private Rectangle2D room(Offcut offcut, CutMarks.OnPaper paper) {
        return Ink.box(
                paper.x(offcut.x()),
                paper.y(offcut.y().plus(offcut.width())),
                scale.paper(offcut.length()),
                scale.paper(offcut.width()));
    }

    private void offcuts(Ink ink, CutMarks.OnPaper paper) {
        for (Offcut offcut : layout.offcuts()) {
            Rectangle2D room = room(offcut, paper);
            if (offcut.keep()) {
                double in = Math.min(0.5, Math.min(room.getWidth(), room.getHeight()) / 4);
                ink.dashed(
                        Ink.box(
                                room.getX() + in,
                                room.getY() + in,
                                room.getWidth() - 2 * in,
                                room.getHeight() - 2 * in),
                        Ink.NARROW,
                        2f,
                        1f);
            } else {
                ink.line(room.getMinX(), room.getMinY(), room.getMaxX(), room.getMaxY(), Ink.FINE);
                ink.line(room.getMinX(), room.getMaxY(), room.getMaxX(), room.getMinY(), Ink.FINE);
            }
        }
    }

    private Optional<Fitted> keep(Offcut offcut, CutMarks.OnPaper paper, List<Rectangle2D> taken) {
        if (!offcut.keep()) {
            return Optional.empty();
        }
        Fitted.Way full = new Fitted.Way(points -> {
            Style style = new Style(Face.LABEL, points, Ink.BLACK);
            Rich size = lettering.size(offcut.length(), offcut.width(), style);
            return List.of(Rich.of("keep ", style).plus(size));
        });
        Fitted.Way stacked = new Fitted.Way(points -> {
            Style style = new Style(Face.LABEL, points, Ink.BLACK);
            return List.of(Rich.of("keep", style), lettering.size(offcut.length(), offcut.width(), style));
        });
        Fitted.Way word = new Fitted.Way(points -> List.of(Rich.of("keep", new Style(Face.LABEL, points, Ink.BLACK))));
        return Fitted.in(room(offcut, paper), taken, List.of(full, stacked, word), SIZES);
    }

    private void label(Ink ink, SheetPlacement part, Rectangle2D room, List<Rectangle2D> taken) {
        Optional<Fitted> fitted =
                Fitted.in(room, taken, full(part), SIZES).or(() -> Fitted.in(room, taken, shorter(part), SIZES));
        fitted.ifPresent(label -> label.paint(ink));
        double gx = room.getX() + 1.6;
        double gy = room.getMaxY() - 1.8;
        Rectangle2D grain = Ink.box(gx - 0.5, gy - 2.6, 9, 3.2);
        boolean free = taken.stream().noneMatch(grain::intersects)
                && fitted.map(label -> !label.place().intersects(grain)).orElse(false);
        if (free && room.contains(grain)) {
            Signs.grain(ink, gx, gy);
        }
    }

    /** Ways that carry letter, name and size. */
    private List<Fitted.Way> full(SheetPlacement part) {
        Fitted.Way stacked = new Fitted.Way(
                points -> List.of(Rich.of(lettering.title(part.part()), bold(points)), size(part, points)));
        Fitted.Way inOne = new Fitted.Way(points -> List.of(
                Rich.of(lettering.title(part.part()) + "  ", bold(points)).plus(size(part, points))));
        return List.of(stacked, inOne);
    }

    /** Ways that carry the letter with the size or alone; the name then stands below the drawing. */
    private List<Fitted.Way> shorter(SheetPlacement part) {
        String letter = lettering.letter(part.part());
        if (letter.isEmpty()) {
            return List.of();
        }
        Fitted.Way stacked = new Fitted.Way(points -> List.of(Rich.of(letter, bold(points)), size(part, points)));
        Fitted.Way inOne = new Fitted.Way(
                points -> List.of(Rich.of(letter + "  ", bold(points)).plus(size(part, points))));
        Fitted.Way alone = new Fitted.Way(points -> List.of(Rich.of(letter, bold(points))));
        return List.of(inOne, stacked, alone);
    }

    private Rich size(SheetPlacement part, double points) {
        return lettering.size(part.length(), part.width(), part.turned(), new Style(Face.LABEL, points, Ink.BLACK));
    }

    private static Style bold(double points) {
        return new Style(Face.LABEL_BOLD, points, Ink.BLACK);
    }
}
