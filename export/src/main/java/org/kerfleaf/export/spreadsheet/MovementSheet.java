package org.kerfleaf.export.spreadsheet;

import java.util.List;
import org.kerfleaf.plan.Moving;

/** How boards move across their grain. */
final class MovementSheet {
    private static final String FINE = "0.0000";
    private static final String PERCENT = "0.0";

    private MovementSheet() {}

    static void write(Book book) {
        if (book.plan().movement().isEmpty()) {
            return;
        }
        Printed printed = book.printed();
        Table table = book.sheet(
                "Movement",
                1,
                List.of(
                        Column.text("part", "Board", 24),
                        Column.text("wood", "Wood", 24),
                        Column.number("wide", printed.lengthHead("Wide"), 10),
                        Column.number("now", "Now %", 9),
                        Column.number("driest", "Driest %", 9),
                        Column.number("atDriest", printed.lengthHead("Wider then"), 12),
                        Column.number("dampest", "Dampest %", 10),
                        Column.number("atDampest", printed.lengthHead("Wider then"), 12),
                        Column.number("gap", printed.lengthHead("Gap"), 10),
                        Column.number("gapDriest", printed.lengthHead("Gap driest"), 12),
                        Column.number("gapDampest", printed.lengthHead("Gap dampest"), 12)));
        for (Moving moving : book.plan().movement()) {
            Line line = table.row()
                    .text("part", moving.part())
                    .text(
                            "wood",
                            moving.wood().wood() + ", " + moving.wood().rings().words())
                    .number("wide", printed.fine(moving.wide().value()), FINE)
                    .number("now", moving.now().value().number(), PERCENT)
                    .number("driest", moving.driest().value().number(), PERCENT)
                    .number("atDriest", printed.fine(moving.atDriest().value()), FINE)
                    .number("dampest", moving.dampest().value().number(), PERCENT)
                    .number("atDampest", printed.fine(moving.atDampest().value()), FINE);
            moving.gap()
                    .ifPresent(gap -> line.number("gap", printed.fine(gap.now().value()), FINE)
                            .number("gapDriest", printed.fine(gap.whenDriest().value()), FINE)
                            .number("gapDampest", printed.fine(gap.whenDampest().value()), FINE));
        }
        table.leaf().remark(Moving.NOTE);
    }
}
