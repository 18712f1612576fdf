package org.kerfleaf.export.terminal;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Bracket;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.plan.Loads.OnJoint;
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
        loads.onJoints().forEach(section::onJoint);
        loads.brackets().forEach(section::bracket);
        loads.lifted().forEach(section::lifted);
        page.blank();
        page.paragraph(SitePlan.DEFERS);
        page.beforeReasons();
        loads.carried().forEach(section::why);
        loads.onJoints().forEach(section::why);
        loads.brackets().forEach(section::why);
        loads.lifted().forEach(section::why);
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

    private void onJoint(OnJoint on) {
        page.blank();
        page.line("Hangs on " + on.joint());
        Grid grid = new Grid().words("").words("");
        row(grid, "load", Optional.of(on.load().value().in(style)));
        row(grid, "fasteners that share it", Optional.of(on.fasteners() + ""));
        row(grid, "sideways on each", Optional.of(on.each().value().in(style)));
        row(
                grid,
                "one holds sideways",
                Optional.of(on.holds().map(h -> h.value().in(style)).orElse(NOT_KNOWN + ": " + on.notHeld())));
        page.gridWithoutHead(grid);
    }

    private void bracket(Bracket bracket) {
        page.blank();
        page.line("Brackets under " + bracket.on());
        Grid grid = new Grid().words("").words("");
        row(grid, "load on all", Optional.of(bracket.load().in(style)));
        row(grid, "from the wall", Optional.of(bracket.out().in(style)));
        row(grid, "brackets", Optional.of(bracket.count() + ""));
        row(grid, "pull at each top screw", bracket.pull().map(p -> p.value().in(style)));
        row(
                grid,
                "at the top screws of all",
                bracket.pull().map(p -> p.value().times(bracket.count()).in(style)));
        row(grid, "that screw holds", bracket.holds().map(h -> h.value().in(style)));
        page.gridWithoutHead(grid);
    }

    private void why(OnJoint on) {
        page.why(on.joint() + ", load", on.load());
        page.why(on.joint() + ", on each", on.each());
        page.why(on.joint() + ", holds sideways", on.holds());
    }

    private void why(Bracket bracket) {
        page.why(bracket.on() + ", bracket pull", bracket.pull());
        page.why(bracket.on() + ", top screw holds", bracket.holds());
    }

    private String sag(Figure<Length> sag) {
        return SagChecks.thousandths(sag.value(), style);
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
        lifted.reach().ifPresent(reach -> {
            page.why(lifted.part() + ", hands out", reach.out());
            page.why(lifted.part() + ", left for that", reach.outShare());
            page.why(lifted.part() + ", left for the hands’ height", reach.heightShare());
            page.why(lifted.part() + ", left for the way up", reach.wayShare());
        });
        page.why(lifted.part() + ", out of the post", lifted.outOfPost());
        page.why(lifted.part() + ", tipping", lifted.tipping());
    }
}
