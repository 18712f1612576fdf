package org.kerfleaf.export.booklet;

import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Buying;

/** What a sheet may measure when it is bought, and what to ask the shop for so that everything gets home. */
final class HomeTable {
    private final Book book;

    HomeTable(Book book) {
        this.book = book;
    }

    /** Sets it below the shopping list, if the vehicle was said. */
    void into(Flow flow) {
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
            flow.add(Paragraph.of(
                    "Cuts are numbered as in the layouts; the distance is from the factory edge or the board's end to the near side"
                            + " of the cut.",
                    Style.CAPTION,
                    1.3,
                    2));
        });
    }
}
