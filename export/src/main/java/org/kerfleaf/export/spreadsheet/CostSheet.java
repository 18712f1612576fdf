package org.kerfleaf.export.spreadsheet;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;

/** What it costs as bought and as used, by shop, and against a bought kit. */
final class CostSheet {
    private final Book book;
    private final BuySheet buy;
    private final Printed printed;
    private final Table table;

    private CostSheet(Book book, BuySheet buy) {
        this.book = book;
        this.buy = buy;
        printed = book.printed();
        table = book.sheet(
                "Cost",
                3,
                List.of(
                        Column.number("line", "Line", 5),
                        Column.text("shop", "Where", 20),
                        Column.text("what", "What", 30),
                        Column.number("number", "Number", 12),
                        Column.number("each", printed.moneyHead("Each"), 12),
                        Column.number("bought", printed.moneyHead("As bought"), 15),
                        Column.number("share", "Share used", 15),
                        Column.number("used", printed.moneyHead("As used"), 15)));
    }

    static void write(Book book, BuySheet buy) {
        if (!buy.isEmpty()) {
            new CostSheet(book, buy).write();
        }
    }

    private void write() {
        int number = 0;
        for (CostLine cost : buy.bought()) {
            line(++number, cost);
        }
        table.filtered();
        Line total = table.totals()
                .text("what", "Total")
                .moneyFormula("bought", Line.knownSum(table.range("bought")))
                // The plan adds up what is used unrounded and rounds once.
                .moneyFormula(
                        "used",
                        Line.ifKnown(
                                table.range("used"),
                                "ROUND(SUM(%s),%d)"
                                        .formatted(
                                                table.range("used"),
                                                printed.currency().getDecimalPlaces())));
        table.leaf()
                .remark(
                        "Numbers and prices stand on the sheet Buy. What has no price or no share is left out of the totals.");
        byShop();
        againstKits(book.plan().kits() > 1 ? oneKit(total) : total);
    }

    private void line(int number, CostLine cost) {
        Line line = table.row()
                .count("line", number)
                .wordsFormula("shop", buy.lookUp("shop"))
                .wordsFormula("what", buy.lookUp("what"))
                .formula("number", buy.lookUp("number"), "0")
                .moneyFormula("each", buy.lookUp("each"))
                .moneyFormula("bought", known("ISNUMBER({each})", "{number}*{each}"));
        if (cost.share().isPresent()) {
            line.number("share", cost.share().get().value().value(), "0.0 %");
        } else {
            line.notKnown("share");
        }
        line.moneyFormula("used", known("AND(ISNUMBER({bought}),ISNUMBER({share}))", "{bought}*{share}"));
    }

    private static String known(String when, String value) {
        return "IF(%s,%s,\"%s\")".formatted(when, value, Line.NOT_KNOWN);
    }

    private static String lessBuild(String build) {
        return known("ISNUMBER(%s)".formatted(build), "{total}-" + build);
    }

    private void byShop() {
        Table shops = table.leaf()
                .nextTable(
                        "By shop",
                        List.of(
                                Column.skip(),
                                Column.text("shop", "Where", 0),
                                Column.skip(),
                                Column.skip(),
                                Column.skip(),
                                Column.number("bought", printed.moneyHead("As bought"), 0),
                                Column.skip(),
                                Column.number("used", printed.moneyHead("As used"), 0)));
        for (Department department : Department.values()) {
            if (buy.bought().stream().anyMatch(line -> line.department() == department)) {
                shops.row()
                        .text("shop", department.title())
                        .moneyFormula("bought", ofShop("bought"))
                        .moneyFormula("used", ofShop("used"));
            }
        }
    }

    private String ofShop(String key) {
        String shops = table.range("shop");
        String known = "COUNTIFS(%s,{shop},%s,\">=0\")>0".formatted(shops, table.range(key));
        return known(known, "SUMIF(%s,{shop},%s)".formatted(shops, table.range(key)));
    }

    /** What one of several kits costs; another number of kits may be tried here, but buys nothing more. */
    private Line oneKit(Line total) {
        return table.leaf()
                .nextTable(
                        "One kit",
                        List.of(
                                Column.skip(),
                                Column.skip(),
                                Column.skip(),
                                Column.number("kits", "Kits", 0),
                                Column.skip(),
                                Column.number("bought", printed.moneyHead("As bought"), 0),
                                Column.skip(),
                                Column.number("used", printed.moneyHead("As used"), 0)))
                .row()
                .count("kits", book.plan().kits())
                .moneyFormula("bought", shareOf(total.at("bought")))
                .moneyFormula("used", shareOf(total.at("used")));
    }

    private String shareOf(String sum) {
        return known(
                "ISNUMBER(%s)".formatted(sum),
                "ROUND(%s/{kits},%d)".formatted(sum, printed.currency().getDecimalPlaces()));
    }

    private void againstKits(Line total) {
        if (book.plan().cost().compare().isEmpty()) {
            return;
        }
        Table kits = table.leaf()
                .nextTable(
                        "Against a bought kit",
                        List.of(
                                Column.skip(),
                                Column.text("kit", "Kit", 0),
                                Column.text("lacks", "What the kit leaves out", 0),
                                Column.number("price", printed.moneyHead("Price"), 0),
                                Column.number("freight", printed.moneyHead("Freight"), 0),
                                Column.number("total", printed.moneyHead("Kit in all"), 0),
                                Column.number("difference", "Kit less build, as bought", 0),
                                Column.number("usedDifference", "Kit less build, as used", 0)));
        for (KitComparison kit : book.plan().cost().compare()) {
            kits.row()
                    .text("kit", kit.name())
                    .text("lacks", kit.lacks().isEmpty() ? "nothing of this build" : String.join(", ", kit.lacks()))
                    .price("price", Optional.of(kit.price()))
                    .price("freight", Optional.of(kit.freight().orElse(Money.zero(printed.currency()))))
                    .moneyFormula("total", "{price}+{freight}")
                    .moneyFormula("difference", lessBuild(total.at("bought")))
                    .moneyFormula("usedDifference", lessBuild(total.at("used")));
        }
        table.leaf().remark("Above zero, building costs less than the kit; below, the kit costs less.");
    }
}
