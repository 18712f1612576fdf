package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardLayout.BoardPlacement;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.sketch.Problem;

/** What is wrong, then parts and layouts; saw settings are {@link SawSection}. */
final class CutSections {
    private final Plan plan;
    private final MeasureStyle style;

    private CutSections(Plan plan) {
        this.plan = plan;
        this.style = plan.style();
    }

    static List<Section> of(Plan plan) {
        CutSections told = new CutSections(plan);
        return List.of(
                new Section(
                        "Cut list",
                        told.pieces() + ", " + told.inUnit(),
                        !plan.parts().isEmpty(),
                        told::parts),
                new Section("Sheets", told.inUnit(), !plan.sheets().isEmpty(), told::sheets),
                new Section("Boards", told.inUnit(), !plan.boards().isEmpty(), told::boards),
                SawSection.of(plan));
    }

    static Section problems(Plan plan) {
        return new Section("Does not make sense yet", "", !plan.problems().isEmpty(), new CutSections(plan)::problems);
    }

    private void problems(Page page) {
        for (Problem problem : plan.problems()) {
            int line = problem.origin().line();
            page.hanging(line > 0 ? "line %d  ".formatted(line) : "", problem.words());
        }
    }

    private String inUnit() {
        return style.unit() == LengthUnit.INCHES ? "in inches" : "in millimetres";
    }

    private String pieces() {
        int pieces = plan.parts().stream().mapToInt(PlannedPart::count).sum();
        String one = Words.counted(plan.parts().size(), "part") + ", " + Words.counted(pieces, "piece");
        return plan.kits() > 1 ? one + " a kit, " + pieces * plan.kits() + " in " + plan.kits() + " kits" : one;
    }

    private void parts(Page page) {
        Grid grid = new Grid()
                .words("")
                .words("Part")
                .number("Cut")
                .tape("Along grain")
                .tape("Across")
                .tape("Thick")
                .words("From");
        for (PlannedPart part : plan.parts()) {
            grid.row(
                    Cell.of(part.letter()),
                    Cell.of(part.pair() ? part.name() + " (pair)" : part.name()),
                    Cell.of(part.count()),
                    Cell.of(part.length().value(), style),
                    Cell.of(part.width().value(), style),
                    Cell.of(part.thickness().value(), style),
                    Cell.of(part.material()));
        }
        page.grid(grid);
        if (plan.parts().stream().anyMatch(part -> !then(part).isEmpty())) {
            page.blank();
        }
        for (PlannedPart part : plan.parts()) {
            if (!then(part).isEmpty()) {
                page.hanging(part.letter() + "  ", then(part));
            }
        }
        page.beforeReasons();
        plan.parts().forEach(part -> whyPart(page, part));
    }

    private static void whyPart(Page page, PlannedPart part) {
        page.why(part.letter() + " along grain", part.length());
        page.why(part.letter() + " across", part.width());
        page.why(part.letter() + " thick", part.thickness());
        for (PlannedEdge edge : part.edges()) {
            page.why(part.letter() + " " + edge.name() + ", angle", edge.angle());
            page.why(part.letter() + " " + edge.name() + ", short side", edge.shorter());
        }
        page.why(part.letter() + " weight", part.weight());
    }

    private String then(PlannedPart part) {
        List<String> words = new ArrayList<>();
        part.takenFromTheWork().ifPresent(words::add);
        for (PlannedEdge edge : part.edges()) {
            String shorter = edge.shorter().value().isZero()
                    ? ""
                    : ", short side %s less".formatted(edge.shorter().value().in(style));
            words.add("%s: %s %s%s".formatted(edge.name(), edge.cut().words(), edge.angles(style), shorter));
        }
        words.addAll(part.then());
        return String.join("; ", words);
    }

    private void sheets(Page page) {
        for (int at = 0; at < plan.sheets().size(); at++) {
            SheetLayout layout = plan.sheets().get(at);
            page.paragraph("Sheet %d: %s, %s × %s; trim %s off each edge, kerf %s"
                    .formatted(
                            at + 1,
                            layout.sheet().stock(),
                            layout.sheet().length().read(style).text(),
                            layout.sheet().width().read(style).text(),
                            layout.sheet().trim().read(style).text(),
                            layout.sheet().kerf().read(style).text()));
            page.blank();
            page.grid(placements(layout));
            if (!layout.cuts().isEmpty()) {
                page.blank();
                page.grid(cuts(layout));
            }
            keep(page, layout);
            page.blank();
        }
        bounds(
                page,
                plan.sheets().stream().map(layout -> layout.sheet().stock()).toList());
    }

    private Grid placements(SheetLayout layout) {
        Grid grid = new Grid()
                .words("")
                .words("Part")
                .tape("From left")
                .tape("From below")
                .tape("Long")
                .tape("High")
                .words("Grain");
        for (SheetPlacement placed : layout.placements()) {
            grid.row(
                    Cell.of(letter(placed.part())),
                    Cell.of(placed.part()),
                    Cell.of(placed.x(), style),
                    Cell.of(placed.y(), style),
                    Cell.of(placed.length(), style),
                    Cell.of(placed.width(), style),
                    Cell.of(placed.turned() ? "across" : "along"));
        }
        return grid;
    }

    private Grid cuts(SheetLayout layout) {
        Grid grid = new Grid().number("Cut").tape("Set to").words("Way").words("Sets free");
        for (SheetCut cut : layout.cuts()) {
            grid.row(
                    Cell.of(cut.number()),
                    Cell.of(cut.set(), style),
                    Cell.of(cut.across() ? "across" : "along"),
                    Cell.of(cut.frees()));
        }
        return grid;
    }

    private void keep(Page page, SheetLayout layout) {
        String kept = layout.offcuts().stream()
                .filter(Offcut::keep)
                .map(offcut -> offcut.length().read(style).text() + " × "
                        + offcut.width().read(style).text())
                .collect(Collectors.joining("; "));
        if (!kept.isEmpty()) {
            page.blank();
            page.hanging("Keep: ", kept);
        }
    }

    private void boards(Page page) {
        Grid grid = new Grid()
                .number("Board")
                .words("From")
                .words("")
                .words("Part")
                .tape("Starts at")
                .tape("Long");
        for (int at = 0; at < plan.boards().size(); at++) {
            BoardLayout layout = plan.boards().get(at);
            String stock = "%s, %s"
                    .formatted(
                            layout.board().stock(),
                            layout.board().length().read(style).text());
            for (BoardPlacement piece : layout.placements()) {
                grid.row(
                        Cell.of(at + 1L),
                        Cell.of(stock),
                        Cell.of(letter(piece.part())),
                        Cell.of(piece.part()),
                        Cell.of(piece.at(), style),
                        Cell.of(piece.length(), style));
            }
            grid.row(
                    Cell.of(at + 1L),
                    Cell.of(stock),
                    Cell.EMPTY,
                    Cell.of("left over"),
                    Cell.EMPTY,
                    Cell.of(layout.offcut(), style));
        }
        page.grid(grid);
        page.blank();
        bounds(
                page,
                plan.boards().stream().map(layout -> layout.board().stock()).toList());
    }

    private void bounds(Page page, List<String> stocks) {
        plan.bounds().stream()
                .filter(bound -> stocks.contains(bound.stock()))
                .forEach(bound -> page.hanging(bound.stock() + ": ", bound.because()));
    }

    private String letter(String part) {
        return plan.part(part).map(PlannedPart::letter).orElse("");
    }
}
