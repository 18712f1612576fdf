package org.kerfleaf.export.planform;

import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Filled;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.site.SitePlan;

/** The members about what parts carry and people lift. */
final class LoadSections {
    private LoadSections() {}

    static void write(Loads loads, Member form) {
        form.list("carried", loads.carried(), LoadSections::carried)
                .list("lifted", loads.lifted(), LoadSections::lifted)
                .list("filled", loads.filled(), LoadSections::filled)
                .words("note", SitePlan.DEFERS);
    }

    private static void carried(Member form, Carried carried) {
        form.words("part", carried.part())
                .figure("area", carried.area(), Member::squareMillimetres)
                .figure("load", carried.load(), Member::grams)
                .optional("bending", carried.bending(), LoadSections::bending);
    }

    private static void bending(Member form, Bending bending) {
        form.figure("span", bending.span(), Member::millimetres)
                .figure("onSpan", bending.onSpan(), Member::grams)
                .figure("stiffness", bending.stiffness(), stiff -> Member.decimal(stiff.pascals()))
                .figure("sag", bending.sag(), Member::millimetres)
                .figure("sagInTime", bending.sagInTime(), Member::millimetres)
                .list(
                        "limits",
                        bending.limits(),
                        (limit, of) -> limit.words("limit", of.limit().words())
                                .length("allowed", of.allowed())
                                .figure("longest", of.longest(), Member::millimetres));
    }

    private static void filled(Member form, Filled filled) {
        form.words("part", filled.part())
                .words("what", filled.what())
                .figure("volume", filled.volume(), Member::millilitres)
                .figure("weight", filled.weight(), Member::grams)
                .figure("together", filled.together(), Member::grams);
    }

    private static void lifted(Member form, Lifted lifted) {
        form.words("part", lifted.part())
                .figure("weight", lifted.weight(), Member::grams)
                .figure("fromLeft", lifted.fromLeft(), Member::millimetres)
                .figure("fromFront", lifted.fromFront(), Member::millimetres)
                .figure("up", lifted.up(), Member::millimetres)
                .number("people", lifted.people())
                .figure("share", lifted.share(), Member::grams)
                .figure("limit", lifted.limit(), Member::grams)
                .figure("outOfPost", lifted.outOfPost(), Member::millimetres)
                .figure("tipping", lifted.tipping(), moment -> Member.decimal(moment.newtonMetres()))
                .number("holdingEachSide", lifted.holding().eachSide());
    }
}
