package org.kerfleaf.export.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;
import org.kerfleaf.plan.Buying;

/** The shopping list, by shop. Numbers and prices stand here and nowhere else; other sheets look them up. */
final class BuySheet {
    private final List<CostLine> bought;
    private final List<Line> lines = new ArrayList<>();
    private final Table table;

    private BuySheet(Table table, List<CostLine> bought) {
        this.table = table;
        this.bought = bought;
    }

    static BuySheet write(Book book) {
        List<CostLine> bought = byShop(book.plan().cost().lines());
        if (bought.isEmpty()) {
            return new BuySheet(null, bought);
        }
        Printed printed = book.printed();
        Table table = book.sheet(
                "Buy",
                4,
                List.of(
                        Column.box(),
                        Column.number("line", "Line", 5),
                        Column.text("shop", "Where", 18),
                        Column.text("what", "What", 28),
                        Column.text("detail", "Size and use", 44),
                        Column.number("number", "Number", 8),
                        Column.number("each", printed.moneyHead("Each"), 12),
                        Column.number("cost", printed.moneyHead("Cost"), 13)));
        BuySheet sheet = new BuySheet(table, bought);
        bought.forEach(sheet::line);
        table.filtered();
        sheet.totals();
        sheet.home(book);
        book.plan().buying().instead().forEach(oneOf -> sheet.instead(oneOf, printed));
        return sheet;
    }

    private static List<CostLine> byShop(List<CostLine> lines) {
        List<CostLine> sorted = new ArrayList<>();
        for (Department department : Department.values()) {
            lines.stream().filter(line -> line.department() == department).forEach(sorted::add);
        }
        return sorted;
    }

    private void line(CostLine cost) {
        lines.add(table.row()
                .count("line", lines.size() + 1L)
                .text("shop", cost.department().title())
                .text("what", cost.what())
                .text("detail", cost.detail())
                .choice("number", cost.packs().value())
                .price("each", cost.each())
                .moneyFormula("cost", "IF(ISNUMBER({each}),{number}*{each},\"%s\")".formatted(Line.NOT_KNOWN)));
    }

    private void totals() {
        table.totals().text("detail", "All of it, as bought").moneyFormula("cost", Line.knownSum(table.range("cost")));
        table.totals().plain().wordsFormula("detail", """
                IF(COUNTIF(%1$s,"%2$s")=0,"Every price is known.",COUNTIF(%1$s,"%2$s")\
                &" without a price; the total leaves out what is not known.")""".formatted(table.range("cost"), Line.NOT_KNOWN));
    }

    /** What to ask the shop for so that it all gets home. */
    private void home(Book book) {
        book.plan().buying().home().ifPresent(home -> {
            Table cuts = table.leaf()
                    .nextTable(
                            "Home in the %s".formatted(home.vehicle()),
                            List.of(
                                    Column.skip(),
                                    Column.skip(),
                                    Column.text("goes", "Goes", 0),
                                    Column.text("what", "What", 0),
                                    Column.text("ask", "In the shop", 0),
                                    Column.number("number", "Number", 0)));
            for (Buying.Load load : home.loads()) {
                cuts.row()
                        .text("goes", load.way().words())
                        .text("what", load.name())
                        .text("ask", load.words())
                        .count("number", load.count());
            }
        });
    }

    /** What the build comes to with each stock of which one is bought. */
    private void instead(Buying.OneOf oneOf, Printed printed) {
        Table choices = table.leaf()
                .nextTable(
                        "One of these",
                        List.of(
                                Column.skip(),
                                Column.skip(),
                                Column.text("planned", "", 0),
                                Column.text("what", "What", 0),
                                Column.text("fit", "Fit", 0),
                                Column.number("number", "Number", 0),
                                Column.number("price", printed.moneyHead("Price"), 0),
                                Column.number("all", printed.moneyHead("All costs"), 0)));
        for (Buying.Choice choice : oneOf.choices()) {
            Line line = choices.row()
                    .text("planned", choice.planned() ? "as planned" : "")
                    .text("what", choice.stock())
                    .text("fit", choice.fit())
                    .count("number", choice.bought());
            choice.price().ifPresentOrElse(price -> line.money("price", price), () -> line.notKnown("price"));
            choice.all().ifPresentOrElse(all -> line.money("all", all), () -> line.notKnown("all"));
        }
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    /** What is bought, in the order of the lines. */
    List<CostLine> bought() {
        return bought;
    }

    /**
     * Lets the number to buy follow from another sheet, found there by name, if exactly one line here has that name.
     *
     * @param keys the cells with names, as this sheet names them
     * @param values the cells with numbers
     */
    void follow(String what, int packs, String keys, String values) {
        List<Integer> named = new ArrayList<>();
        for (int at = 0; at < bought.size(); at++) {
            if (bought.get(at).what().equals(what)) {
                named.add(at);
            }
        }
        // A lookup takes * ? ~ for wildcards; a name with one keeps its plain number.
        boolean found = named.size() == 1 && !what.matches(".*[*?~].*");
        if (found && bought.get(named.get(0)).packs().value() == packs) {
            lines.get(named.get(0)).formula("number", "INDEX(%s,MATCH({what},%s,0))".formatted(values, keys), "0");
        }
    }

    /** A formula that finds a column of this sheet by the number in the asking row's column {@code line}. */
    String lookUp(String key) {
        return "INDEX(%s,MATCH({line},%s,0))"
                .formatted(table.rangeFromElsewhere(key), table.rangeFromElsewhere("line"));
    }
}
