package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.cutting.SheetSize;
import org.kerfleaf.export.chart.SheetUse;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.SheetDrawing;
import org.kerfleaf.export.drawing.Style;

/** A page for each sheet that is cut in a way of its own: the layout to scale, how to read it, the order of cuts. */
final class SheetPages {
    private static final double LEAST_DRAWING = 70;
    private static final double LARGEST = 0.7;
    private static final double MUCH_TOO_SMALL = 0.8;
    private static final double ROW_GAP = 9;

    private final Book book;

    SheetPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        int number = 1;
        for (Map.Entry<SheetLayout, Integer> alike : alike(book.plan().sheets()).entrySet()) {
            page(flow, alike.getKey(), number, alike.getValue());
            number += alike.getValue();
        }
    }

    /** Layouts that are the same in everything are one page. */
    static Map<SheetLayout, Integer> alike(List<SheetLayout> sheets) {
        Map<SheetLayout, Integer> alike = new LinkedHashMap<>();
        sheets.forEach(sheet -> alike.merge(sheet, 1, Integer::sum));
        return alike;
    }

    private void page(Flow flow, SheetLayout layout, int number, int times) {
        SheetSize sheet = layout.sheet();
        String name = times == 1 ? "Sheet " + number : "Sheets " + number + " to " + (number + times - 1);
        Rich size = book.lettering().size(sheet.length(), sheet.width(), Style.LABEL);
        String fact = (times > 1 ? times + " like this · " : "") + size + " "
                + book.measures().unit().symbol() + " · "
                + SheetUse.percent(SheetUse.of(layout).parts()) + " used";
        flow.page(name + ": " + sheet.stock(), name, fact.replace('⁄', '/'));
        Block words = Block.stack(words(layout, times));
        List<Block> order = order(layout, flow.width());
        double needed = words.height(flow.width())
                + order.stream().mapToDouble(b -> b.height(flow.width())).sum();
        SheetDrawing drawing = drawing(layout, flow, needed);
        flow.add(Block.picture(
                drawing.height() + 3, (ink, x, y, w) -> drawing.paint(ink, x + (w - drawing.width()) / 2, y)));
        flow.add(small(drawing));
        flow.add(words);
        if (order.stream().mapToDouble(b -> b.height(flow.width())).sum() <= flow.left()) {
            order.forEach(flow::add);
        } else {
            columns(layout).intoColumns(flow);
        }
    }

    /** As large as leaves room for the order of cuts; where that would be much too small, the order goes over the page. */
    private SheetDrawing drawing(SheetLayout layout, Flow flow, double needed) {
        SheetDrawing large = SheetDrawing.of(layout, book.lettering(), flow.width(), flow.left() * LARGEST);
        SheetDrawing fitting = SheetDrawing.of(
                layout, book.lettering(), flow.width(), Math.max(flow.left() - needed - 6, LEAST_DRAWING));
        return fitting.height() < large.height() * MUCH_TOO_SMALL ? large : fitting;
    }

    /** What could not be written into the drawing in full. */
    private Block small(SheetDrawing drawing) {
        Map<SheetPlacement, Integer> small = drawing.notNamed();
        if (small.isEmpty()) {
            return Block.space(0);
        }
        Rich words = Rich.of("Too small to name in the drawing: ", Style.LABEL);
        int left = small.size();
        for (Map.Entry<SheetPlacement, Integer> entry : small.entrySet()) {
            SheetPlacement part = entry.getKey();
            boolean turned = part.turned();
            words = words.plus(book.lettering().title(part.part()), Style.LABEL_SEMI)
                    .plus(" ", Style.LABEL)
                    .plus(book.lettering()
                            .size(
                                    turned ? part.width() : part.length(),
                                    turned ? part.length() : part.width(),
                                    Style.LABEL));
            String count = entry.getValue() > 1 ? ", " + entry.getValue() + " of them" : "";
            words = words.plus(count + (--left == 0 ? "." : "; "), Style.LABEL);
        }
        return Paragraph.of(words, Style.LABEL, 1.4, 2);
    }

    private List<Block> words(SheetLayout layout, int times) {
        SheetSize sheet = layout.sheet();
        Style style = Style.LABEL;
        Rich text = Rich.NOTHING;
        if (sheet.trim().isPositive()) {
            text = text.plus("Trim ", style)
                    .plus(sheet.trim(), book.measures(), style)
                    .plus(" off all four edges first. Then cut", style);
        } else {
            text = text.plus("Cut", style);
        }
        text = text.plus(
                        " in the order of the black numbers, starting where the arrow stands. The grain runs from left to"
                                + " right. Every dark line is one saw cut, ",
                        style)
                .plus(sheet.kerf(), book.measures(), style)
                .plus(" wide. ", style)
                .plus("X", style.in(Face.LABEL_BOLD))
                .plus(" is waste; a dashed edge is worth keeping.", style);
        if (times > 1) {
            text = text.plus(" Cut " + times + " sheets like this.", style);
        }
        List<Block> words = new ArrayList<>();
        words.add(Paragraph.of(text, style, 1.4, 1.2));
        book.bound(sheet.stock()).ifPresent(bound -> words.add(Paragraph.of(bound.because(), style, 1.4, 1.2)));
        words.add(Block.space(1.5));
        return words;
    }

    /** The order of cuts in two columns. */
    private List<Block> order(SheetLayout layout, double width) {
        return layout.cuts().isEmpty() ? List.of() : List.of(columns(layout).balanced(width));
    }

    private TwoColumns columns(SheetLayout layout) {
        String unit = book.measures().unit().symbol();
        Table table = new Table(
                        Column.fit(""), Column.fit(""), Column.share("Cut", 1), Column.number("Set,\u00a0" + unit))
                .tight();
        for (SheetCut cut : layout.cuts()) {
            table.row(
                    Cell.tick(),
                    Cell.diamond(cut.number()),
                    Cell.text((cut.across() ? "across" : "along") + ", frees " + cut.frees()),
                    Cell.length(cut.set(), book.measures()));
        }
        return new TwoColumns(table, ROW_GAP);
    }
}
