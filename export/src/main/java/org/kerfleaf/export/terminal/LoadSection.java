package org.kerfleaf.export.terminal;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Filled;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.site.SitePlan;

/** What parts carry and how far they sag, what people lift and where it balances. */
final class LoadSection {
    private static final String NOT_KNOWN = "not known";

    private final MeasureStyle style;
    private final Page page;

    private LoadSection(MeasureStyle style, Page page) {
        this.style = style;
        this.page = page;
    }

    static void write(Plan plan, Page page) {
        LoadSection section = new LoadSection(plan.style(), page);
        Loads loads = plan.loads();
        if (!loads.carried().isEmpty()) {
            section.carried(loads);
        }
        loads.lifted().forEach(section::lifted);
        loads.filled().forEach(section::filled);
        page.blank();
        page.paragraph(SitePlan.DEFERS);
        page.beforeReasons();
        loads.carried().forEach(section::why);
        loads.lifted().forEach(section::why);
        loads.filled().forEach(section::why);
    }

    private void carried(Loads loads) {
        Grid grid = new Grid()
                .words("Part")
                .number("Carries")
                .number("Spans")
                .number("Sags")
                .number("In time");
        for (Carried carried : loads.carried()) {
            Optional<Bending> bending = carried.bending();
            grid.row(
                    Cell.of(carried.part()),
                    Cell.of(carried.load().value().in(style)),
                    Cell.of(bending.map(b -> b.span().value().in(style)).orElse(NOT_KNOWN)),
                    Cell.of(bending.map(b -> sag(b.sag())).orElse(NOT_KNOWN)),
                    Cell.of(bending.map(b -> sag(b.sagInTime())).orElse(NOT_KNOWN)));
        }
        page.grid(grid);
    }

    private String sag(Figure<Length> sag) {
        return SagChecks.thousandths(sag.value(), style);
    }

    private void filled(Filled filled) {
        page.paragraph("%s holds %s of %s%s."
                .formatted(
                        filled.part(),
                        filled.volume().value().bulk(style),
                        filled.what(),
                        filled.together()
                                .map(all -> " and weighs %s with it"
                                        .formatted(all.value().in(style)))
                                .orElse("; what that weighs is not known")));
    }

    private void why(Filled filled) {
        page.why(filled.what() + ", volume", filled.volume());
        page.why(filled.what() + ", weight", filled.weight());
        page.why(filled.part() + ", filled", filled.together());
    }

    private void lifted(Lifted lifted) {
        page.blank();
        page.line("Lifted with " + lifted.part());
        Grid grid = new Grid().words("").words("");
        row(grid, "weight", lifted.weight().map(w -> w.value().in(style)));
        row(grid, "balances from its left", lifted.fromLeft().map(l -> l.value().in(style)));
        row(
                grid,
                "balances from its front",
                lifted.fromFront().map(l -> l.value().in(style)));
        row(grid, "balances above its underside", lifted.up().map(l -> l.value().in(style)));
        row(grid, "lifted by", Optional.of(lifted.people() == 1 ? "1 person" : lifted.people() + " people"));
        row(grid, "the one with most holds", lifted.share().map(w -> w.value().in(style)));
        row(grid, "they may lift", lifted.limit().map(w -> w.value().in(style)));
        lifted.tipping()
                .ifPresent(m ->
                        row(grid, "tips about the post", Optional.of(m.value().in(style))));
        row(
                grid,
                "fixings before anybody lets go",
                Optional.of(lifted.holding().eachSide() + " on each side of where it balances"));
        page.gridWithoutHead(grid);
    }

    private static void row(Grid grid, String name, Optional<String> words) {
        grid.row(Cell.of(name), Cell.of(words.orElse(NOT_KNOWN)));
    }

    private void why(Carried carried) {
        page.why(carried.part() + ", load", carried.load());
        carried.bending().ifPresent(bending -> {
            page.why(carried.part() + ", span", bending.span());
            page.why(carried.part() + ", on the span", bending.onSpan());
            page.why(carried.part() + ", stiffness", bending.stiffness());
            page.why(carried.part() + ", sag", bending.sag());
            page.why(carried.part() + ", sag in time", bending.sagInTime());
        });
    }

    private void why(Lifted lifted) {
        page.why(lifted.part() + ", weight", lifted.weight());
        page.why(lifted.part() + ", balance from left", lifted.fromLeft());
        page.why(lifted.part() + ", share", lifted.share());
        page.why(lifted.part() + ", may be lifted", lifted.limit());
        page.why(lifted.part() + ", out of the post", lifted.outOfPost());
        page.why(lifted.part() + ", tipping", lifted.tipping());
    }
}
