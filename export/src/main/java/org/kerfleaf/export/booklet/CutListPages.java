package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;

/** Every part as it is cut; how the saws are set for it is {@link SawPages}. */
final class CutListPages {
    private final Book book;

    CutListPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        SawPages saws = new SawPages(book);
        String unit = book.measures().unit() == LengthUnit.INCHES ? "inches" : "millimetres";
        int kits = book.plan().kits();
        String fact = "sizes in " + unit + " · tick when cut" + (kits > 1 ? " · each for " + kits + " kits" : "");
        flow.page("Cut list", "Cutting", fact);
        Table list = cutList();
        if (list.height(flow.width()) > flow.left()) {
            // A row or two more on the page are better than a page for them.
            Table close = cutList().snug();
            list = close.height(flow.width()) <= flow.left() ? close : list;
        }
        Block below = saws.below(flow.width());
        boolean both = saws.isTold() && list.height(flow.width()) + below.height(flow.width()) <= flow.left();
        if (both) {
            flow.retitle("Cut list and saw settings", "Cutting", fact);
        }
        if (list.isEmpty()) {
            flow.add(Paragraph.of("The plan cuts nothing.", Style.LABEL, 1.4, 2));
        } else {
            list.into(flow);
        }
        if (both) {
            flow.add(below);
        } else {
            saws.into(flow);
        }
    }

    private Table cutList() {
        Table table = new Table(
                Column.fit(""),
                Column.fit(""),
                Column.share("Part", 1),
                Column.number(book.plan().kits() > 1 ? "A kit, all" : "Cut"),
                Column.fit("Along grain"),
                Column.fit("Across"),
                Column.fit("Thick"),
                Column.share("From", 0.6),
                Column.share("Then", 1.4));
        for (PlannedPart part : book.plan().parts()) {
            table.row(
                    Cell.tick(),
                    Cell.letter(part.letter()),
                    Cell.bold(part.name()),
                    Cell.right(pieces(part)),
                    Cell.length(part.length().value(), book.measures()),
                    Cell.length(part.width().value(), book.measures()),
                    Cell.length(part.thickness().value(), book.measures()),
                    Cell.text(part.stock()),
                    then(part));
        }
        return table;
    }

    /** How many to cut; of several kits how many for one, and for all. */
    private String pieces(PlannedPart part) {
        int kits = book.plan().kits();
        return kits > 1 ? "%d, %d".formatted(part.count(), part.count() * kits) : Integer.toString(part.count());
    }

    private Cell then(PlannedPart part) {
        List<Paragraph> lines = new ArrayList<>();
        for (PlannedEdge edge : part.edges()) {
            lines.add(line(edge(edge)));
        }
        if (part.pair()) {
            lines.add(line(Rich.of("a pair, mirrored", SMALL)));
        }
        part.then().forEach(words -> lines.add(line(Rich.of(words, SMALL))));
        part.takenFromTheWork()
                .ifPresent(words -> lines.add(
                        line(Rich.of("Take the size from the work. ", SMALL).plus(words, SMALL))));
        return Cell.paragraphs(lines);
    }

    private static final Style SMALL = Style.LABEL.at(9.5);

    private static Paragraph line(Rich words) {
        return new Paragraph(words, SMALL.size(), Style.LABEL.size() * 1.3, 0);
    }

    private Rich edge(PlannedEdge edge) {
        boolean bevel = edge.cut() == PlannedEdge.Cut.BEVEL;
        Rich words = Rich.of(edge.name() + (bevel ? " bevelled " : " mitred ") + edge.angles(book.measures()), SMALL);
        if (!edge.shorter().value().isPositive()) {
            return words;
        }
        return words.plus(bevel ? ", other face " : ", other edge ", SMALL)
                .plus(Rich.nearest(edge.shorter().value(), book.measures(), SMALL))
                .plus(" shorter", SMALL);
    }
}
