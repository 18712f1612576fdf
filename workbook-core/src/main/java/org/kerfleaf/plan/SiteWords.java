package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.Filling;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.site.WindLoad;

/** The hole, the post, the heights above ground, what the place asks, and the wind, in words. */
public final class SiteWords {
    private static final String BEYOND = "more than 12 ft (3.66 m), where the rule ends";

    private final MeasureStyle style;

    public SiteWords(MeasureStyle style) {
        this.style = style;
    }

    /** Every group; the first has no title. */
    public List<Told> of(SitePlan site) {
        List<Told> told = new ArrayList<>();
        told.add(hole(site));
        told.add(access(site.access()));
        site.wind().ifPresent(wind -> told.add(wind("Wind on the box, seen from " + wind.from(), wind)));
        site.windOnAll()
                .ifPresent(wind -> told.add(wind("Wind on box, arms and post, seen from " + wind.from(), wind)));
        return told;
    }

    private Told hole(SitePlan site) {
        Told.Filling group = new Told.Filling("", style);
        bulk(group, "hole", site.hole());
        bulk(group, "loose spoil from it", site.spoil());
        bulk(group, "gravel at its foot", site.gravel());
        site.filling().ifPresent(filling -> filling(group, filling));
        return group.line("post in the ground", site.inGround())
                .maybe("cut the post to, before it stands", site.cutPostTo())
                .maybe("height line above ground", site.heightLine())
                .maybe("underside above ground", site.boxBottom())
                .maybe("latch above ground", site.latch())
                .done();
    }

    private void filling(Told.Filling group, Filling filling) {
        bulk(group, filling.with() + " round the post", filling.volume());
        filling.bags().ifPresent(bags -> group.line("bags of " + filling.with(), bags.value() + "", bags));
        filling.lifts().ifPresent(lifts -> group.line("tamped in lifts, at least", lifts.value() + "", lifts));
        bulk(group, "to put somewhere, loose", filling.toPutSomewhere());
    }

    /** Ground and concrete are told in bulk: cubic feet or litres. */
    private void bulk(Told.Filling group, String what, Figure<Volume> volume) {
        group.line(what, volume.value().bulk(style), volume);
    }

    /** Who reaches how high, how much ground is clear, how far it may stand over a path. */
    private Told access(Access asked) {
        Told.Filling group = new Told.Filling("Asked of the place", style);
        for (Access.Band band : asked.bands()) {
            group.line("lowest that " + band.who().words() + " reaches", band.low());
            group.line("highest", band.high());
        }
        return group.line("clear ground before it, one way", asked.groundWide())
                .line("the other way, no steeper than 1 in " + Access.FLATTEST, asked.groundDeep())
                .line("over a path from a post, at most", asked.proud())
                .line("asked of what begins higher than", asked.cane())
                .line("and lower than", asked.overHead())
                .line("asked of posts further apart than", asked.postsApart())
                .done();
    }

    private Told wind(String title, WindLoad wind) {
        Told.Filling group = new Told.Filling(title, style);
        group.line("pressure", wind.pressure())
                .line("area", wind.seen())
                .line("its middle above ground", wind.centre())
                .line("push", wind.push())
                .line("turning at the ground", wind.moment());
        if (wind.needs().isEmpty()) {
            group.line("post in the ground, needed", "not known: say site().ground(SAND)");
        }
        wind.needs().ifPresent(needs -> {
            group.line("what the ground holds on to", needs.across());
            depth(group, "post in the ground, needed", needs.plain());
            group.maybe("the ground is pressed, a third down", needs.bearing());
            depth(group, "with the soil's bearing doubled", needs.doubled());
        });
        return group.done();
    }

    private void depth(Told.Filling group, String what, Optional<Figure<Length>> depth) {
        depth.ifPresentOrElse(known -> group.line(what, known), () -> group.line(what, BEYOND));
    }
}
