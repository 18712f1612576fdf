package org.kerfleaf.export.terminal;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Contained;
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

    static boolean isWorthIt(Plan plan) {
        Loads loads = plan.loads();
        return !loads.contents().isEmpty()
                || !loads.carried().isEmpty()
                || loads.snow().isPresent()
                || !loads.lifted().isEmpty();
    }

    static void write(Plan plan, Page page) {
        LoadSection section = new LoadSection(plan.style(), page);
        Loads loads = plan.loads();
        if (!loads.contents().isEmpty()) {
            section.contents(loads);
        }
        if (!loads.carried().isEmpty()) {
            section.carried("Part", loads.carried());
        }
        loads.snow().ifPresent(snow -> section.carried("Under snow", snow.carried()));
        loads.lifted().forEach(section::lifted);
        page.paragraph(SitePlan.DEFERS);
        page.beforeReasons();
        loads.contents().forEach(section::why);
        loads.carried().forEach(section::why);
        loads.snow().ifPresent(snow -> {
            page.why("snow on a roof", snow.pressure());
            snow.carried().forEach(section::why);
        });
        loads.lifted().forEach(section::why);
    }

    private void contents(Loads loads) {
        Grid grid = new Grid()
                .words("Goes in")
                .words("On")
                .number("On each")
                .words("Way")
                .number("Needs clear")
                .number("There");
        for (Contained things : loads.contents()) {
            for (Loads.Room room : things.rooms()) {
                grid.row(
                        Cell.of(things.name()),
                        Cell.of(things.on()),
                        Cell.of(things.each()),
                        Cell.of(room.way()),
                        Cell.of(room.need().value().in(style)),
                        Cell.of(room.there()
                                .map(there -> there.value().in(style))
                                .orElse("open")));
            }
        }
        page.grid(grid);
        page.blank();
    }

    private void carried(String head, List<Carried> all) {
        Grid grid = new Grid()
                .words(head)
                .number("Carries")
                .number("Spans")
                .number("Sags")
                .number("In time");
        for (Carried carried : all) {
            Optional<Bending> bending = carried.bending();
            grid.row(
                    Cell.of(carried.part()),
                    Cell.of(carried.load().value().in(style)),
                    Cell.of(bending.map(b -> b.span().value().in(style)).orElse(NOT_KNOWN)),
                    Cell.of(bending.map(b -> sag(b.sag())).orElse(NOT_KNOWN)),
                    Cell.of(bending.map(b -> sag(b.sagInTime())).orElse(NOT_KNOWN)));
        }
        page.grid(grid);
        page.blank();
    }

    private String sag(Figure<Length> sag) {
        return SagChecks.thousandths(sag.value(), style);
    }

    private void lifted(Lifted lifted) {
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
        page.blank();
    }

    private static void row(Grid grid, String name, Optional<String> words) {
        grid.row(Cell.of(name), Cell.of(words.orElse(NOT_KNOWN)));
    }

    private void why(Contained things) {
        for (Loads.Room room : things.rooms()) {
            String name = "%s on %s, %s".formatted(things.name(), things.on(), room.way());
            page.why(name + ", needed", room.need());
            page.why(name + ", there", room.there());
        }
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
