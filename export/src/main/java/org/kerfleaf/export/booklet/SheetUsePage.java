package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.export.chart.SheetUse;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;

/** How well the sheets are used: the proof first, then what is worth keeping, then a bar for each sheet and its shares. */
final class SheetUsePage {
    private static final double BAR = 6;

    private final Book book;

    SheetUsePage(Book book) {
        this.book = book;
    }

    /** Adds it if the page in hand has room for all of it; whether it had. */
    boolean fits(Flow flow) {
        if (book.plan().sheets().isEmpty()) {
            return true;
        }
        Block all = Block.stack(List.of(Marks.heading("Sheet use"), Block.stack(blocks())));
        boolean fits = all.height(flow.width()) <= flow.left();
        if (fits) {
            flow.add(all);
        }
        return fits;
    }

    /** Adds it on pages of its own. */
    void into(Flow flow) {
        flow.page("Sheet use", "Sheet use", Book.counted(book.plan().sheets().size(), "sheet"));
        blocks().forEach(flow::add);
    }

    private List<Block> blocks() {
        List<SheetLayout> sheets = book.plan().sheets();
        List<Block> bars = new ArrayList<>();
        double longest = sheets.stream()
                .mapToDouble(s -> s.sheet().length().inMillimetres())
                .max()
                .orElse(1);
        int number = 1;
        for (Map.Entry<SheetLayout, Integer> alike : SheetPages.alike(sheets).entrySet()) {
            bars.add(bar(alike.getKey(), number, alike.getValue(), longest));
            number += alike.getValue();
        }
        List<Block> all = new ArrayList<>();
        proofs().forEach(proof -> all.add(Paragraph.of(proof, Style.LABEL, 1.4, 1)));
        all.add(Paragraph.of(keeps(), Style.LABEL, 1.4, 2));
        all.addAll(bars);
        all.add(Paragraph.of(
                "Black is parts, hatched is worth keeping, crossed is waste, white is saw cuts and trimmed edges.",
                Style.CAPTION,
                1.4,
                0));
        return all;
    }

    private List<Rich> proofs() {
        List<Rich> proofs = new ArrayList<>();
        for (StockBound bound : book.plan().bounds()) {
            boolean sheet = book.plan().sheets().stream()
                    .anyMatch(layout -> layout.sheet().stock().equals(bound.stock()));
            if (sheet) {
                proofs.add(Rich.of(bound.stock() + ": ", Style.LABEL_SEMI).plus(bound.because(), Style.LABEL));
            }
        }
        return proofs;
    }

    private Rich keeps() {
        Rich words = Rich.of("Worth keeping: ", Style.LABEL_SEMI);
        List<Offcut> keeps = book.plan().sheets().stream()
                .flatMap(layout -> layout.offcuts().stream())
                .filter(Offcut::keep)
                .toList();
        if (keeps.isEmpty()) {
            return words.plus("nothing large enough.", Style.LABEL);
        }
        for (int i = 0; i < keeps.size(); i++) {
            words = words.plus(i > 0 ? ", " : "", Style.LABEL)
                    .plus(book.lettering()
                            .size(keeps.get(i).length(), keeps.get(i).width(), Style.LABEL));
        }
        return words.plus("\u00a0" + book.measures().unit().symbol() + ".", Style.LABEL);
    }

    private Block bar(SheetLayout layout, int number, int times, double longest) {
        SheetUse use = SheetUse.of(layout);
        String name = times == 1 ? "Sheet " + number : "Sheets " + number + " to " + (number + times - 1);
        Rich words = Rich.of(name + ", " + layout.sheet().stock() + ": ", Style.LABEL_SEMI)
                .plus(use.words(), Style.LABEL);
        Paragraph caption = Paragraph.of(words, Style.LABEL, 1.35, 1);
        double share = layout.sheet().length().inMillimetres() / longest;
        return new Block() {
            @Override
            public double height(double width) {
                return caption.height(width) + BAR + 3;
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                caption.paint(ink, x, y, width);
                use.paint(ink, x, y + caption.height(width), width * share, BAR);
            }
        };
    }
}
