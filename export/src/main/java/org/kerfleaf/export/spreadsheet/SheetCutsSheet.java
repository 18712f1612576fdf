package org.kerfleaf.export.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.cutting.StockBound;

/** The cuts of every sheet in their order, where each part lies, and how much of each sheet is used. */
final class SheetCutsSheet {
    private final Book book;
    private final Printed printed;
    private final List<SheetLayout> layouts;

    private SheetCutsSheet(Book book) {
        this.book = book;
        printed = book.printed();
        layouts = book.plan().sheets();
    }

    static void write(Book book) {
        if (!book.plan().sheets().isEmpty()) {
            new SheetCutsSheet(book).write();
        }
    }

    private void write() {
        Table cuts = book.sheet(
                "Sheet cuts",
                4,
                List.of(
                        Column.box(),
                        Column.number("sheet", "Sheet", 7),
                        Column.text("stock", "From", 22),
                        Column.number("cut", "Cut", 6),
                        Column.text("frees", "Sets free", 34),
                        Column.text("way", "Way", 15),
                        Column.number("set", printed.lengthHead("Set to"), 12),
                        Column.text("reads", "Read on the tape", 17),
                        Column.skip(11),
                        Column.skip(11),
                        Column.skip(12)));
        for (int at = 0; at < layouts.size(); at++) {
            for (SheetCut cut : layouts.get(at).cuts()) {
                cut(cuts.row(), at + 1, layouts.get(at), cut);
            }
        }
        cuts.filtered();
        sheets(cuts.leaf(), placements(cuts.leaf()));
    }

    private void cut(Line line, int sheet, SheetLayout layout, SheetCut cut) {
        line.count("sheet", sheet)
                .text("stock", layout.sheet().stock())
                .count("cut", cut.number())
                .text("frees", cut.frees())
                .text("way", cut.across() ? "across the sheet" : "along the sheet")
                .length("set", cut.set())
                .reads("reads", cut.set());
    }

    private Table placements(Leaf leaf) {
        Table table = leaf.nextTable(
                "Where each part lies, from the lower left corner of the untrimmed sheet",
                List.of(
                        Column.skip(),
                        Column.number("sheet", "Sheet", 0),
                        Column.text("stock", "From", 0),
                        Column.text("letter", "Mark", 0),
                        Column.text("part", "Part", 0),
                        Column.text("turned", "Grain", 0),
                        Column.number("x", printed.lengthHead("Along"), 0),
                        Column.number("y", printed.lengthHead("Up"), 0),
                        Column.number("length", printed.lengthHead("Long"), 0),
                        Column.number("width", printed.lengthHead("High"), 0),
                        Column.number("area", printed.areaHead("Area"), 0)));
        for (int at = 0; at < layouts.size(); at++) {
            for (SheetPlacement placed : layouts.get(at).placements()) {
                table.row()
                        .count("sheet", at + 1L)
                        .text("stock", layouts.get(at).sheet().stock())
                        .text("letter", book.letterOf(placed.part()))
                        .text("part", placed.part())
                        .text("turned", placed.turned() ? "across" : "along")
                        .length("x", placed.x())
                        .length("y", placed.y())
                        .length("length", placed.length())
                        .length("width", placed.width())
                        .formula("area", "{length}*{width}/%d".formatted(printed.perArea()), "0.00");
            }
        }
        return table;
    }

    private void sheets(Leaf leaf, Table placed) {
        Table table = leaf.nextTable(
                "How much of each sheet is used",
                List.of(
                        Column.skip(),
                        Column.number("sheet", "Sheet", 0),
                        Column.text("stock", "From", 0),
                        Column.number("parts", "Parts", 0),
                        Column.text("because", "How few would do", 0),
                        Column.skip(),
                        Column.number("length", printed.lengthHead("Long"), 0),
                        Column.number("width", printed.lengthHead("High"), 0),
                        Column.number("area", printed.areaHead("Sheet"), 0),
                        Column.number("used", printed.areaHead("Parts"), 0),
                        Column.number("share", "Used", 0)));
        List<String> said = new ArrayList<>();
        for (int at = 0; at < layouts.size(); at++) {
            SheetLayout layout = layouts.get(at);
            String stock = layout.sheet().stock();
            table.row()
                    .count("sheet", at + 1L)
                    .text("stock", stock)
                    .formula("parts", "COUNTIF(%s,{sheet})".formatted(placed.range("sheet")), "0")
                    .text("because", said.contains(stock) ? "" : because(book, stock))
                    .length("length", layout.sheet().length())
                    .length("width", layout.sheet().width())
                    .formula("area", "{length}*{width}/%d".formatted(printed.perArea()), "0.00")
                    .formula(
                            "used",
                            "SUMIF(%s,{sheet},%s)".formatted(placed.range("sheet"), placed.range("area")),
                            "0.00")
                    .formula("share", "{used}/{area}", "0 %");
            said.add(stock);
        }
    }

    /** The proof for that stock, empty if none is told. */
    static String because(Book book, String stock) {
        return book.plan().bounds().stream()
                .filter(bound -> bound.stock().equals(stock))
                .map(StockBound::because)
                .findFirst()
                .orElse("");
    }
}
