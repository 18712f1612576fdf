package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.site.SitePlan;

/** What goes in and whether it has room, what parts carry and how far they sag, also under snow. */
final class LoadsTable {
    private final Book book;
    private final Loads loads;

    LoadsTable(Book book) {
        this.book = book;
        this.loads = book.plan().loads();
    }

    /** Sets it below what stands on the page, if there is room or nothing to set. */
    boolean fits(Flow flow) {
        List<Table> tables = tables();
        if (tables.isEmpty()) {
            return true;
        }
        List<Block> blocks = new ArrayList<>(List.of(Block.space(3), Marks.heading(title())));
        tables.forEach(table -> blocks.addAll(List.of(table.whole(flow.width()), Block.space(3))));
        blocks.add(defers());
        Block all = Block.stack(blocks);
        boolean fits = all.height(flow.width()) <= flow.left();
        if (fits) {
            flow.add(all);
        }
        return fits;
    }

    /** Sets it on a page of its own. */
    void into(Flow flow) {
        flow.page(title(), "Loads", "");
        for (Table table : tables()) {
            table.into(flow);
            flow.add(Block.space(3));
        }
        flow.add(defers());
    }

    private String title() {
        return loads.contents().isEmpty() ? "What it carries" : "What goes in, and what it weighs on";
    }

    private static Block defers() {
        return Paragraph.of(SitePlan.DEFERS, Style.CAPTION, 1.3, 2);
    }

    private List<Table> tables() {
        List<Table> tables = new ArrayList<>();
        if (!loads.contents().isEmpty()) {
            tables.add(contents());
        }
        if (!loads.carried().isEmpty()) {
            tables.add(carried("Carries a load", loads.carried()));
        }
        loads.snow()
                .filter(snow -> !snow.carried().isEmpty())
                .ifPresent(snow -> tables.add(carried("Under snow", snow.carried())));
        return tables;
    }

    private Table contents() {
        Table table = new Table(
                Column.share("Goes in", 1.4),
                Column.share("On", 1),
                Column.number("On each"),
                Column.fit("Way"),
                Column.number("Needs clear"),
                Column.number("There"));
        for (Loads.Contained things : loads.contents()) {
            for (Loads.Room room : things.rooms()) {
                table.row(
                        Cell.bold(things.name()),
                        Cell.text(things.on()),
                        Cell.right(String.valueOf(things.each())),
                        Cell.text(room.way()),
                        Cell.right(room.need().value().in(book.measures())),
                        Cell.right(room.there()
                                .map(there -> there.value().in(book.measures()))
                                .orElse("open")));
            }
        }
        return table;
    }

    private Table carried(String head, List<Loads.Carried> all) {
        Table table = new Table(
                Column.share(head, 1),
                Column.number("Load"),
                Column.number("Spans"),
                Column.number("Sags"),
                Column.number("In time"));
        for (Loads.Carried carried : all) {
            table.row(
                    Cell.bold(carried.part()),
                    Cell.right(carried.load().value().in(book.measures())),
                    Cell.right(carried.bending()
                            .map(bending -> bending.span().value().in(book.measures()))
                            .orElse(Book.NOT_KNOWN)),
                    Cell.right(carried.bending()
                            .map(bending -> SagChecks.thousandths(bending.sag().value(), book.measures()))
                            .orElse(Book.NOT_KNOWN)),
                    Cell.right(carried.bending()
                            .map(bending ->
                                    SagChecks.thousandths(bending.sagInTime().value(), book.measures()))
                            .orElse(Book.NOT_KNOWN)));
        }
        return table;
    }
}
