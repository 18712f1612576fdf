package org.kerfleaf.export.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;

/** Every part with its sizes, in the order of the letters. */
final class CutListSheet {
    private final Book book;
    private final Printed printed;

    private CutListSheet(Book book) {
        this.book = book;
        this.printed = book.printed();
    }

    static void write(Book book) {
        if (!book.plan().parts().isEmpty()) {
            new CutListSheet(book).write();
        }
    }

    private void write() {
        Table table = book.sheet("Cut list", 3, columns());
        for (PlannedPart part : book.plan().parts()) {
            line(table.row(), part);
        }
        table.filtered();
        // SUBTOTAL leaves out what a filter hides, so the total is that of the rows in sight.
        table.totals()
                .text("name", "Rows in sight")
                .formula("number", "SUBTOTAL(9,%s)".formatted(table.range("number")), "0")
                .formula("area", "SUBTOTAL(9,%s)".formatted(table.range("area")), "0.00")
                .formula(
                        "allWeight",
                        Line.ifKnown(table.range("allWeight"), "SUBTOTAL(9,%s)".formatted(table.range("allWeight"))),
                        "0.0");
    }

    private List<Column> columns() {
        int kits = book.plan().kits();
        List<Column> columns = new ArrayList<>(List.of(
                Column.box(),
                Column.text("letter", "Mark", 7),
                Column.text("name", "Part", 18),
                Column.number("number", kits > 1 ? "A kit" : "Cut", 6),
                Column.number("length", printed.lengthHead("Along grain"), 14),
                Column.number("width", printed.lengthHead("Across"), 11),
                Column.number("thickness", printed.lengthHead("Thick"), 9)));
        if (book.inInches()) {
            columns.add(Column.text("reads", "Read on the tape", 23));
        }
        if (kits > 1) {
            columns.add(Column.number("inKits", "In %d kits".formatted(kits), 9));
        }
        columns.addAll(List.of(
                Column.text("stock", "From", 20),
                Column.text("then", "Edges, and then", 32),
                Column.number("area", printed.areaHead("Blanks"), 12),
                Column.number("weight", printed.massHead("One"), 10),
                Column.number("allWeight", printed.massHead("All"), 10)));
        return columns;
    }

    private void line(Line line, PlannedPart part) {
        line.text("letter", part.letter())
                .text("name", part.pair() ? part.name() + " (pair)" : part.name())
                .count("number", part.count())
                .length("length", part.length().value())
                .length("width", part.width().value())
                .length("thickness", part.thickness().value())
                .text("stock", part.material())
                .text("then", then(part))
                .formula("area", "{number}*{length}*{width}/%d".formatted(printed.perArea()), "0.00");
        if (book.plan().kits() > 1) {
            line.formula("inKits", "{number}*%d".formatted(book.plan().kits()), "0");
        }
        if (book.inInches()) {
            line.text("reads", onTheTape(part));
        }
        if (part.weight().isPresent()) {
            line.number("weight", printed.number(part.weight().get().value()), "0.0");
        } else {
            line.notKnown("weight");
        }
        line.formula("allWeight", "IF(ISNUMBER({weight}),{number}*{weight},\"%s\")".formatted(Line.NOT_KNOWN), "0.0");
    }

    private String onTheTape(PlannedPart part) {
        return "%s × %s × %s"
                .formatted(
                        part.length().value().read(printed.style()).text(),
                        part.width().value().read(printed.style()).text(),
                        part.thickness().value().read(printed.style()).text());
    }

    private String then(PlannedPart part) {
        List<String> words = new ArrayList<>();
        part.takenFromTheWork().ifPresent(words::add);
        part.edges().forEach(edge -> words.add(inWords(edge)));
        words.addAll(part.then());
        return String.join("; ", words);
    }

    private String inWords(PlannedEdge edge) {
        String cut = edge.cut().words();
        String angle = edge.angles(printed.style());
        return edge.shorter().value().isZero()
                ? "%s: %s %s".formatted(edge.name(), cut, angle)
                : "%s: %s %s, short side %s less"
                        .formatted(
                                edge.name(), cut, angle, edge.shorter().value().in(printed.style()));
    }
}
