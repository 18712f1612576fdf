package org.kerfleaf.export.terminal;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.Filling;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.site.WindLoad;

/** The hole, the post, the heights above ground and the wind. */
final class SiteSection {
    private static final String BEYOND = "more than 12 ft (3.66 m), where the rule ends";

    private final SitePlan site;
    private final MeasureStyle style;
    private final Page page;
    private Grid grid = new Grid().words("").words("");

    private SiteSection(SitePlan site, MeasureStyle style, Page page) {
        this.site = site;
        this.style = style;
        this.page = page;
    }

    static void write(Plan plan, Page page) {
        SiteSection section = new SiteSection(plan.site().orElseThrow(), plan.style(), page);
        section.figures();
        section.access();
        section.site.wind().ifPresent(wind -> section.wind("Wind on the box", wind));
        section.site.windOnAll().ifPresent(wind -> section.wind("Wind on box, arms and post", wind));
        page.blank();
        page.paragraph(SitePlan.DEFERS);
        section.reasons();
    }

    private void figures() {
        bulk("hole", site.hole());
        bulk("loose spoil from it", site.spoil());
        bulk("gravel at its foot", site.gravel());
        site.filling().ifPresent(this::filling);
        row("post in the ground", site.inGround());
        row("cut the post to, before it stands", site.cutPostTo());
        row("height line above ground", site.heightLine());
        row("underside above ground", site.boxBottom());
        row("latch above ground", site.latch());
        flush();
    }

    /** What the place asks: who reaches how high, how much ground is clear, how far it stands over a path. */
    private void access() {
        Access asked = site.access();
        page.blank();
        page.line("Asked of the place");
        for (Access.Band band : asked.bands()) {
            row(
                    band.who().words() + " reaches",
                    band.low().value().in(style) + " to " + band.high().value().in(style));
        }
        row(
                "clear ground before it",
                "%s x %s, no steeper than 1 in %d"
                        .formatted(
                                asked.groundWide().value().in(style),
                                asked.groundDeep().value().in(style),
                                Access.FLATTEST));
        row(
                "over a path, on a post",
                "%s at most between %s and %s above the ground"
                        .formatted(
                                asked.proud().value().in(style),
                                asked.cane().value().in(style),
                                asked.overHead().value().in(style)));
        flush();
    }

    private void filling(Filling filling) {
        bulk(filling.with() + " round the post", filling.volume());
        filling.bags().ifPresent(bags -> row("bags of " + filling.with(), bags.value() + ""));
        filling.lifts().ifPresent(lifts -> row("tamped in lifts, at least", lifts.value() + ""));
        bulk("to put somewhere, loose", filling.toPutSomewhere());
    }

    private void wind(String head, WindLoad wind) {
        page.blank();
        page.line(head + ", seen from " + wind.from());
        row("pressure", wind.pressure());
        row("area", wind.seen());
        row("its middle above ground", wind.centre());
        row("push", wind.push());
        row("turning at the ground", wind.moment());
        if (wind.needs().isEmpty()) {
            row("post in the ground, needed", "not known: say site().ground(SAND)");
        }
        wind.needs().ifPresent(needs -> {
            row("post in the ground, needed", depth(needs.plain()));
            row("with the soil's bearing doubled", depth(needs.doubled()));
        });
        flush();
    }

    private String depth(Optional<Figure<Length>> depth) {
        return depth.map(known -> known.value().in(style)).orElse(BEYOND);
    }

    private void row(String name, Figure<? extends Quantity> figure) {
        row(name, figure.value().in(style));
    }

    private void row(String name, Optional<? extends Figure<? extends Quantity>> figure) {
        figure.ifPresent(known -> row(name, known));
    }

    /** Ground and concrete are told in bulk: cubic feet or litres. */
    private void bulk(String name, Figure<Volume> figure) {
        row(name, figure.value().bulk(style));
    }

    private void row(String name, String words) {
        grid.row(Cell.of(name), Cell.of(words));
    }

    private void flush() {
        page.gridWithoutHead(grid);
        grid = new Grid().words("").words("");
    }

    private void reasons() {
        page.beforeReasons();
        page.why("hole", site.hole());
        page.why("spoil", site.spoil());
        page.why("gravel", site.gravel());
        page.why("post in the ground", site.inGround());
        page.why("cut the post to", site.cutPostTo());
        page.why("height line", site.heightLine());
        page.why("underside", site.boxBottom());
        page.why("latch", site.latch());
        site.filling().ifPresent(filling -> {
            page.why(filling.with(), filling.volume());
            page.why("bags", filling.bags());
            page.why("lifts", filling.lifts());
            page.why("to put somewhere", filling.toPutSomewhere());
        });
        site.access().bands().forEach(band -> {
            page.why(band.who().words() + ", low", band.low());
            page.why(band.who().words() + ", high", band.high());
        });
        page.why("clear ground, shorter way", site.access().groundWide());
        page.why("clear ground, longer way", site.access().groundDeep());
        page.why("over a path", site.access().proud());
        page.why("found by a cane", site.access().cane());
        page.why("over people’s heads", site.access().overHead());
        site.wind().ifPresent(wind -> why("wind on the box", wind));
        site.windOnAll().ifPresent(wind -> why("wind on all", wind));
    }

    private void why(String of, WindLoad wind) {
        page.why(of + ", pressure", wind.pressure());
        page.why(of + ", area", wind.seen());
        page.why(of + ", middle", wind.centre());
        page.why(of + ", push", wind.push());
        page.why(of + ", turning", wind.moment());
        wind.needs().ifPresent(needs -> {
            page.why(of + ", across", needs.across());
            page.why(of + ", bearing of the soil", needs.bearing());
            page.why(of + ", depth", needs.plain());
            page.why(of + ", depth with bearing doubled", needs.doubled());
        });
    }
}
