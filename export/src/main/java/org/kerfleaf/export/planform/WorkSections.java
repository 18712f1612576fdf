package org.kerfleaf.export.planform;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.LikeForLike;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.joint.ScrewChoice;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Fastened;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.plan.Rain;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.site.SitePlan;

/** The members about the work: settings, hardware, fasteners in their places, finish, cost, checks, steps, site, rain, cautions. */
final class WorkSections {
    private WorkSections() {}

    static void write(Plan plan, Member top) {
        top.list("sawSettings", plan.sawSettings(), WorkSections::setting)
                .list(
                        "hardware",
                        plan.hardware(),
                        (form, line) -> form.words("what", line.what())
                                .figure("need", line.need(), Member::count)
                                .number("packOf", line.packOf())
                                .figure("packs", line.packs(), Member::count)
                                .texts("uses", line.uses()))
                .list("fastened", plan.fastened(), WorkSections::fastened)
                .list("chosen", plan.fastening().choices(), (form, choice) -> chosen(form, choice, plan.style()))
                .list("glued", plan.fastening().glued(), WorkSections::glued)
                .list("movement", plan.movement(), MovementSection::write)
                .list("hung", plan.doors().hung(), DoorSection::hung)
                .list("panes", plan.doors().panes(), DoorSection::pane)
                .list("finish", plan.finish(), WorkSections::finish);
        PaintSection.write(plan.paintwork(), top.inside("paintwork"));
        cost(plan.cost(), top.inside("cost"));
        top.list(
                        "checks",
                        plan.checks(),
                        (form, check) -> form.words("name", check.name())
                                .words("result", check.result())
                                .words("margin", check.margin())
                                .words("verdict", check.verdict().word())
                                .words("advice", check.advice())
                                .words("source", check.source())
                                .number("level", check.level()))
                .list("steps", plan.steps(), WorkSections::step);
        schedule(plan.schedule(), top.inside("schedule"));
        BuyingSection.write(plan.buying(), top.inside("buying"));
        SiteSection.write(plan.site(), top.inside("site"));
        LoadSections.write(plan.loads(), top.inside("loads"));
        rain(plan, top);
        top.list(
                "cautions",
                plan.cautions(),
                (form, caution) -> form.words("topic", caution.topic().title())
                        .words("words", caution.words())
                        .numbers("steps", caution.steps())
                        .words("source", caution.source()));
    }

    private static void setting(Member form, SawSetting setting) {
        form.words("saw", setting.saw())
                .texts("parts", setting.parts())
                .words("cut", setting.cut())
                .words("faceUp", setting.faceUp())
                .figure("tilt", setting.tilt(), Member::degrees)
                .figure("scale", setting.scale(), Member::degrees)
                .figure("bladeDepth", setting.bladeDepth(), Member::millimetres)
                .list("straightedge", setting.straightedge(), WorkSections::straightedge)
                .list(
                        "set",
                        setting.set(),
                        (one, of) -> one.words("what", of.what()).figure("value", of.value(), one::measured))
                .list(
                        "guides",
                        setting.guides(),
                        (guide, of) -> guide.length("set", of.set())
                                .list(
                                        "cuts",
                                        of.cuts(),
                                        (cut, one) ->
                                                cut.number("sheet", one.sheet()).number("cut", one.cut()))
                                .list("straightedge", of.straightedge(), WorkSections::straightedge))
                .words("notes", setting.notes());
    }

    private static void straightedge(Member form, SawSetting.Straightedge edge) {
        form.words("where", edge.where()).figure("distance", edge.distance(), Member::millimetres);
    }

    private static void fastened(Member form, Fastened contact) {
        form.number("step", contact.step())
                .words("joint", contact.joint())
                .words("fastener", contact.fastener())
                .number("count", contact.count());
        setting(form.inside("setting"), contact.setting());
        form.inside("nearest")
                .lengthOrNull("end", contact.clearances().end())
                .lengthOrNull("edge", contact.clearances().edge())
                .lengthOrNull("row", contact.clearances().row());
        bound(form.inside("through"), contact.through());
        form.list("into", contact.into(), WorkSections::bound)
                .length("moved", contact.moved())
                .list(
                        "driven",
                        contact.driven(),
                        (one, of) -> one.point("head", of.head()).point("tip", of.tip()));
    }

    private static void glued(Member form, GluedJoint joint) {
        form.number("step", joint.step())
                .words("joint", joint.joint())
                .words("glue", joint.glue())
                .figure("area", joint.area(), Member::squareMillimetres)
                .figure("grams", joint.grams(), Member::grams)
                .figure("closing", joint.closing(), of -> Member.decimal(of.toSeconds() / 60.0));
        form.node().set("openFor", joint.openTime().map(Member::minutes).orElse(null));
        form.figure("clamps", joint.clamps(), Member::count);
    }

    private static void chosen(Member form, ScrewChoice choice, MeasureStyle style) {
        form.words("joint", choice.joint())
                .words("screw", choice.chosen().words(style))
                .isTrue("suits", choice.suits())
                .figure("length", choice.length(), Member::millimetres)
                .list(
                        "refused",
                        choice.refused(),
                        (of, refused) ->
                                of.words("screw", refused.screw().words(style)).words("because", refused.because()));
    }

    private static void setting(Member form, FastenerSetting setting) {
        form.words("in", setting.in().words())
                .figure("clearance", setting.clearance(), Member::millimetres)
                .figure("pilot", setting.pilot(), Member::millimetres)
                .figure("leadHole", setting.leadHole(), Member::millimetres)
                .figure("sunk", setting.sunk(), Member::millimetres)
                .figure("head", setting.head(), Member::millimetres)
                .figure("reach", setting.reach(), Member::millimetres)
                .figure("diameters", setting.diameters(), of -> Member.decimal(of.value()))
                .figure("tip", setting.tip(), Member::millimetres)
                .figure("thread", setting.thread(), Member::millimetres)
                .figure("gravity", setting.gravity(), of -> Member.decimal(of.value()))
                .figure("holds", setting.holds(), Member::newtons)
                .figure("holdsDamp", setting.holdsDamp(), Member::newtons)
                .words("notHeld", setting.notHeld())
                .words("note", setting.holds().or(setting.across()::holds).map(known -> SitePlan.DEFERS));
        form.inside("across")
                .figure("holds", setting.across().holds(), Member::newtons)
                .figure("holdsDamp", setting.across().holdsDamp(), Member::newtons)
                .words("notHeld", setting.across().notHeld());
    }

    private static void bound(Member form, Fastened.Bound piece) {
        form.words("part", piece.part()).number("piece", piece.piece());
    }

    private static void finish(Member form, FinishLine line) {
        form.words("what", line.what())
                .words(
                        "task",
                        switch (line.task()) {
                            case PAINT -> "paint";
                            case CAULK -> "caulk";
                            case GLUE -> "glue";
                        })
                .figure("extent", line.extent(), form::measured)
                .number("coats", line.coats())
                .figure("need", line.need(), Member::millilitres);
        form.node().set("pack", Member.millilitres(line.pack()));
        form.figure("packs", line.packs(), Member::count)
                .figure("left", line.left(), Member::millilitres)
                .figure("goes", line.goes(), form::measured);
    }

    private static void cost(Cost cost, Member form) {
        form.list("lines", cost.lines(), WorkSections::costLine)
                .figure("bought", cost.bought(), Member::amount)
                .figure("used", cost.used(), Member::amount)
                .number("kits", cost.kits())
                .figure("boughtEach", cost.boughtEach().filter(each -> cost.kits() > 1), Member::amount)
                .figure("usedEach", cost.usedEach().filter(each -> cost.kits() > 1), Member::amount)
                .list(
                        "compare",
                        cost.compare(),
                        (kit, of) -> kit.words("name", of.name())
                                .money("price", Optional.of(of.price()))
                                .money("freight", of.freight())
                                .figure("total", of.total(), Member::amount)
                                .figure("difference", of.difference(), Member::amount)
                                .texts("lacks", of.lacks())
                                .optional("likeForLike", of.likeForLike(), WorkSections::likeForLike))
                .texts("notKnown", cost.notKnown());
    }

    private static void likeForLike(Member form, LikeForLike both) {
        form.figure("lacked", both.lacked(), Member::amount)
                .figure("total", both.total(), Member::amount)
                .figure("asBought", both.asBought(), Member::amount)
                .figure("asUsed", both.asUsed(), Member::amount)
                .list(
                        "tools",
                        both.tools(),
                        (tool, of) -> tool.words("name", of.name())
                                .money("price", Optional.of(of.price()))
                                .figure("builds", of.builds(), Member::count));
    }

    private static void costLine(Member form, CostLine line) {
        form.words("department", line.department().title())
                .words("what", line.what())
                .words("detail", line.detail())
                .figure("packs", line.packs(), Member::count)
                .figure("share", line.share(), share -> Member.decimal(share.value()))
                .money("each", line.each())
                .money("bought", line.bought());
    }

    private static void schedule(Schedule schedule, Member form) {
        form.figure("work", schedule.work(), Member::minutes)
                .numbers("stepsWithoutTime", schedule.stepsWithoutTime())
                .list(
                        "ahead",
                        schedule.ahead(),
                        (one, ahead) -> one.words("what", ahead.what()).number("workingDays", ahead.workingDays()));
        schedule.course()
                .ifPresentOrElse(course -> course(course, form.inside("course")), () -> form.nothing("course"));
    }

    private static void course(Schedule.Course course, Member form) {
        form.figure("finish", course.finish(), Member::minutes)
                .figure("alone", course.alone(), Member::minutes)
                .figure("ready", course.ready(), Member::minutes)
                .numbers("critical", course.critical())
                .texts("notKnown", course.notKnown())
                .list("steps", course.lines(), WorkSections::line)
                .list(
                        "days",
                        course.days(),
                        (one, sitting) -> one.number("step", sitting.step())
                                .words("from", sitting.from().toString())
                                .words("to", sitting.to().toString())
                                .isTrue("ends", sitting.ends()));
    }

    private static void line(Member form, Schedule.Line line) {
        form.number("step", line.step());
        form.node().set("start", Member.minutes(line.start()));
        form.node().set("end", Member.minutes(line.end()));
        form.node().set("slack", Member.minutes(line.slack()));
        form.list("first", line.first(), (one, first) -> {
            one.number("step", first.step());
            one.node().set("wait", Member.minutes(first.waiting()));
            one.words("because", first.because());
        });
    }

    private static void step(Member form, PlannedStep step) {
        form.number("number", step.number())
                .words("title", step.title())
                .list(
                        "take",
                        step.take(),
                        (take, of) -> take.words("letter", of.letter()).words("words", of.words()));
        form.node().set("work", step.work().map(Member::minutes).orElse(null));
        form.number("people", step.people())
                .texts("cautions", topics(step.cautions()))
                .texts("before", step.before())
                .optional(
                        "noise",
                        step.noise(),
                        (noise, of) -> noise.number("decibels", of.decibels())
                                .figure("allowed", of.allowed(), time -> Member.decimal(time.toSeconds() / 60.0)));
    }

    /** The topics, each once; their words stand under {@code cautions} at the top. */
    private static List<String> topics(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> caution.topic().title())
                .distinct()
                .toList();
    }

    private static void rain(Plan plan, Member top) {
        Member form = top.inside("rain");
        plan.rain()
                .ifPresent(rain -> form.words("limits", Rain.LIMITS)
                        .list(
                                "marks",
                                rain.marks(),
                                (mark, of) -> mark.number("number", of.number())
                                        .words("kind", of.kind().words())
                                        .texts("parts", of.parts())
                                        .words("where", of.where())
                                        .figure("length", of.much(), Member::millimetres)
                                        .words("words", of.words())
                                        .words("advice", of.advice())
                                        .list("at", of.at(), (place, at) -> place.point("point", at))));
    }
}
