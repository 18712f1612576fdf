package org.kerfleaf.export.planform;

import java.time.LocalDate;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;

/** The document's members in their order; what is cut is told here, the rest by {@link WorkSections}. */
final class Sections {
    static final int VERSION = 1;

    private Sections() {}

    static void write(Plan plan, Member top) {
        top.words("workbook", plan.title())
                .words("units", plan.style().unit().symbol())
                .list("sizes", plan.sizes(), SizeSections::size)
                .list("parts", plan.parts(), Sections::part)
                .list("sheets", plan.sheets(), (form, sheet) -> sheet(form, sheet, plan))
                .list("boards", plan.boards(), Sections::board)
                .list(
                        "bounds",
                        plan.bounds(),
                        (form, bound) -> form.words("stock", bound.stock())
                                .number("bought", bound.bought())
                                .number("fewest", bound.fewest())
                                .isTrue("proven", bound.proven())
                                .words("because", bound.because()));
        WorkSections.write(plan, top);
        top.words("day", plan.day().toString())
                .words("currency", plan.currency().getCode())
                .words("pricesOf", plan.pricesOf().map(LocalDate::toString));
        overall(plan, top);
        top.list("chains", plan.chains(), SizeSections::chain)
                .figure("weight", plan.weight(), Member::grams)
                .list(
                        "problems",
                        plan.problems(),
                        (form, problem) -> form.number("line", problem.origin().line())
                                .number("cell", problem.origin().cell())
                                .words("words", problem.words()))
                .number("form", VERSION);
    }

    private static void part(Member form, PlannedPart part) {
        form.words("letter", part.letter())
                .words("name", part.name())
                .number("count", part.count())
                .words("material", part.material())
                .figure("length", part.length(), Member::millimetres)
                .figure("width", part.width(), Member::millimetres)
                .figure("thickness", part.thickness(), Member::millimetres)
                .list(
                        "edges",
                        part.edges(),
                        (edge, of) -> edge.words("name", of.name())
                                .words("cut", of.cut().words())
                                .figure("angle", of.angle(), Member::degrees)
                                .figure("tilt", of.tilt(), Member::degrees)
                                .figure("shorter", of.shorter(), Member::millimetres))
                .words(
                        "kind",
                        switch (part.kind()) {
                            case PANEL -> "panel";
                            case BOARD -> "board";
                            case PANE -> "pane";
                        })
                .isTrue("pair", part.pair())
                .words("stock", part.stock())
                .isTrue("grainMatters", part.grainMatters())
                .figure("area", part.area(), Member::squareMillimetres)
                .texts("then", part.then())
                .words("takenFromTheWork", part.takenFromTheWork())
                .figure("weight", part.weight(), Member::grams);
    }

    private static void sheet(Member form, SheetLayout layout, Plan plan) {
        form.words("stock", layout.sheet().stock())
                .length("length", layout.sheet().length())
                .length("width", layout.sheet().width())
                .money(
                        "price",
                        plan.cost().lines().stream()
                                .filter(line ->
                                        line.what().equals(layout.sheet().stock()))
                                .findFirst()
                                .flatMap(line -> line.each()))
                .length("trim", layout.sheet().trim())
                .length("kerf", layout.sheet().kerf())
                .list(
                        "placements",
                        layout.placements(),
                        (placed, on) -> placed.words("part", on.part())
                                .length("x", on.x())
                                .length("y", on.y())
                                .length("length", on.length())
                                .length("width", on.width())
                                .isTrue("turned", on.turned()))
                .list(
                        "cuts",
                        layout.cuts(),
                        (cut, made) -> cut.number("number", made.number())
                                .isTrue("across", made.across())
                                .length("at", made.at())
                                .length("from", made.from())
                                .length("to", made.to())
                                .length("set", made.set())
                                .words("frees", made.frees()))
                .list(
                        "offcuts",
                        layout.offcuts(),
                        (left, of) -> left.length("x", of.x())
                                .length("y", of.y())
                                .length("length", of.length())
                                .length("width", of.width())
                                .isTrue("keep", of.keep()));
    }

    private static void board(Member form, BoardLayout layout) {
        form.words("stock", layout.board().stock())
                .length("length", layout.board().length())
                .money("price", layout.board().price())
                .length("trim", layout.board().trim())
                .length("kerf", layout.board().kerf())
                .list(
                        "placements",
                        layout.placements(),
                        (placed, on) -> placed.words("part", on.part())
                                .length("at", on.at())
                                .length("length", on.length()))
                .length("offcut", layout.offcut());
    }

    private static void overall(Plan plan, Member top) {
        if (plan.overall().isEmpty()) {
            top.nothing("overall");
            return;
        }
        Plan.Overall overall = plan.overall().get();
        top.inside("overall")
                .figure("wide", overall.wide(), Member::millimetres)
                .figure("deep", overall.deep(), Member::millimetres)
                .figure("high", overall.high(), Member::millimetres);
    }
}
