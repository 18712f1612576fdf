package org.kerfleaf.export.booklet;

import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Buying;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.rules.Tolerances;

/** What a sheet may measure when it is bought, and what to ask the shop for so that everything gets home. */
final class HomeTable {
    private final Book book;

    HomeTable(Book book) {
        this.book = book;
    }

    /** Sets it below the shopping list: always what a sheet may measure, and the way home if the vehicle was said. */
    void into(Flow flow) {
        if (!book.plan().buying().sheets().isEmpty()) {
            flow.add(Block.space(4));
            measures().into(flow);
        }
        for (Buying.OneOf oneOf : book.plan().buying().instead()) {
            flow.add(Block.space(4));
            instead(oneOf).into(flow);
        }
        book.plan().buying().home().ifPresent(home -> {
            flow.add(Block.space(4));
            flow.add(Marks.heading("Home in the " + home.vehicle()));
            Table table = new Table(
                    Column.fit(""), Column.share("What", 1), Column.fit("Goes"), Column.share("In the shop", 2.4));
            for (Buying.Load load : home.loads()) {
                table.row(
                        Cell.tick(),
                        Cell.bold(load.name()),
                        Cell.text(load.way().words()),
                        Cell.text(load.words()));
            }
            table.into(flow);
            flow.add(Block.space(1.5));
            flow.add(Paragraph.of(
                    "Cuts are numbered as in the layouts; the distance is from the factory edge or the board's end to the near side"
                            + " of the cut.",
                    Style.CAPTION,
                    1.3,
                    2));
        });
    }

    /** What the build comes to with each stock of which one is bought. */
    private Table instead(Buying.OneOf oneOf) {
        Table table = new Table(
                Column.share("One of these", 1.2),
                Column.number("Buy"),
                Column.number("Price"),
                Column.number("All costs"),
                Column.number("Weighs"),
                Column.number("Sags"),
                Column.number("Moves"),
                Column.share("Fit", 1.2));
        for (Buying.Choice choice : oneOf.choices()) {
            table.row(
                    Cell.bold(choice.stock() + (choice.planned() ? ", as planned" : "")),
                    Cell.right(String.valueOf(choice.bought())),
                    Cell.right(choice.price().map(Book::amount).orElse(Book.NOT_KNOWN)),
                    Cell.right(choice.all().map(Book::amount).orElse(Book.NOT_KNOWN)),
                    Cell.right(choice.weight()
                            .map(weight -> weight.value().in(book.measures()))
                            .orElse(Book.NOT_KNOWN)),
                    Cell.right(choice.sag()
                            .map(sag -> SagChecks.thousandths(sag.value(), book.measures()))
                            .orElse(Book.NOT_KNOWN)),
                    Cell.right(choice.moves()
                            .map(moves -> SagChecks.thousandths(moves.value(), book.measures()))
                            .orElse(Book.NOT_KNOWN)),
                    Cell.text(choice.fit()));
        }
        return table;
    }

    /** What a sheet may measure and still be what its label says: measure it before the first cut. */
    private Table measures() {
        Table table = new Table(
                Column.share("Measure before you cut", 1),
                Column.number("Thick"),
                Column.number("Wide, at least"),
                Column.number("Long, at least"),
                Column.number("Diagonals differ, at most"));
        for (Buying.SheetAsSold sheet : book.plan().buying().sheets()) {
            table.row(
                    Cell.bold(sheet.stock()),
                    Cell.right(Tolerances.thickness(sheet.thinnest(), sheet.thickest(), book.measures())),
                    Cell.right(Tolerances.fine(sheet.narrowest().value(), book.measures())),
                    Cell.right(Tolerances.fine(sheet.shortest().value(), book.measures())),
                    Cell.right(Tolerances.fine(sheet.diagonals().value(), book.measures())));
        }
        return table;
    }
}
