package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Moving;

/** How boards move across their grain between the driest and the dampest season, and what gap that leaves. */
final class MovementPage {
    private static final String TITLE = "Movement across the grain";

    private final Book book;
    private final List<Moving> all;

    MovementPage(Book book) {
        this.book = book;
        this.all = book.plan().movement();
    }

    /** Below what stands on the page if there is room, or else on a page of its own. */
    void into(Flow flow) {
        if (all.isEmpty()) {
            return;
        }
        List<Block> blocks =
                new ArrayList<>(List.of(Block.space(3), Marks.heading(TITLE), table().whole(flow.width())));
        blocks.addAll(notes());
        Block block = Block.stack(blocks);
        if (block.height(flow.width()) <= flow.left()) {
            flow.add(block);
            return;
        }
        flow.page(TITLE, "Movement", "");
        table().into(flow);
        notes().forEach(flow::add);
    }

    private Table table() {
        MeasureStyle style = book.measures();
        Table table = new Table(
                Column.share("Board", 1),
                Column.number("Wide"),
                Column.number("Moisture now"),
                Column.share("When driest", 1),
                Column.share("When dampest", 1),
                Column.share("Gap beside it", 1.2));
        for (Moving moving : all) {
            table.row(
                    Cell.bold(moving.part()),
                    Cell.right(moving.wide().value().in(style)),
                    Cell.right(moving.now().value().in(style)),
                    Cell.text(season(
                            moving.driest().value().in(style), moving.atDriest().value())),
                    Cell.text(season(
                            moving.dampest().value().in(style),
                            moving.atDampest().value())),
                    Cell.text(moving.gapWords(style).orElse("none")));
        }
        return table;
    }

    private String season(String moisture, Length change) {
        return "%s: %s".formatted(moisture, Moving.change(change, book.measures()));
    }

    private List<Block> notes() {
        List<Block> notes = new ArrayList<>(List.of(Block.space(2)));
        for (Moving moving : all) {
            String words = "%s: %s, %s; coefficient %s (%s)."
                    .formatted(
                            moving.part(),
                            moving.wood().wood(),
                            moving.wood().rings().words(),
                            moving.wood().coefficient().value().in(book.measures()),
                            moving.wood().coefficient().reason().source());
            notes.add(Paragraph.of(words, Style.LABEL, 1.4, 1));
        }
        notes.add(Paragraph.of(Moving.NOTE, Style.LABEL, 1.4, 2));
        return notes;
    }
}
