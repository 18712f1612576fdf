package org.kerfleaf.export.terminal;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.plan.Moving;
import org.kerfleaf.plan.Plan;

/** How boards move across their grain between the driest and the dampest season. */
final class MovementSection {
    private MovementSection() {}

    static Section of(Plan plan) {
        return new Section("Movement", "across the grain", !plan.movement().isEmpty(), page -> movement(plan, page));
    }

    private static String season(Percent moisture, Length change, MeasureStyle style) {
        return moisture.in(style) + ": " + Moving.change(change, style);
    }

    private static void movement(Plan plan, Page page) {
        MeasureStyle style = plan.style();
        Grid grid = new Grid()
                .words("Board")
                .number("Wide")
                .number("Now")
                .words("When driest")
                .words("When dampest")
                .words("Gap beside it");
        for (Moving moving : plan.movement()) {
            grid.row(
                    Cell.of(moving.part()),
                    Cell.of(moving.wide().value().in(style)),
                    Cell.of(moving.now().value().in(style)),
                    Cell.of(season(moving.driest().value(), moving.atDriest().value(), style)),
                    Cell.of(season(moving.dampest().value(), moving.atDampest().value(), style)),
                    Cell.of(moving.gapWords(style).orElse("-")));
        }
        page.grid(grid);
        page.blank();
        page.paragraph(Moving.NOTE);
        page.beforeReasons();
        for (Moving moving : plan.movement()) {
            page.why(moving.part() + ", moisture now", moving.now());
            page.why(moving.part() + ", driest", moving.driest());
            page.why(moving.part() + ", dampest", moving.dampest());
            page.why(moving.part() + ", coefficient", moving.wood().coefficient());
            page.why(moving.part() + ", shrinkage", moving.wood().shrinkage());
            page.why(moving.part() + ", wider when driest", moving.atDriest());
            page.why(moving.part() + ", wider when dampest", moving.atDampest());
            moving.gap().ifPresent(gap -> {
                page.why(moving.part() + ", gap when driest", gap.whenDriest());
                page.why(moving.part() + ", gap when dampest", gap.whenDampest());
            });
        }
    }
}
