package org.kerfleaf.export.booklet;

import java.util.List;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.schedule.Schedule;

/** What to buy, by department, with a tick box; what it comes to, and where the money goes. */
final class ShoppingPage {
    private final Book book;

    ShoppingPage(Book book) {
        this.book = book;
    }

    /** Adds the pages; whether the chart of departments found room on them. */
    boolean into(Flow flow) {
        Plan plan = book.plan();
        flow.page(
                "What to buy",
                "Shopping",
                plan.currencyCode().map("prices in "::concat).orElse("no prices said")
                        + plan.pricesOf()
                                .map(day -> ", as of " + TitleBlock.day(day))
                                .orElse(""));
        ahead(flow);
        if (plan.cost().lines().isEmpty()) {
            flow.add(Paragraph.of("The plan buys nothing.", Style.LABEL, 1.4, 2));
            return true;
        }
        Table list = list();
        Block missing = plan.cost().notKnown().isEmpty()
                ? Block.space(0)
                : Paragraph.of(missing(plan.cost()), Style.LABEL, 1.4, 0);
        Block after = Block.stack(List.of(missing, Departments.chart(plan.cost())));
        if (list.height(flow.width()) + after.height(flow.width()) > flow.left()) {
            list.snug();
        }
        list.into(flow);
        new HomeTable(book).into(flow);
        boolean fits = after.height(flow.width()) <= flow.left();
        flow.add(fits ? after : missing);
        return fits;
    }

    static String missing(Cost cost) {
        return "The price or the share used is not known for " + String.join(", ", cost.notKnown())
                + ". The sums leave out what is not known.";
    }

    private void ahead(Flow flow) {
        List<Schedule.Ahead> ahead = book.plan().schedule().ahead();
        if (ahead.isEmpty()) {
            return;
        }
        Table table = new Table(Column.fit(""), Column.share("Ask or order first", 1), Column.number("Before"));
        for (Schedule.Ahead first : ahead) {
            table.row(
                    Cell.tick(), Cell.bold(first.what()), Cell.right(Book.counted(first.workingDays(), "working day")));
        }
        table.into(flow);
        flow.add(Block.space(6));
    }

    private Table list() {
        Table table = new Table(
                Column.fit(""),
                Column.number("Buy"),
                Column.share("What", 1),
                Column.share("Size and use", 1.1),
                Column.number("Each"),
                Column.number("Costs"));
        for (Department department : Department.values()) {
            List<CostLine> lines = lines(department);
            if (!lines.isEmpty()) {
                table.group(department.title());
            }
            for (CostLine line : lines) {
                table.row(
                        Cell.tick(),
                        Cell.right(line.packs().value().toString()),
                        Cell.bold(line.what()),
                        Cell.text(line.detail()),
                        Cell.right(line.each().map(Book::amount).orElse("")),
                        Cell.right(line.bought().map(Book::amount).orElse(Book.NOT_KNOWN)));
            }
        }
        boolean complete =
                book.plan().cost().lines().stream().allMatch(line -> line.each().isPresent());
        return table.total(
                Cell.empty(),
                Cell.empty(),
                Cell.bold(complete ? "Together" : "Together, without what is not known"),
                Cell.empty(),
                Cell.empty(),
                Cell.right(Book.amount(book.plan().cost().bought()), Style.LABEL_SEMI));
    }

    private List<CostLine> lines(Department department) {
        return book.plan().cost().lines().stream()
                .filter(line -> line.department() == department)
                .toList();
    }
}
