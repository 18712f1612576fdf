package org.kerfleaf.export.planform;

import java.util.Optional;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Bracket;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Contained;
import org.kerfleaf.plan.Loads.Filled;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.plan.Loads.OnJoint;
import org.kerfleaf.plan.Loads.Snow;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.stock.CrossSection;

/** The members about what parts carry and people lift. */
final class LoadSections {
    private LoadSections() {}

    static void write(Loads loads, Member form) {
        form.list("contents", loads.contents(), LoadSections::contained)
                .list("carried", loads.carried(), LoadSections::carried)
                .optional("snow", loads.snow(), LoadSections::snow)
                .list("lifted", loads.lifted(), LoadSections::lifted)
                .list("onJoints", loads.onJoints(), LoadSections::onJoint)
                .list("brackets", loads.brackets(), LoadSections::bracket)
                .list("filled", loads.filled(), LoadSections::filled)
                .words("note", SitePlan.DEFERS);
    }

    private static void contained(Member form, Contained things) {
        form.words("things", things.name())
                .words("on", things.on())
                .number("each", things.each())
                .number("sideBySide", things.sideBySide())
                .list(
                        "rooms",
                        things.rooms(),
                        (room, of) -> room.words("way", of.way())
                                .figure("need", of.need(), Member::millimetres)
                                .figure("there", of.there(), Member::millimetres));
    }

    private static void snow(Member form, Snow snow) {
        form.figure("pressure", snow.pressure(), pressure -> Member.decimal(pressure.pascals()))
                .list("carried", snow.carried(), LoadSections::carried);
    }

    private static void section(Member form, CrossSection section) {
        form.length("width", section.width())
                .length("thickness", section.thickness())
                .figure("area", section.area(), Member::squareMillimetres)
                .figure("modulus", section.modulus(), of -> Member.decimal(of.cubicMillimetres()))
                .figure("inertia", section.inertia(), of -> Member.decimal(of.millimetresToTheFourth()));
    }

    private static void carried(Member form, Carried carried) {
        form.words("part", carried.part())
                .figure("area", carried.area(), Member::squareMillimetres)
                .figure("load", carried.load(), Member::grams)
                .optional("bending", carried.bending(), LoadSections::bending);
    }

    private static void onJoint(Member form, OnJoint on) {
        form.words("joint", on.joint())
                .figure("load", on.load(), Member::grams)
                .number("fasteners", on.fasteners())
                .figure("each", on.each(), Member::newtons)
                .figure("holds", on.holds(), Member::newtons)
                .words("notHeld", on.notHeld());
    }

    private static void bracket(Member form, Bracket bracket) {
        form.words("on", bracket.on());
        form.node().set("load", Member.grams(bracket.load()));
        form.length("out", bracket.out())
                .lengthOrNull("height", bracket.height())
                .number("count", bracket.count())
                .figure("pull", bracket.pull(), Member::newtons)
                .figure("holds", bracket.holds(), Member::newtons);
    }

    private static void bending(Member form, Bending bending) {
        form.figure("span", bending.span(), Member::millimetres)
                .figure("onSpan", bending.onSpan(), Member::grams)
                .optional("section", Optional.of(bending.section()), LoadSections::section)
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
        form.number("step", lifted.step())
                .words("part", lifted.part())
                .figure("weight", lifted.weight(), Member::grams)
                .figure("fromLeft", lifted.fromLeft(), Member::millimetres)
                .figure("fromFront", lifted.fromFront(), Member::millimetres)
                .figure("up", lifted.up(), Member::millimetres)
                .number("people", lifted.people())
                .figure("share", lifted.share(), Member::grams)
                .figure("limit", lifted.limit(), Member::grams)
                .optional(
                        "reach",
                        lifted.reach(),
                        (reach, of) -> reach.figure("out", of.out(), Member::millimetres)
                                .figure("outShare", of.outShare(), Member::ratio)
                                .figure("heightShare", of.heightShare(), Member::ratio)
                                .figure("wayShare", of.wayShare(), Member::ratio))
                .figure("outOfPost", lifted.outOfPost(), Member::millimetres)
                .figure("tipping", lifted.tipping(), moment -> Member.decimal(moment.newtonMetres()))
                .number("holdingEachSide", lifted.holding().eachSide())
                .optional("balance", lifted.balance(), (balance, at) -> balance.point("point", at))
                .list(
                        "grips",
                        lifted.grips(),
                        (grip, of) -> grip.number("person", of.person()).point("point", of.at()));
    }
}
