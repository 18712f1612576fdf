package org.kerfleaf.export.booklet;

import java.util.List;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Moving;

/** How boards move across their grain between the driest and the dampest season, and what gap that leaves. */
final class MovementPage {
    private final Book book;

    MovementPage(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        List<Moving> all = book.plan().movement();
        if (all.isEmpty()) {
            return;
        }
        MeasureStyle style = book.measures();
        flow.page("Movement across the grain", "Movement", "");
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
                            moving.driest().value().in(style), moving.atDriest().value(), style)),
                    Cell.text(season(
                            moving.dampest().value().in(style),
                            moving.atDampest().value(),
                            style)),
                    Cell.text(moving.gapWords(style).orElse("none")));
        }
        table.into(flow);
        for (Moving moving : all) {
            flow.add(Paragraph.of(
                    "%s: %s, %s; coefficient %s (%s)."
                            .formatted(
                                    moving.part(),
                                    moving.wood().wood(),
                                    moving.wood().rings().words(),
                                    moving.wood().coefficient().value().in(style),
                                    moving.wood().coefficient().reason().source()),
                    Style.LABEL,
                    1.4,
                    1));
        }
        flow.add(Paragraph.of(Moving.NOTE, Style.LABEL, 1.4, 2));
    }

    private static String season(String moisture, Length change, MeasureStyle style) {
        return "%s: %s".formatted(moisture, Moving.change(change, style));
    }
}
