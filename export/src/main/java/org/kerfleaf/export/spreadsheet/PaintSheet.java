package org.kerfleaf.export.spreadsheet;

import java.util.List;
import org.kerfleaf.plan.Paintwork;

/** What is painted face by face; then by when, and what stays bare for glue. */
final class PaintSheet {
    private PaintSheet() {}

    static void write(Book book) {
        Paintwork work = book.plan().paintwork();
        if (work.faces().isEmpty()) {
            return;
        }
        Printed printed = book.printed();
        Table table = book.sheet(
                "Paint",
                3,
                List.of(
                        Column.box(),
                        Column.number("step", "Step", 8),
                        Column.text("part", "Part", 28),
                        Column.text("face", "Face", 40),
                        Column.number("pieces", "Pieces", 8),
                        Column.number("area", printed.areaHead("Area"), 12),
                        Column.number("coats", "Coats", 8),
                        Column.text("with", "With", 40)));
        for (Paintwork.CoatedFace face : work.faces()) {
            table.row()
                    .count("step", face.step())
                    .text("part", face.part())
                    .text("face", face.face())
                    .count("pieces", face.pieces())
                    .number("area", printed.number(face.area().value()), "0.00")
                    .count("coats", face.coats())
                    .text("with", String.join(", ", face.with()));
        }
        table.filtered();
        order(table.leaf(), work);
        bare(table.leaf(), work, book);
    }

    private static void order(Leaf leaf, Paintwork work) {
        if (!work.order().isEmpty()) {
            Table table = told(leaf, "Paint by when");
            for (Paintwork.PaintBy by : work.order()) {
                line(table, by.part(), "%s: %s; %s".formatted(by.face(), by.when(), by.done()));
            }
        }
    }

    private static void bare(Leaf leaf, Paintwork work, Book book) {
        if (!work.bare().isEmpty()) {
            Table table = told(leaf, "Keep bare for glue");
            for (Paintwork.Bare bare : work.bare()) {
                line(
                        table,
                        bare.part(),
                        bare.face() + ": " + bare.until(book.plan().style()));
            }
        }
    }

    private static Table told(Leaf leaf, String title) {
        return leaf.nextTable(
                title,
                List.of(
                        Column.box(),
                        Column.number("step", "", 0),
                        Column.text("part", "Part", 0),
                        Column.text("when", "Face, and when", 0)));
    }

    private static void line(Table table, String part, String when) {
        table.row().text("part", part).text("when", when);
    }
}
