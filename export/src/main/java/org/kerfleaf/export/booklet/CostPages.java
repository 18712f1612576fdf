package org.kerfleaf.export.booklet;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.LikeForLike;
import org.kerfleaf.export.chart.Bars;
import org.kerfleaf.export.chart.SheetUse;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.reason.Figure;

/** What it costs as bought and as used, where the money goes line by line, and a bought kit beside it. */
final class CostPages {
    private static final int BARS = 10;

    private final Book book;
    private final boolean departments;

    /** With the chart of departments, if the shopping list had no room for it. */
    CostPages(Book book, boolean departments) {
        this.book = book;
        this.departments = departments;
    }

    void into(Flow flow) {
        Cost cost = book.plan().cost();
        if (cost.lines().isEmpty()) {
            return;
        }
        flow.page(
                "What it costs",
                "Cost",
                book.plan().currencyCode().map("in "::concat).orElse("no prices said"));
        lines(cost).snug().into(flow);
        if (!cost.notKnown().isEmpty()) {
            flow.add(Paragraph.of(ShoppingPage.missing(cost), Style.LABEL, 1.4, 0));
        }
        cost.bought().ifPresent(sum -> flow.add(reason("As bought", sum)));
        cost.used().ifPresent(sum -> flow.add(reason("As used", sum)));
        if (cost.kits() > 1) {
            cost.boughtEach().ifPresent(each -> flow.add(reason("One kit, " + Book.amount(each.value()), each)));
        }
        cost.compare().forEach(kit -> compare(flow, cost, kit));
        if (departments) {
            flow.add(Departments.chart(cost));
        }
        chart(flow, cost);
    }

    private Block reason(String what, Figure<Money> sum) {
        return Paragraph.of(what + ": " + sum.reason().in(book.measures()) + ".", Style.CAPTION, 1.35, 0);
    }

    private Table lines(Cost cost) {
        Table table = new Table(
                Column.share("What", 1),
                Column.number("Packs"),
                Column.number("Each"),
                Column.number("As bought"),
                Column.number("Share used"),
                Column.number("As used"));
        for (CostLine line : cost.lines()) {
            table.row(
                    Cell.bold(line.what()),
                    Cell.right(line.packs().value().toString()),
                    Cell.right(line.each().map(Book::amount).orElse(Book.NOT_KNOWN)),
                    Cell.right(line.bought().map(Book::amount).orElse(Book.NOT_KNOWN)),
                    Cell.right(line.share()
                            .map(share -> SheetUse.percent(share.value().value()))
                            .orElse(Book.NOT_KNOWN)),
                    Cell.right(used(line).map(Book::amount).orElse(Book.NOT_KNOWN)));
        }
        return table.total(
                Cell.bold(cost.notKnown().isEmpty() ? "Together" : "Together, without what is not known"),
                Cell.empty(),
                Cell.empty(),
                Cell.right(Book.amount(cost.bought()), Style.LABEL_SEMI),
                Cell.empty(),
                Cell.right(Book.amount(cost.used()), Style.LABEL_SEMI));
    }

    private static Optional<Money> used(CostLine line) {
        return line.bought()
                .flatMap(bought -> line.share()
                        .map(share -> bought.multipliedBy(share.value().value(), RoundingMode.HALF_UP)));
    }

    /** The dearest lines by themselves, the others together. */
    private void chart(Flow flow, Cost cost) {
        List<CostLine> priced = cost.lines().stream()
                .filter(line -> line.bought().isPresent())
                .sorted(Comparator.comparing((CostLine line) -> line.bought().orElseThrow())
                        .reversed())
                .toList();
        if (priced.isEmpty()) {
            return;
        }
        List<Bars.Bar> bars = new ArrayList<>();
        int shown = priced.size() > BARS + 1 ? BARS : priced.size();
        priced.subList(0, shown)
                .forEach(line -> bars.add(bar(line.what(), line.bought().orElseThrow())));
        priced.subList(shown, priced.size()).stream()
                .flatMap(line -> line.bought().stream())
                .reduce(Money::plus)
                .ifPresent(rest -> bars.add(bar("%d others".formatted(priced.size() - shown), rest)));
        Bars chart = new Bars(bars, Book.amount(cost.bought()));
        flow.together(List.of(Marks.heading("As bought, dearest first"), Block.picture(chart.height(), chart::paint)));
    }

    private static Bars.Bar bar(String label, Money money) {
        return new Bars.Bar(label, money.getAmount().doubleValue(), Book.amount(money));
    }

    private void compare(Flow flow, Cost cost, KitComparison kit) {
        Table table = new Table(Column.share("Bought instead: " + kit.name(), 1), Column.number(""));
        table.row(Cell.text("its price"), Cell.right(Book.amount(kit.price())));
        kit.freight()
                .ifPresent(freight -> table.row(Cell.text("freight to the door"), Cell.right(Book.amount(freight))));
        table.row(
                Cell.bold("the kit, delivered"),
                Cell.right(Book.amount(kit.total().value())));
        table.row(
                Cell.text(cost.kits() > 1 ? "one kit of this build, as bought" : "this build, as bought"),
                Cell.right(Book.amount(cost.boughtEach())));
        kit.difference().map(Figure::value).ifPresent(difference -> {
            String words = difference.isNegative()
                    ? "buying is cheaper by"
                    : difference.isZero() ? "no difference" : "building is cheaper by";
            table.total(Cell.bold(words), Cell.right(Book.amount(difference.abs()), Style.LABEL_SEMI));
        });
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.space(6));
        blocks.add(table.whole(flow.width()));
        if (kit.likeForLike().isPresent()) {
            blocks.add(Paragraph.of(likeForLike(kit, kit.likeForLike().get()), Style.LABEL, 1.4, 0));
        } else if (!kit.lacks().isEmpty()) {
            blocks.add(Paragraph.of(
                    "The kit lacks " + String.join(", ", kit.lacks()) + ", so the two are not yet like for like.",
                    Style.LABEL,
                    1.4,
                    0));
        }
        flow.together(blocks);
    }

    private static String likeForLike(KitComparison kit, LikeForLike both) {
        StringBuilder words = new StringBuilder();
        if (!kit.lacks().isEmpty()) {
            words.append("The kit lacks %s. With %s for them it comes to %s, and building is %s by %s. "
                    .formatted(
                            String.join(", ", kit.lacks()),
                            Book.amount(both.lacked().value()),
                            Book.amount(both.total().value()),
                            both.asBought().value().isNegative() ? "dearer" : "cheaper",
                            Book.amount(both.asBought().value().abs())));
        }
        for (LikeForLike.ToolPaid tool : both.tools()) {
            words.append(tool.builds()
                    .map(builds -> "%s, %s, is paid for after %d %s. "
                            .formatted(
                                    tool.name(),
                                    Book.amount(tool.price()),
                                    builds.value(),
                                    builds.value() == 1 ? "build" : "builds"))
                    .orElse("%s, %s, is not paid for by building. ".formatted(tool.name(), Book.amount(tool.price()))));
        }
        return words.toString().strip();
    }
}
