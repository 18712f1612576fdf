package org.kerfleaf.export.planform;

import java.util.Optional;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.Filling;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.site.WindLoad;

/** The members about the place it stands in: the hole, heights above ground, who reaches it, the wind. */
final class SiteSection {
    private SiteSection() {}

    static void write(Optional<SitePlan> site, Member form) {
        site.ifPresent(plan -> access(plan.access(), form));
        site.ifPresent(plan -> form.figure("hole", plan.hole(), Member::millilitres)
                .figure("gravel", plan.gravel(), Member::millilitres)
                .figure("inGround", plan.inGround(), Member::millimetres)
                .figure("boxBottom", plan.boxBottom(), Member::millimetres)
                .figure("latch", plan.latch(), Member::millimetres)
                .figure("spoil", plan.spoil(), Member::millilitres)
                .figure("heightLine", plan.heightLine(), Member::millimetres)
                .figure("cutPostTo", plan.cutPostTo(), Member::millimetres)
                .words("note", SitePlan.DEFERS)
                .optional("filling", plan.filling(), SiteSection::filling)
                .optional("wind", plan.wind(), SiteSection::wind)
                .optional("windOnAll", plan.windOnAll(), SiteSection::wind));
    }

    private static void access(Access asked, Member site) {
        site.inside("access")
                .list(
                        "bands",
                        asked.bands(),
                        (form, band) -> form.words("who", band.who().words())
                                .figure("low", band.low(), Member::millimetres)
                                .figure("high", band.high(), Member::millimetres))
                .figure("groundWide", asked.groundWide(), Member::millimetres)
                .figure("groundDeep", asked.groundDeep(), Member::millimetres)
                .figure("proud", asked.proud(), Member::millimetres)
                .figure("cane", asked.cane(), Member::millimetres)
                .figure("overHead", asked.overHead(), Member::millimetres)
                .figure("postsApart", asked.postsApart(), Member::millimetres);
    }

    private static void filling(Member form, Filling filling) {
        form.words("with", filling.with())
                .figure("volume", filling.volume(), Member::millilitres)
                .figure("bags", filling.bags(), Member::count)
                .figure("lifts", filling.lifts(), Member::count)
                .figure("toPutSomewhere", filling.toPutSomewhere(), Member::millilitres);
    }

    private static void wind(Member form, WindLoad load) {
        form.words("from", load.from())
                .figure("pressure", load.pressure(), pressure -> Member.decimal(pressure.pascals()))
                .figure("seen", load.seen(), Member::squareMillimetres)
                .figure("centre", load.centre(), Member::millimetres)
                .figure("push", load.push(), Member::newtons)
                .figure("moment", load.moment(), moment -> Member.decimal(moment.newtonMetres()))
                .figure("across", load.needs().map(WindLoad.Needs::across), Member::millimetres)
                .figure(
                        "bearing",
                        load.needs().flatMap(WindLoad.Needs::bearing),
                        bearing -> Member.decimal(bearing.pascals()))
                .figure("depth", load.needs().flatMap(WindLoad.Needs::plain), Member::millimetres)
                .figure("depthBearingDoubled", load.needs().flatMap(WindLoad.Needs::doubled), Member::millimetres);
    }
}
