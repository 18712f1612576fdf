package org.kerfleaf.export.terminal;

import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Paintwork;
import org.kerfleaf.plan.Plan;

/** What is painted face by face, by when, and what stays bare for glue. */
final class PaintSection {
    private final Paintwork work;
    private final MeasureStyle style;

    private PaintSection(Plan plan) {
        this.work = plan.paintwork();
        this.style = plan.style();
    }

    static Section of(Plan plan) {
        PaintSection told = new PaintSection(plan);
        return new Section("Paint, face by face", "", !told.work.faces().isEmpty(), told::paint);
    }

    private void paint(Page page) {
        Grid grid = new Grid()
                .number("Step")
                .words("Part")
                .words("Face")
                .number("Pieces")
                .number("Area")
                .number("Coats")
                .words("With");
        for (Paintwork.CoatedFace face : work.faces()) {
            grid.row(
                    Cell.of(face.step()),
                    Cell.of(face.part()),
                    Cell.of(face.face()),
                    Cell.of(face.pieces()),
                    Cell.of(face.area().value().in(style)),
                    Cell.of(face.coats()),
                    Cell.of(String.join(", ", face.with())));
        }
        page.grid(grid);
        if (!work.order().isEmpty()) {
            page.blank();
        }
        work.order()
                .forEach(by -> page.hanging(
                        "Paint by when: ", "%s, %s: %s; %s".formatted(by.part(), by.face(), by.when(), by.done())));
        if (!work.bare().isEmpty()) {
            page.blank();
        }
        work.bare()
                .forEach(bare -> page.hanging(
                        "Keep bare: ", "%s, %s: %s".formatted(bare.part(), bare.face(), bare.until(style))));
        page.beforeReasons();
        work.faces().forEach(face -> page.why(face.part() + ", " + face.face(), face.area()));
    }
}
