package org.kerfleaf.export.booklet;

import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Paintwork;

/** What is painted face by face, by when, and what stays bare for glue. */
final class PaintPage {
    private final Book book;
    private final Paintwork work;

    PaintPage(Book book) {
        this.book = book;
        this.work = book.plan().paintwork();
    }

    void into(Flow flow) {
        if (work.faces().isEmpty()) {
            return;
        }
        flow.page("Paint, face by face", "Paint", "tick when dry");
        faces().into(flow);
        if (!work.order().isEmpty()) {
            flow.add(Block.space(6));
            order().into(flow);
        }
        if (!work.bare().isEmpty()) {
            flow.add(Block.space(6));
            bare().into(flow);
        }
        flow.add(Paragraph.of(
                "A face is closed in when the build as it then stands leaves no way to it but openings, or leaves less than 1 in"
                        + " (25 mm) before it.",
                Style.LABEL,
                1.4,
                2));
    }

    private Table faces() {
        Table table = new Table(
                Column.fit(""),
                Column.number("Step"),
                Column.share("Part", 1),
                Column.share("Face", 0.8),
                Column.number("Pieces"),
                Column.number("Area"),
                Column.number("Coats"),
                Column.share("With", 1.4));
        for (Paintwork.CoatedFace face : work.faces()) {
            table.row(
                    Cell.tick(),
                    Cell.right(Integer.toString(face.step())),
                    Cell.bold(face.part()),
                    Cell.text(face.face()),
                    Cell.right(Integer.toString(face.pieces())),
                    Cell.right(face.area().value().in(book.measures())),
                    Cell.right(Integer.toString(face.coats())),
                    Cell.text(String.join(", ", face.with())));
        }
        return table;
    }

    private Table order() {
        Table table =
                new Table(Column.share("Paint it", 0.8), Column.share("By when", 1.2), Column.share("As planned", 0.8));
        for (Paintwork.PaintBy by : work.order()) {
            table.row(Cell.bold(by.part() + ", " + by.face()), Cell.text(by.when()), Cell.text(by.done()));
        }
        return table;
    }

    private Table bare() {
        Table table = new Table(Column.share("Keep bare", 0.8), Column.share("How long", 2));
        for (Paintwork.Bare bare : work.bare()) {
            table.row(Cell.bold(bare.part() + ", " + bare.face()), Cell.text(bare.until(book.measures())));
        }
        return table;
    }
}
