package org.kerfleaf.export.terminal;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.LoadWords;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Told;
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
        List<Told> held = new LoadWords(plan.style()).held(loads);
        held.forEach(group -> SiteSection.tell(group, page));
        page.blank();
        page.paragraph(SitePlan.DEFERS);
        page.beforeReasons();
        loads.carried().forEach(section::why);
        held.forEach(group -> SiteSection.why(group, page));
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
}
